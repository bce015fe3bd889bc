#include "app/windows/today_words.h"

#include "app/windows/block_words.h"
#include "app/windows/task_words.h"
#include "app/words/say.h"
#include "core/calendar/clock_time.h"

#include <QStringList>

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

constexpr int minutesPerHour = 60;
constexpr double noteworthyIdle = 0.5;
constexpr int nearDays = 183;  ///< so that no day could be taken for another year's

/// A dash that figures are not parted at.
QString rangeDash() {
  return QStringLiteral("\u2060–\u2060");
}

QString hoursOf(double hours) {
  return figureText(hours);
}

QString whenText(const CrewLane& lane, const LaneJob& job) {
  const QString hours = QString::fromStdString(clockText(job.startMinute)) + rangeDash()
                        + QString::fromStdString(clockText(job.endMinute));
  if (lane.gangs < 2 && job.workers == lane.workers) return hours;
  const QString workers = sayCounted(
      job.workers, phrase("Today", "%1 worker"), phrase("Today", "%1 workers"));
  return QStringLiteral("%1, %2").arg(hours, workers);
}

}  // namespace

QString turnoutText(const CrewLane& lane) {
  if (lane.hours <= 0) return say(Sentence{phrase("Today", "nobody works")});
  const std::string hours = hoursOf(lane.hours).toStdString();
  const std::int64_t usual = lane.usual;
  QString words = lane.workers == lane.usual
                      ? say(Sentence{phrase("Today", "all %1, %2 hours"), {usual, hours}})
                      : say(Sentence{phrase("Today", "of %1, %2 hours"), {usual, hours}});
  if (lane.idle >= noteworthyIdle)
    words += QLatin1Char('\n')
             + say(Sentence{phrase("Today", "%1 of them free"),
                            {hoursOf(lane.idle).toStdString()}});
  return words;
}

QString rowsText(const RowSet& rows, const RowSet& ofTask) {
  const std::int64_t count = rows.count();
  if (rows == ofTask && count > 1)
    return say(Sentence{phrase("Today", "all %1 rows"), {count}});
  QString numbers = QString::fromStdString(topwire::rowsText(rows));
  numbers.replace(QLatin1Char('-'), rangeDash());
  return say(
      Sentence{counted(count, phrase("Today", "row %1"), phrase("Today", "rows %1")),
               {numbers.toStdString()}});
}

QString hoursInOne(double hours) {
  return hoursText(hours).replace(QLatin1Char(' '), QChar::Nbsp);
}

QString crewName(const Orchard& orchard, CrewId crew) {
  const auto found = orchard.crews.find(crew);
  return found == orchard.crews.end() ? QString{}
                                      : QString::fromStdString(found->second.name);
}

QString sayNear(const Session& session, Sentence sentence) {
  for (Value& value : sentence.values) {
    const Day* day = std::get_if<Day>(&value);
    if (day == nullptr) continue;
    if (std::abs(daysBetween(session.today(), *day)) > nearDays) continue;
    value = shortDayText(*day).toStdString();
  }
  return say(sentence);
}

QString sayNear(const Session& session, const std::vector<Sentence>& sentences) {
  QStringList texts;
  for (const Sentence& sentence : sentences) texts << sayNear(session, sentence);
  return texts.join(QLatin1Char(' '));
}

QString nameOfTask(Session& session, const TaskKey& task) {
  const auto view = findView(session, task);
  return view ? taskText(session, *view->task) : QString::fromStdString(task.operation);
}

QString doneText(const Session& session, const PlanAndDone& job) {
  const std::int64_t done = job.done.count();
  const std::int64_t rows = job.planned.rows.count();
  const QString crew = crewName(session.orchard(), job.planned.of.crew);
  if (done == 0 && !job.hoursMissing)
    return say(Sentence{counted(rows,
                                phrase("Today", "%1: %2 row planned, none ticked."),
                                phrase("Today", "%1: %2 rows planned, none ticked.")),
                        {crew.toStdString(), rows}});
  if (job.hoursMissing)
    return say(Sentence{phrase("Today", "%1: %2 of %3 rows ticked, hours not entered."),
                        {crew.toStdString(), done, rows}});
  return say(Sentence{
      phrase("Today", "%1: %2 of %3 rows ticked in %4 hours."),
      {crew.toStdString(),
       done,
       rows,
       hoursOf(static_cast<double>(job.minutes) / minutesPerHour).toStdString()}});
}

JobWords jobWords(Session& session,
                  const TaskView& view,
                  const CrewLane& lane,
                  const LaneJob& job) {
  const Task& task = *view.task;
  const Planting& planting = session.orchard().plantings.at(task.key.planting);
  JobWords words;
  words.name = say(session.titleOf(task));
  const Operation* operation = session.operationOf(task);
  words.shortName = operation == nullptr || !task.handTitle.empty()
                        ? words.name
                        : say(operation->shortName);
  words.where = say(Sentence{phrase("Task", "%1, %2"),
                             {blockOf(session.orchard(), planting).name,
                              rowsText(job.rows, task.rows).toStdString()}});
  words.hours = hoursInOne(job.hours);
  words.when = whenText(lane, job);
  words.from = QString::fromStdString(clockText(job.startMinute));
  words.state = stateText(view, session.today());
  words.brief = urgencyText(view, session.today());
  words.full =
      QStringList{words.name, words.where, words.hours, words.when, words.state}.join(
          QStringLiteral(", "));
  return words;
}

}  // namespace topwire
