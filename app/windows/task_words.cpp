#include "app/windows/task_words.h"

#include "app/words/say.h"

#include <QDate>
#include <QLocale>
#include <QStringList>

#include <cmath>

namespace topwire {

namespace {

QString counting(std::int64_t count, Phrase one, Phrase many) {
  return say(Sentence{counted(count, one, many), {count}});
}

QString with(Phrase phrase, const QString& value) {
  return say(Sentence{phrase, {value.toStdString()}});
}

QString closingText(Day closes, Day today) {
  if (closes == today) return say(Sentence{phrase("Task", "closes today")});
  return with(phrase("Task", "closes %1"), weekdayBrief(closes));
}

/// The blocks by name while they are few: each task in the list is marked anyway.
QString placesText(const Orchard& orchard, const SharedCaution& caution) {
  constexpr std::size_t mostNamed = 3;
  const auto blocks = placeNames(orchard, caution.plantings).size();
  const std::string places = placesOf(orchard, caution);
  if (places.empty() || blocks <= mostNamed) return QString::fromStdString(places);
  return counting(static_cast<std::int64_t>(blocks),
                  phrase("Task", "%1 block"),
                  phrase("Task", "%1 blocks"));
}

}  // namespace

QString figureText(double value) {
  const double rounded = std::round(value * 10) / 10;
  const bool whole = rounded == std::floor(rounded);
  return QLocale{}.toString(rounded, 'f', whole ? 0 : 1);
}

QString urgencyText(const TaskView& view, Day today) {
  const Task& task = *view.task;
  switch (view.state) {
    case TaskState::late:
      return counting(daysBetween(task.closes, today),
                      phrase("Task", "%1 day late"),
                      phrase("Task", "%1 days late"));
    case TaskState::closing:
      return closingText(task.closes, today);
    case TaskState::open:
      return with(phrase("Task", "to %1"), briefDay(task.closes));
    case TaskState::waiting:
      return with(phrase("Task", "from %1"), briefDay(task.opens));
    case TaskState::lapsed:
    case TaskState::done:
    case TaskState::setAside:
      return nameOf(view.state);
  }
  return {};
}

QString progressText(const TaskView& view) {
  const QString done = figureText(view.progress.rowsDone());
  const std::int64_t rows = view.task->rows.count();
  if (isSettled(view.state))
    return say(Sentence{phrase("Task", "%1 of %2 rows"), {done.toStdString(), rows}});
  const QString hours = figureText(std::ceil(view.hoursLeft * 2) / 2);
  return say(Sentence{phrase("Task", "%1 of %2 rows · %3 h left"),
                      {done.toStdString(), rows, hours.toStdString()}});
}

QString plantingText(const Session& session, const Planting& planting, Day day) {
  const Orchard& orchard = session.orchard();
  const Season season = seasonOf(day, orchard.settings.hemisphere());
  const QString stock = planting.rootstock.empty()
                            ? QString::fromStdString(planting.cultivar)
                            : say(Sentence{phrase("Task", "%1 on %2"),
                                           {planting.cultivar, planting.rootstock}});
  return QStringList{stock,
                     leafText(leafOf(orchard, planting, season)),
                     nameOf(vigourIn(season, orchard, session.tables(), planting).vigour)}
      .join(QStringLiteral(", "));
}

QString taskText(const Session& session, const Task& task) {
  const Planting& planting = session.orchard().plantings.at(task.key.planting);
  return say(
      Sentence{phrase("Task", "%1, %2"),
               {session.titleOf(task), blockOf(session.orchard(), planting).name}});
}

QString barText(const MonthBar& bar, Day today) {
  QStringList lines;
  lines << say(Sentence{phrase("Task", "%1, %2"), {bar.name, bar.place}});
  QString state = nameOf(bar.state);
  if (bar.state == TaskState::late)
    state = counting(daysBetween(bar.closes, today),
                     phrase("Task", "%1 day late"),
                     phrase("Task", "%1 days late"));
  lines << say(Sentence{phrase("Task", "%1: %2 to %3"),
                        {state.toStdString(),
                         shortDayText(bar.opens).toStdString(),
                         shortDayText(bar.closes).toStdString()}});
  if (bar.cutOff && *bar.cutOff > bar.closes)
    lines << with(phrase("Task", "worth doing until %1"), shortDayText(*bar.cutOff));
  else if (bar.cutOff)
    lines << with(phrase("Task", "cut off after %1"), shortDayText(*bar.cutOff));
  return lines.join(QLatin1Char('\n'));
}

QString rowsText(int count) {
  return counting(count, phrase("Task", "%1 row"), phrase("Task", "%1 rows"));
}

QString waitText(const Session& session, const DayWork& work) {
  QStringList lines;
  for (const SharedCaution& shared : work.cautions) {
    const QString places = placesText(session.orchard(), shared);
    const QString words =
        say(shared.caution.sentence) + u' ' + say(shared.caution.advice);
    lines << (places.isEmpty() ? words : places + QStringLiteral(": ") + words);
  }
  return lines.join(QLatin1Char('\n'));
}

QString dayWorkText(const DayWork& work) {
  if (work.jobs == 0) return say(Sentence{phrase("Task", "nothing left to do")});
  const QString jobs =
      counting(work.jobs, phrase("Task", "%1 job"), phrase("Task", "%1 jobs"));
  const QString blocks =
      counting(work.blocks, phrase("Task", "%1 block"), phrase("Task", "%1 blocks"));
  const auto hours = static_cast<std::int64_t>(std::ceil(work.hoursLeft));
  return say(Sentence{counted(hours,
                              phrase("Task", "%1 in %2 · %3 hour left"),
                              phrase("Task", "%1 in %2 · %3 hours left")),
                      {jobs.toStdString(), blocks.toStdString(), hours}});
}

}  // namespace topwire
