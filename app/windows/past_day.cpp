#include "app/windows/past_day.h"

#include "app/look/card.h"
#include "app/windows/block_words.h"
#include "app/windows/task_row.h"
#include "app/words/say.h"
#include "core/calendar/clock_time.h"

#include <algorithm>

namespace topwire {

namespace {

constexpr int minutesPerHour = 60;

QString hoursOfMinutes(int minutes) {
  return hoursInOne(static_cast<double>(minutes) / minutesPerHour);
}

QString plannedText(const PlannedJob& job) {
  return say(Sentence{phrase("Past day", "%1, %2 from %3"),
                      {rowsText(job.rows, {}).toStdString(),
                       hoursOfMinutes(job.workerMinutes).toStdString(),
                       clockText(job.startMinute)}});
}

QString tickedText(const RowSet& rows, int minutes, bool hoursMissing) {
  const std::string numbers = rowsText(rows, {}).toStdString();
  if (hoursMissing)
    return say(Sentence{phrase("Past day", "%1, hours not entered"), {numbers}});
  return say(Sentence{phrase("Past day", "%1 in %2"),
                      {numbers, hoursOfMinutes(minutes).toStdString()}});
}

struct Outcome {
  TaskState state = TaskState::waiting;
  QString words;
};

Outcome outcomeOf(const PlanAndDone& job) {
  const std::int64_t rows = job.planned.rows.count();
  const std::int64_t done = job.done.count();
  if (done == rows)
    return {TaskState::done, say(Sentence{phrase("Past day", "done as planned")})};
  if (done == 0 && (job.minutes > 0 || job.hoursMissing))
    return {TaskState::open, say(Sentence{phrase("Past day", "begun, no row whole")})};
  if (done == 0)
    return {TaskState::waiting, say(Sentence{phrase("Past day", "nothing ticked")})};
  return {TaskState::open,
          say(Sentence{phrase("Past day", "%1 of %2 rows ticked"), {done, rows}})};
}

void addCell(QGridLayout& table, int row, int column, QLabel* label) {
  table.addWidget(wrapping(label), row, column, Qt::AlignTop);
}

}  // namespace

QString pastDayText(const std::vector<PlanAndDone>& jobs) {
  if (jobs.empty())
    return say(Sentence{phrase("Past day", "No plan was accepted for this day.")});
  std::int64_t rows = 0;
  std::int64_t done = 0;
  std::int64_t missing = 0;
  for (const PlanAndDone& job : jobs) {
    rows += job.planned.rows.count();
    done += job.done.count();
    missing += job.hoursMissing ? 1 : 0;
  }
  QString text =
      done == rows
          ? say(Sentence{phrase("Past day", "All %1 rows planned were ticked."), {rows}})
          : say(Sentence{phrase("Past day", "%1 of %2 rows planned were ticked."),
                         {done, rows}});
  if (missing > 0)
    text += QLatin1Char(' ')
            + say(Sentence{counted(missing,
                                   phrase("Past day", "No hours for %1 job."),
                                   phrase("Past day", "No hours for %1 jobs.")),
                           {missing}});
  return text;
}

PastDayView::PastDayView(Session& session, QWidget* parent)
    : QWidget(parent), session_(&session), lines_(new QVBoxLayout(this)) {
  setObjectName(QStringLiteral("pastDay"));
  lines_->setContentsMargins(0, 0, 0, 0);
  lines_->setSpacing(8);
}

void PastDayView::setDay(Day day) {
  while (QLayoutItem* item = lines_->takeAt(0)) {
    item->widget()->hide();
    item->widget()->deleteLater();
    delete item;
  }
  const std::vector<PlanAndDone> all = planAndDone(session_->orchard(), day);
  for (auto first = all.begin(); first != all.end();) {
    const CrewId crew = first->planned.of.crew;
    const auto end = std::find_if(first, all.end(), [crew](const PlanAndDone& job) {
      return job.planned.of.crew != crew;
    });
    addCrew(crew, {first, end});
    first = end;
  }
  const auto besides = doneBesides(session_->orchard(), day);
  if (!besides.empty()) addBesides(besides);
}

QGridLayout* PastDayView::addTable(const QString& title, const QString& sum) {
  auto* card = new Card{QPalette::Light};
  auto* lines = new QVBoxLayout{card};
  lines->setContentsMargins(16, 10, 16, 12);
  lines->setSpacing(8);
  auto* head = new QHBoxLayout;
  head->setSpacing(12);
  head->addWidget(textLabel(title, TypeSize::head, true));
  head->addWidget(wrapping(mutedLabel(sum, TypeSize::body)), 1);
  lines->addLayout(head);
  auto* table = new QGridLayout;
  table->setHorizontalSpacing(20);
  table->setVerticalSpacing(8);
  for (const int column : {0, 1, 2}) table->setColumnStretch(column, 3);
  table->setColumnStretch(3, 2);
  lines->addLayout(table);
  lines_->addWidget(card);
  return table;
}

void PastDayView::addCrew(CrewId crew, const std::vector<PlanAndDone>& jobs) {
  QGridLayout* table = addTable(crewName(session_->orchard(), crew), pastDayText(jobs));
  const QString heads[] = {tr("Job"), tr("Planned"), tr("Ticked"), {}};
  for (int column = 0; column < 3; ++column)
    table->addWidget(mutedLabel(heads[column]), 0, column);
  for (const PlanAndDone& job : jobs) addJob(*table, job);
}

void PastDayView::addJob(QGridLayout& table, const PlanAndDone& job) {
  const int row = table.rowCount();
  const RowSet ticked = job.done;
  addCell(table,
          row,
          0,
          textLabel(nameOfTask(*session_, job.planned.task), TypeSize::body, true));
  addCell(table, row, 1, textLabel(plannedText(job.planned)));
  addCell(table,
          row,
          2,
          textLabel(ticked.empty() ? QStringLiteral("–")
                                   : tickedText(ticked, job.minutes, job.hoursMissing)));
  const Outcome outcome = outcomeOf(job);
  auto* state = new StateWord;
  state->setState(outcome.state, outcome.words);
  table.addWidget(state, row, 3, Qt::AlignTop | Qt::AlignLeft);
}

void PastDayView::addBesides(const std::vector<DoneBesides>& besides) {
  const bool alone = lines_->count() == 0;
  QGridLayout* table = alone
                           ? addTable(tr("Ticked"), {})
                           : addTable(tr("Ticked besides"), tr("in no plan of that day"));
  for (const DoneBesides& done : besides) {
    const int row = table->rowCount();
    addCell(*table,
            row,
            0,
            textLabel(nameOfTask(*session_, done.task), TypeSize::body, true));
    addCell(*table, row, 1, textLabel(QString::fromStdString(done.by)));
    addCell(*table,
            row,
            2,
            textLabel(tickedText(done.rows, done.minutes, done.minutes == 0)));
  }
}

}  // namespace topwire
