#include "app/windows/hours_form.h"

#include "app/windows/figure_field.h"
#include "app/windows/task_words.h"
#include "app/windows/today_words.h"
#include "app/words/say.h"
#include "core/edit/crew_deeds.h"

#include <QGridLayout>
#include <QLocale>

#include <cmath>

namespace topwire {

namespace {

constexpr int minutesPerHour = 60;
constexpr double mostHours = 10'000;
constexpr int fieldWidth = 96;
constexpr int linesShown = 4;
constexpr int lineHeight = 42;

QLabel* wrapping(QLabel* label) {
  label->setWordWrap(true);
  label->setMinimumWidth(1);
  return label;
}

}  // namespace

HoursForm::HoursForm(Session& session, QWidget* parent)
    : DayForm(session, "hoursForm", parent), area_(new QScrollArea) {
  area_->setWidgetResizable(true);
  area_->setFrameShape(QFrame::NoFrame);
  area_->setFocusPolicy(Qt::NoFocus);
  area_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area_->viewport()->setBackgroundRole(QPalette::Base);
  addWide(area_);
  addNote(tr("Worker-hours, all workers together; they teach the plan its pace."));
  deed_ = addDeed(tr("&Enter the hours"), "hoursDeed", true);
  connect(deed_, &QPushButton::clicked, this, &HoursForm::act);
}

void HoursForm::open(Day day) {
  day_ = day;
  clearProblem();
  setTitle(tr("Hours of %1").arg(weekdayText(day)));
  jobs_.clear();
  for (const PlanAndDone& job : planAndDone(session().orchard(), day))
    jobs_.push_back({job, nullptr});
  area_->setWidget(makeLines());
  const int lines = std::min(linesShown, static_cast<int>(jobs_.size()));
  area_->setFixedHeight(std::max(1, lines) * lineHeight);
  const auto first = std::ranges::find_if(
      jobs_, [](const Line& line) { return line.hours->isEnabled(); });
  deed_->setEnabled(first != jobs_.end());
  if (first != jobs_.end()) first->hours->setFocus(Qt::OtherFocusReason);
}

QWidget* HoursForm::makeLines() {
  auto* box = new QWidget;
  box->setAutoFillBackground(false);
  auto* grid = new QGridLayout{box};
  grid->setContentsMargins(3, 3, 3, 3);
  grid->setHorizontalSpacing(16);
  grid->setColumnStretch(0, 2);
  grid->setColumnStretch(1, 2);
  for (std::size_t i = 0; i < jobs_.size(); ++i) {
    Line& line = jobs_[i];
    const int row = static_cast<int>(i);
    const QString name = nameOfTask(session(), line.job.planned.task);
    grid->addWidget(wrapping(textLabel(name, TypeSize::body, true)), row, 0);
    grid->addWidget(wrapping(textLabel(doneText(session(), line.job))), row, 1);
    line.hours = makeField(line.job, name);
    grid->addWidget(line.hours, row, 2);
    grid->addWidget(mutedLabel(tr("h"), TypeSize::body), row, 3);
  }
  return box;
}

QLineEdit* HoursForm::makeField(const PlanAndDone& job, const QString& name) {
  auto* field = new QLineEdit;
  field->setObjectName(QStringLiteral("jobHours"));
  field->setMinimumHeight(measure::buttonHeight);
  field->setFixedWidth(fieldWidth);
  field->setAccessibleName(tr("Hours for %1").arg(name));
  field->setEnabled(job.hoursMissing);
  if (job.minutes > 0)
    field->setText(figureText(static_cast<double>(job.minutes) / minutesPerHour));
  connect(field, &QLineEdit::returnPressed, this, &HoursForm::act);
  return field;
}

void HoursForm::act() {}

}  // namespace topwire
