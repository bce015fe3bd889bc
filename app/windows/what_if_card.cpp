#include "app/windows/what_if_card.h"

#include "app/windows/day_field.h"
#include "app/windows/labour_strip.h"
#include "app/windows/labour_words.h"
#include "app/words/say.h"

#include <QGridLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace topwire {

namespace {

constexpr int fortnight = 13;
constexpr int mostWorkers = 99;
constexpr int mostDaysLater = 30;
constexpr int dateWidth = 150;
constexpr int workersPreset = 2;
constexpr int laterPreset = 10;

QStringList sumsOf(const PlanSum& sum) {
  return {wholeHoursText(sum.hoursLate),
          wholeHoursText(sum.hoursLost),
          voiceIn(language()).count(sum.windowsMissed),
          wholeHoursText(sum.loss)};
}

QStringList sumNames() {
  return {WhatIfCard::tr("Done past its closing"),
          WhatIfCard::tr("Never done while of use"),
          WhatIfCard::tr("Windows missed, wholly or in part"),
          WhatIfCard::tr("Cost of lateness, in hours of work")};
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

void addLine(QVBoxLayout& lines, const std::vector<QWidget*>& fields) {
  auto* line = new QHBoxLayout;
  line->setSpacing(16);
  for (QWidget* one : fields) line->addWidget(one, 0, Qt::AlignBottom);
  line->addStretch();
  lines.addLayout(line);
}

}  // namespace

WhatIfCard::WhatIfCard(QWidget* parent)
    : Card(QPalette::Base, parent)
    , asKnown_(new QPushButton(tr("As it is &known")))
    , workers_(new QSpinBox)
    , later_(new QSpinBox)
    , lose_(new QCheckBox(tr("No&body can work")))
    , lostFrom_(dayField())
    , lostTo_(dayField()) {
  setObjectName(QStringLiteral("whatIfCard"));
  auto* lines = new QVBoxLayout{this};
  lines->addWidget(textLabel(tr("What if"), TypeSize::name, true));
  addPresets(*lines);
  addFields(*lines);
  addComparison(*lines);
  for (QSpinBox* box : {workers_, later_})
    connect(box, &QSpinBox::valueChanged, this, &WhatIfCard::supposed);
  connect(lose_, &QCheckBox::toggled, this, &WhatIfCard::supposed);
  for (QDateEdit* day : {lostFrom_, lostTo_})
    connect(day, &QDateEdit::dateChanged, this, &WhatIfCard::supposed);
}

void WhatIfCard::addPresets(QVBoxLayout& lines) {
  auto* line = new QHBoxLayout;
  line->setSpacing(8);
  const auto add = [&](const QString& words, const char* name, auto supposition) {
    auto* button = new QPushButton{words};
    button->setObjectName(QLatin1String(name));
    connect(button, &QPushButton::clicked, this, [this, supposition] {
      suppose(supposition());
    });
    line->addWidget(button);
  };
  add(tr("&Two more people"), "twoMore", [] {
    return Supposition{workersPreset, {}, 0};
  });
  add(tr("A rainy f&ortnight"), "rainyFortnight", [this] {
    return Supposition{0, {{today_, plusDays(today_, fortnight)}}, 0};
  });
  add(tr("A &late spring"), "lateSpring", [] { return Supposition{0, {}, laterPreset}; });
  asKnown_->setObjectName(QStringLiteral("asKnown"));
  connect(asKnown_, &QPushButton::clicked, this, [this] { suppose({}); });
  line->addWidget(asKnown_);
  line->addStretch();
  lines.addLayout(line);
}

void WhatIfCard::addFields(QVBoxLayout& lines) {
  workers_->setObjectName(QStringLiteral("workersMore"));
  workers_->setRange(0, mostWorkers);
  later_->setObjectName(QStringLiteral("springLater"));
  later_->setRange(-mostDaysLater, mostDaysLater);
  lose_->setObjectName(QStringLiteral("loseDays"));
  lose_->setMinimumHeight(measure::buttonHeight);
  lostFrom_->setObjectName(QStringLiteral("lostFrom"));
  lostTo_->setObjectName(QStringLiteral("lostTo"));
  for (QDateEdit* day : {lostFrom_, lostTo_}) day->setMinimumWidth(dateWidth);
  addLine(lines,
          {field(tr("&More people, for any work"), workers_),
           field(tr("&Stages not seen yet: days later"), later_)});
  addLine(lines, {lose_, field(tr("F&rom"), lostFrom_), field(tr("&Until"), lostTo_)});
}

void WhatIfCard::addComparison(QVBoxLayout& lines) {
  nothing_ = wrapping(mutedLabel({}, TypeSize::body));
  nothing_->setObjectName(QStringLiteral("nothingSupposed"));
  lines.addWidget(nothing_);
  part_ = new QWidget;
  auto* part = new QVBoxLayout{part_};
  part->setContentsMargins(0, 8, 0, 0);
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
  planning_ = textLabel({}, TypeSize::body, true);
  strip_ = new LabourStrip;
  strip_->setObjectName(QStringLiteral("supposedStrip"));
  reading_ = wrapping(textLabel({}, TypeSize::small));
  part->addWidget(planning_);
  part->addWidget(strip_);
  part->addWidget(reading_);
  connect(strip_, &LabourStrip::read, reading_, &QLabel::setText);
  lines.addWidget(part_);
}

void WhatIfCard::startAnew(Day today) {
  today_ = today;
  fill({0, {{today, plusDays(today, fortnight)}}, 0});
  fill({});
  compareNothing();
}

void WhatIfCard::suppose(const Supposition& supposed) {
  fill(supposed);
  Q_EMIT this->supposed();
}

/// Without planning at each field.
void WhatIfCard::fill(const Supposition& supposed) {
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

Supposition WhatIfCard::supposition() const {
  Supposition supposed;
  supposed.workersMore = workers_->value();
  supposed.springLaterBy = later_->value();
  const DaySpan lost{dayOf(lostFrom_->date()), dayOf(lostTo_->date())};
  if (lose_->isChecked() && lost.first <= lost.last) supposed.lost.push_back(lost);
  return supposed;
}

bool WhatIfCard::isAnything() const {
  return supposition() != Supposition{};
}

void WhatIfCard::setPlanning(bool planning) {
  lostFrom_->setEnabled(lose_->isChecked());
  lostTo_->setEnabled(lose_->isChecked());
  asKnown_->setEnabled(isAnything());
  planning_->setText(planning ? tr("As supposed · planning…") : tr("As supposed"));
  nothing_->setText(planning && isAnything()
                        ? tr("Planning…")
                        : tr("Choose more people, days lost or a later spring, and the "
                             "two stand here side by side."));
}

void WhatIfCard::compareNothing() {
  nothing_->show();
  part_->hide();
}

void WhatIfCard::compare(const PlanSum& known,
                         const PlanSum& supposed,
                         const std::vector<WeekOfLabour>& weeks,
                         double most) {
  nothing_->hide();
  part_->show();
  strip_->setWeeks(weeks, most);
  reading_->setText(strip_->reading());
  putSums(known, supposed);
}

void WhatIfCard::putSums(const PlanSum& known, const PlanSum& supposed) {
  const QStringList one = sumsOf(known);
  const QStringList other = sumsOf(supposed);
  for (int row = 0; row < one.size(); ++row) {
    knownSums_[static_cast<std::size_t>(row)]->setText(one[row]);
    supposedSums_[static_cast<std::size_t>(row)]->setText(other[row]);
  }
}

}  // namespace topwire
