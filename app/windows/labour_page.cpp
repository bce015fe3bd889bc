#include "app/windows/labour_page.h"

#include "app/look/card.h"
#include "app/windows/coming_jobs_card.h"
#include "app/windows/labour_strip.h"
#include "app/windows/labour_words.h"
#include "app/windows/paces_card.h"
#include "app/windows/page_head.h"
#include "app/windows/what_if_card.h"

#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace topwire {

LabourPage::LabourPage(Session& session, QWidget* parent)
    : QWidget(parent)
    , session_(&session)
    , planner_(new LabourPlanner(session, this))
    , head_(new PageHead)
    , summary_(wrapping(textLabel({}, TypeSize::head)))
    , coming_(new ComingJobsCard(session))
    , whatIf_(new WhatIfCard)
    , paces_(new PacesCard(session)) {
  setObjectName(QStringLiteral("labourPage"));
  summary_->setObjectName(QStringLiteral("labourSummary"));
  auto* all = new QVBoxLayout{this};
  all->setContentsMargins(measure::pageMargin, 12, measure::pageMargin, 20);
  all->setSpacing(14);
  all->addWidget(head_);
  all->addWidget(makeEmpty());
  all->addWidget(makeScrolling(), 1);
  connect(planner_, &LabourPlanner::changed, this, &LabourPage::refresh);
  connect(session_, &Session::changed, this, &LabourPage::followSession);
  connect(session_, &Session::reset, this, &LabourPage::startAnew);
  connect(whatIf_, &WhatIfCard::supposed, this, [this] {
    planner_->suppose(whatIf_->supposition());
    refresh();
  });
  startAnew();
}

QWidget* LabourPage::makeScrolling() {
  auto* inside = new QWidget;
  auto* lines = new QVBoxLayout{inside};
  lines->setContentsMargins(0, 0, 0, 0);
  lines->setSpacing(14);
  lines->addWidget(summary_);
  lines->addWidget(makeKnown());
  lines->addWidget(coming_);
  lines->addWidget(whatIf_);
  lines->addWidget(paces_);
  lines->addStretch();
  scroll_ = new QScrollArea;
  scroll_->setFrameShape(QFrame::NoFrame);
  scroll_->setWidgetResizable(true);
  scroll_->setFocusPolicy(Qt::NoFocus);
  scroll_->setWidget(inside);
  return scroll_;
}

QWidget* LabourPage::makeKnown() {
  knownCard_ = new Card{QPalette::Base};
  auto* lines = new QVBoxLayout{knownCard_};
  lines->addWidget(textLabel(tr("As it is known"), TypeSize::name, true));
  lines->addWidget(wrapping(mutedLabel(
      tr("Filled: planned. Dashed: wanted, each job spread over its window. Line: what "
         "the crews can work. Hatched: past its closing at the week's end."))));
  strip_ = new LabourStrip;
  reading_ = wrapping(textLabel({}, TypeSize::small));
  lines->addWidget(strip_);
  lines->addWidget(reading_);
  connect(strip_, &LabourStrip::read, reading_, &QLabel::setText);
  return knownCard_;
}

QWidget* LabourPage::makeEmpty() {
  empty_ = new QWidget;
  empty_->setObjectName(QStringLiteral("noLabour"));
  auto* lines = new QVBoxLayout{empty_};
  lines->setContentsMargins(0, 0, 0, 0);
  lines->setSpacing(12);
  lines->addWidget(wrapping(textLabel(tr("No crews yet."), TypeSize::title)));
  lines->addWidget(wrapping(
      textLabel(tr("Once there is one, its hours stand here against the work that is "
                   "coming."))));
  auto* add = new QPushButton{tr("Open the &settings")};
  add->setObjectName(QStringLiteral("crewsFromLabour"));
  add->setProperty("main", true);
  lines->addWidget(add, 0, Qt::AlignLeft);
  lines->addStretch();
  connect(add, &QPushButton::clicked, this, &LabourPage::crewsWanted);
  return empty_;
}

void LabourPage::startAnew() {
  weeks_.clear();
  if (session_->isOpen()) whatIf_->startAnew(session_->today());
  followSession();
}

/// What was learned hangs on no plan.
void LabourPage::followSession() {
  if (isVisible() && session_->isOpen()) paces_->refresh();
  refresh();
}

void LabourPage::suppose(const Supposition& supposed) {
  whatIf_->suppose(supposed);
}

/// A page out of sight plans nothing.
void LabourPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  planner_->setWatched(true);
  followSession();
}

void LabourPage::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  planner_->setWatched(false);
}

void LabourPage::refresh() {
  if (!isVisible() || !session_->isOpen()) return;
  const bool none = session_->orchard().crews.empty();
  const CrewPlan* known = planner_->known();
  empty_->setVisible(none);
  scroll_->setVisible(!none);
  knownCard_->setVisible(known != nullptr);
  coming_->setVisible(known != nullptr);
  if (known != nullptr) showKnown(*known);
  if (known == nullptr) summary_->setText(tr("Planning the season…"));
  showComparison(known == nullptr ? nullptr : planner_->supposed());
  whatIf_->setPlanning(planner_->isPlanning());
  const QString ahead =
      weeks_.empty() ? QString{} : tr("%1 weeks ahead").arg(weeks_.size());
  head_->say(tr("Labour"),
             known != nullptr && planner_->isPlanning() ? tr("%1 · planning…").arg(ahead)
                                                        : ahead);
}

void LabourPage::showKnown(const CrewPlan& plan) {
  weeks_ = labourByWeek(plan);
  known_ = sumOf(plan);
  summary_->setText(summaryOf(weeks_, known_));
  coming_->show(plan);
}

void LabourPage::showComparison(const CrewPlan* supposed) {
  double most = mostHours(weeks_);
  if (supposed == nullptr) {
    whatIf_->compareNothing();
  } else {
    const std::vector<WeekOfLabour> weeks = labourByWeek(*supposed);
    most = std::max(most, mostHours(weeks));
    whatIf_->compare(known_, sumOf(*supposed), weeks, most);
  }
  strip_->setWeeks(weeks_, most);
  reading_->setText(strip_->reading());
}

}  // namespace topwire
