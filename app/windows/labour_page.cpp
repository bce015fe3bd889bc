#include "app/windows/labour_page.h"

#include "app/look/card.h"
#include "app/windows/day_field.h"
#include "app/windows/labour_strip.h"
#include "app/windows/page_head.h"
#include "app/words/say.h"

#include <QScrollArea>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

constexpr int fortnight = 13;
constexpr int mostWorkers = 99;
constexpr int mostDaysLater = 30;
constexpr int dateWidth = 150;

QString hoursPlain(double hours) {
  return LabourPage::tr("%1 h").arg(voiceIn(language()).count(std::llround(hours)));
}

QStringList sumsOf(const PlanSum& sum) {
  return {hoursPlain(sum.hoursLate),
          hoursPlain(sum.hoursLost),
          voiceIn(language()).count(sum.windowsMissed),
          hoursPlain(sum.loss)};
}

QStringList sumNames() {
  return {LabourPage::tr("Done past its closing"),
          LabourPage::tr("Never done while of use"),
          LabourPage::tr("Windows missed, wholly or in part"),
          LabourPage::tr("Cost of lateness, in hours of work")};
}

QLabel* figure() {
  auto* label = textLabel({});
  label->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  return label;
}

QWidget* field(const QString& words, QWidget* editor) {
  auto* both = new QWidget;
  auto* lines = new QVBoxLayout{both};
  lines->setContentsMargins(0, 0, 0, 0);
  lines->setSpacing(4);
  auto* label = textLabel(words, TypeSize::small);
  label->setBuddy(editor);
  editor->setMinimumHeight(measure::buttonHeight);
  lines->addWidget(label);
  lines->addWidget(editor);
  both->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
  return both;
}

/// Hours carried past their closing at the worst week's end.
const WeekOfLabour* worstWeek(const std::vector<WeekOfLabour>& weeks) {
  const auto worst = std::ranges::max_element(weeks, {}, &WeekOfLabour::overdue);
  return worst == weeks.end() || worst->overdue < 0.5 ? nullptr : &*worst;
}

QString summaryOf(const std::vector<WeekOfLabour>& weeks) {
  double there = 0;
  double wanted = 0;
  for (const WeekOfLabour& week : weeks) {
    there += week.there;
    wanted += week.wanted;
  }
  const QString both = LabourPage::tr("%1 of work and %2 of hands in %3 weeks.")
                           .arg(hoursPlain(wanted), hoursPlain(there))
                           .arg(weeks.size());
  const WeekOfLabour* worst = worstWeek(weeks);
  if (worst == nullptr) return LabourPage::tr("%1 Every window can be met.").arg(both);
  return LabourPage::tr(
             "%1 Hands are shortest in the week of %2: %3 go past their "
             "closing.")
      .arg(both, briefDay(worst->monday), hoursPlain(worst->overdue));
}

}  // namespace

LabourPage::LabourPage(Session& session, QWidget* parent)
    : QWidget(parent)
    , session_(&session)
    , head_(new PageHead)
    , summary_(wrapping(textLabel({}, TypeSize::head)))
    , empty_(wrapping(textLabel({}, TypeSize::head))) {
  setObjectName(QStringLiteral("labourPage"));
  auto* inside = new QWidget;
  auto* lines = new QVBoxLayout{inside};
  lines->setContentsMargins(0, 0, 0, 0);
  lines->setSpacing(14);
  lines->addWidget(summary_);
  lines->addWidget(makeKnown());
  lines->addWidget(makeFields());
  lines->addWidget(makeSupposed());
  lines->addStretch();
  auto* scroll = new QScrollArea;
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidgetResizable(true);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setWidget(inside);
  empty_->setObjectName(QStringLiteral("noLabour"));
  auto* all = new QVBoxLayout{this};
  all->setContentsMargins(measure::pageMargin, 12, measure::pageMargin, 20);
  all->setSpacing(14);
  all->addWidget(head_);
  all->addWidget(empty_);
  all->addWidget(scroll, 1);
  connect(session_, &Session::changed, this, &LabourPage::refresh);
  connect(session_, &Session::reset, this, &LabourPage::startAnew);
  startAnew();
}

QWidget* LabourPage::makeKnown() {
  auto* card = new Card{QPalette::Base};
  auto* lines = new QVBoxLayout{card};
  lines->addWidget(textLabel(tr("As it is known"), TypeSize::name, true));
  lines->addWidget(wrapping(mutedLabel(
      tr("Filled: planned. Dashed: wanted, each job spread over its window. Line: what "
         "the crews can work. Hatched: past its closing at the week's end."))));
  strip_ = new LabourStrip;
  reading_ = wrapping(textLabel({}, TypeSize::small));
  lines->addWidget(strip_);
  lines->addWidget(reading_);
  connect(strip_, &LabourStrip::read, reading_, &QLabel::setText);
  return card;
}

QWidget* LabourPage::makeFields() {
  auto* card = new Card{QPalette::Base};
  auto* lines = new QVBoxLayout{card};
  lines->addWidget(textLabel(tr("What if"), TypeSize::name, true));
  workers_ = new QSpinBox;
  workers_->setObjectName(QStringLiteral("workersMore"));
  workers_->setRange(0, mostWorkers);
  later_ = new QSpinBox;
  later_->setObjectName(QStringLiteral("springLater"));
  later_->setRange(-mostDaysLater, mostDaysLater);
  lose_ = new QCheckBox{tr("Nobody can wor&k")};
  lose_->setObjectName(QStringLiteral("loseDays"));
  lostFrom_ = dayField();
  lostFrom_->setObjectName(QStringLiteral("lostFrom"));
  lostTo_ = dayField();
  lostTo_->setObjectName(QStringLiteral("lostTo"));
  for (QDateEdit* day : {lostFrom_, lostTo_}) day->setMinimumWidth(dateWidth);
  const auto addLine = [lines](const std::vector<QWidget*>& fields) {
    auto* line = new QHBoxLayout;
    line->setSpacing(16);
    for (QWidget* one : fields) line->addWidget(one, 0, Qt::AlignBottom);
    line->addStretch();
    lines->addLayout(line);
  };
  addLine({field(tr("&More people, for any work"), workers_),
           field(tr("Stages not seen yet: days &later"), later_)});
  addLine({lose_, field(tr("Fr&om"), lostFrom_), field(tr("Unt&il"), lostTo_)});
  for (QSpinBox* box : {workers_, later_})
    connect(box, &QSpinBox::valueChanged, this, &LabourPage::showComparison);
  connect(lose_, &QCheckBox::toggled, this, &LabourPage::showComparison);
  for (QDateEdit* day : {lostFrom_, lostTo_})
    connect(day, &QDateEdit::dateChanged, this, &LabourPage::showComparison);
  return card;
}

QWidget* LabourPage::makeSupposed() {
  auto* card = new Card{QPalette::Base};
  auto* lines = new QVBoxLayout{card};
  nothingSupposed_ = wrapping(mutedLabel(
      tr("Choose more people, days lost or a later spring, and the two stand here side "
         "by side."),
      TypeSize::body));
  lines->addWidget(nothingSupposed_);
  supposedPart_ = new QWidget;
  auto* part = new QVBoxLayout{supposedPart_};
  part->setContentsMargins(0, 0, 0, 0);
  part->addWidget(textLabel(tr("As supposed"), TypeSize::name, true));
  supposedStrip_ = new LabourStrip;
  supposedStrip_->setObjectName(QStringLiteral("supposedStrip"));
  supposedReading_ = wrapping(textLabel({}, TypeSize::small));
  part->addWidget(supposedStrip_);
  part->addWidget(supposedReading_);
  connect(supposedStrip_, &LabourStrip::read, supposedReading_, &QLabel::setText);
  sums_ = new QGridLayout;
  sums_->setHorizontalSpacing(24);
  sums_->addWidget(mutedLabel(tr("as known")), 0, 1, Qt::AlignRight);
  sums_->addWidget(mutedLabel(tr("as supposed")), 0, 2, Qt::AlignRight);
  int row = 1;
  for (const QString& name : sumNames()) {
    sums_->addWidget(textLabel(name), row, 0);
    sums_->addWidget(knownSums_.emplace_back(figure()), row, 1);
    sums_->addWidget(supposedSums_.emplace_back(figure()), row, 2);
    ++row;
  }
  sums_->setColumnStretch(3, 1);
  part->addLayout(sums_);
  lines->addWidget(supposedPart_);
  return card;
}

void LabourPage::startAnew() {
  if (session_->isOpen()) {
    const Day today = session_->today();
    fill({0, {{today, plusDays(today, fortnight)}}, 0});
    fill({});
  }
  refresh();
}

void LabourPage::suppose(const Supposition& supposed) {
  fill(supposed);
  showComparison();
}

/// Without planning at each field.
void LabourPage::fill(const Supposition& supposed) {
  const QSignalBlocker people{workers_};
  const QSignalBlocker stages{later_};
  const QSignalBlocker lose{lose_};
  const QSignalBlocker from{lostFrom_};
  const QSignalBlocker to{lostTo_};
  workers_->setValue(supposed.workersMore);
  later_->setValue(supposed.springLaterBy);
  lose_->setChecked(!supposed.lost.empty());
  if (supposed.lost.empty()) return;
  lostFrom_->setDate(dateOf(supposed.lost.front().first));
  lostTo_->setDate(dateOf(supposed.lost.front().last));
}

Supposition LabourPage::supposition() const {
  Supposition supposed;
  supposed.workersMore = workers_->value();
  supposed.springLaterBy = later_->value();
  const DaySpan lost{dayOf(lostFrom_->date()), dayOf(lostTo_->date())};
  if (lose_->isChecked() && lost.first <= lost.last) supposed.lost.push_back(lost);
  return supposed;
}

/// By rule alone: a search would change the sums little and the page would wait for it.
CrewPlan LabourPage::planned(const Supposition& supposed) const {
  return planCrews(crewQuestion(session_->orchard(),
                                session_->trade(),
                                session_->views(),
                                session_->outlooks(),
                                session_->today(),
                                crewPlanDays(session_->today()),
                                supposed),
                   {0, 1});
}

void LabourPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

/// A page out of sight plans nothing.
void LabourPage::refresh() {
  if (!isVisible() || !session_->isOpen()) return;
  const bool none = session_->orchard().crews.empty();
  empty_->setText(
      tr("No crews yet. Add one under Settings, and its hours stand here "
         "against the work that is coming."));
  empty_->setVisible(none);
  const CrewPlan plan = planned({});
  weeks_ = labourByWeek(plan);
  known_ = sumOf(plan);
  head_->say(tr("Labour"), tr("%1 weeks ahead").arg(weeks_.size()));
  summary_->setText(summaryOf(weeks_));
  showComparison();
}

void LabourPage::showComparison() {
  if (!isVisible() || !session_->isOpen()) return;
  lostFrom_->setEnabled(lose_->isChecked());
  lostTo_->setEnabled(lose_->isChecked());
  const Supposition supposed = supposition();
  const bool any = supposed != Supposition{};
  nothingSupposed_->setVisible(!any);
  supposedPart_->setVisible(any);
  double most = mostHours(weeks_);
  if (any) {
    const CrewPlan plan = planned(supposed);
    const std::vector<WeekOfLabour> weeks = labourByWeek(plan);
    most = std::max(most, mostHours(weeks));
    supposedStrip_->setWeeks(weeks, most);
    supposedReading_->setText(supposedStrip_->reading());
    const PlanSum sum = sumOf(plan);
    putSums(known_, sum);
  }
  strip_->setWeeks(weeks_, most);
  reading_->setText(strip_->reading());
}

void LabourPage::putSums(const PlanSum& known, const PlanSum& supposed) {
  const QStringList one = sumsOf(known);
  const QStringList other = sumsOf(supposed);
  for (int row = 0; row < one.size(); ++row) {
    knownSums_[static_cast<std::size_t>(row)]->setText(one[row]);
    supposedSums_[static_cast<std::size_t>(row)]->setText(other[row]);
  }
}

}  // namespace topwire
