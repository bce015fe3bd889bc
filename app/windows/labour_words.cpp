#include "app/windows/labour_words.h"

#include "app/windows/block_words.h"
#include "app/words/say.h"

#include <QStringList>

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

std::string hoursValue(double hours) {
  return hoursText(hours).toStdString();
}

/// The week at whose end most hours have gone past their closing.
const WeekOfLabour* worstWeek(const std::vector<WeekOfLabour>& weeks) {
  const auto worst = std::ranges::max_element(weeks, {}, &WeekOfLabour::overdue);
  return worst == weeks.end() || worst->overdue < 0.5 ? nullptr : &*worst;
}

QString spanText(DaySpan span) {
  return voiceIn(language()).span(span);
}

}  // namespace

QString wholeHoursText(double hours) {
  if (hours < 1) return hoursText(hours);
  const QString whole = voiceIn(language()).count(std::llround(hours));
  return say(Sentence{phrase("Labour", "%1 h"), {whole.toStdString()}});
}

QString summaryOf(const std::vector<WeekOfLabour>& weeks, const PlanSum& sum) {
  double there = 0;
  double wanted = 0;
  for (const WeekOfLabour& week : weeks) {
    there += week.there;
    wanted += week.wanted;
  }
  QStringList sentences{
      say(Sentence{phrase("Labour", "%1 of work and %2 of hands in %3 weeks."),
                   {wholeHoursText(wanted).toStdString(),
                    wholeHoursText(there).toStdString(),
                    static_cast<std::int64_t>(weeks.size())}})};
  if (sum.windowsMissed == 0)
    sentences << say(Sentence{phrase("Labour", "Every window can be met.")});
  else
    sentences << sayCounted(
        sum.windowsMissed,
        phrase("Labour", "%1 window is missed, wholly or in part."),
        phrase("Labour", "%1 windows are missed, wholly or in part."));
  if (const WeekOfLabour* worst = worstWeek(weeks))
    sentences << say(Sentence{
        phrase("Labour",
               "Hands are shortest in the week of %1: %2 go past their closing."),
        {briefDay(worst->monday).toStdString(),
         wholeHoursText(worst->overdue).toStdString()}});
  if (sum.hoursLost > 0)
    sentences << say(Sentence{phrase("Labour", "%1 are not done while they are of use."),
                              {wholeHoursText(sum.hoursLost).toStdString()}});
  return sentences.join(QLatin1Char(' '));
}

TaskState shapeOf(Finish finish) {
  switch (finish) {
    case Finish::lost:
      return TaskState::lapsed;
    case Finish::late:
      return TaskState::late;
    case Finish::maybeLate:
      return TaskState::closing;
    case Finish::inTime:
      return TaskState::open;
    case Finish::beyond:
      break;
  }
  return TaskState::waiting;
}

QString doneText(const ComingJob& job) {
  if (job.forecast.span) return spanText(*job.forecast.span);
  if (job.undone >= job.hours) return say(Sentence{phrase("Labour", "none of it")});
  return say(Sentence{phrase("Labour", "%1 of it undone"), {hoursValue(job.undone)}});
}

QString finishText(const ComingJob& job) {
  switch (job.finish) {
    case Finish::lost:
      return say(Sentence{phrase("Labour", "of use to %1"),
                          {briefDay(job.lastUse).toStdString()}});
    case Finish::late:
      return sayCounted(daysBetween(job.closes, *job.forecast.done),
                        phrase("Labour", "%1 day late"),
                        phrase("Labour", "%1 days late"));
    case Finish::maybeLate:
      return say(Sentence{phrase("Labour", "may be late")});
    case Finish::inTime:
      return say(Sentence{phrase("Labour", "in time")});
    case Finish::beyond:
      break;
  }
  return say(Sentence{phrase("Labour", "goes on after this")});
}

QString wordsOf(const ComingJob& job, const QString& name) {
  const std::vector<Value> values{name.toStdString(),
                                  hoursValue(job.hours),
                                  doneText(job).toStdString(),
                                  spanText({job.closes, job.closes}).toStdString(),
                                  finishText(job).toStdString()};
  if (job.forecast.done)
    return say(
        Sentence{phrase("Labour", "%1: %2, done %3; window closes %4; %5."), values});
  return say(Sentence{phrase("Labour", "%1: %2, %3; window closes %4; %5."), values});
}

QString treesText(const LearnedPace& pace) {
  const std::string first = leafText(pace.firstLeaf).toStdString();
  if (pace.firstLeaf <= 1 && !pace.lastLeaf)
    return say(Sentence{phrase("Labour", "any leaf")});
  if (!pace.lastLeaf) return say(Sentence{phrase("Labour", "%1 and older"), {first}});
  if (*pace.lastLeaf <= pace.firstLeaf) return leafText(pace.firstLeaf);
  return say(Sentence{phrase("Labour", "%1 to %2"),
                      {first, leafText(*pace.lastLeaf).toStdString()}});
}

QString secondsText(double seconds) {
  return say(Sentence{phrase("Labour", "%1 s"), {std::int64_t{std::llround(seconds)}}});
}

QString crewsText(const LearnedPace& pace) {
  QStringList crews;
  for (const CrewRate& crew : pace.crews) {
    const std::string name =
        crew.crew.empty() ? say(Sentence{phrase("Labour", "no crew noted")}).toStdString()
                          : crew.crew;
    const Phrase words = pace.crews.size() == 1 ? phrase("Labour", "%1 %2")
                                                : phrase("Labour", "%1 %2, from %3");
    crews << say(Sentence{words,
                          {name,
                           secondsText(crew.rate.seconds()).toStdString(),
                           hoursValue(crew.rate.hours)}});
  }
  return crews.join(QLatin1Char('\n'));
}

QString wordsOf(const LearnedPace& pace) {
  const std::string name = say(pace.name).toStdString();
  const std::string trees = treesText(pace).toStdString();
  const std::string programme = secondsText(pace.rate.programme).toStdString();
  if (!pace.isLearned())
    return say(Sentence{phrase("Labour",
                               "%1, %2: %3 a tree in the programme; nothing learned "
                               "yet."),
                        {name, trees, programme}});
  QString crews = crewsText(pace);
  crews.replace(QLatin1Char('\n'), QLatin1String("; "));
  return say(Sentence{phrase("Labour",
                             "%1, %2: %3 a tree in the programme, %4 learned from %5. "
                             "%6."),
                      {name,
                       trees,
                       programme,
                       secondsText(pace.rate.seconds()).toStdString(),
                       hoursValue(pace.rate.hours),
                       crews.toStdString()}});
}

}  // namespace topwire
