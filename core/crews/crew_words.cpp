#include "core/crews/crew_words.h"

#include "core/calendar/clock_time.h"
#include "core/crews/crew_hands.h"
#include "core/crews/hours.h"
#include "core/crews/task_names.h"
#include "core/labour/hours_figure.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace topwire {

namespace {

constexpr int tasksNamed = 3;
constexpr int minutesPerHour = 60;

Value wholeHours(double hours) {
  return std::int64_t{std::llround(hours)};
}

/// With decimals below ten, where they matter.
Value hoursValue(double hours) {
  if (hours >= 9.95) return wholeHours(hours);
  return hoursFigure(hours);
}

Sentence turnoutSentence(const Orchard& orchard, Day day) {
  std::int64_t there = 0;
  std::int64_t usual = 0;
  bool noted = false;
  for (const auto& [id, crew] : orchard.crews) {
    there += workersOn(orchard, crew, day);
    usual += crew.workers;
    noted = noted || orchard.turnouts.contains({id, day});
  }
  if (noted) return {phrase("Crew plan", "%1 of %2 turned out."), {there, usual}};
  if (there == usual)
    return {counted(usual,
                    phrase("Crew plan", "%1 worker is expected."),
                    phrase("Crew plan", "All %1 workers are expected.")),
            {usual}};
  return {phrase("Crew plan", "%1 of %2 workers are expected."), {there, usual}};
}

Sentence noWorkSentence(const Orchard& orchard, Day day) {
  const auto said = orchard.workDays.find(day);
  if (said != orchard.workDays.end() && !said->second.reason.empty())
    return {phrase("Crew plan", "No work on this day: %1."), {said->second.reason}};
  return {phrase("Crew plan", "No work on this day.")};
}

Sentence hoursSentence(const Orchard& orchard, const CrewPlan& plan, Day day) {
  double hours = 0;
  double idle = 0;
  for (const CrewLane& lane : lanesOn(orchard, plan, day)) {
    hours += lane.hours;
    idle += lane.idle;
  }
  if (hours == 0) return noWorkSentence(orchard, day);
  if (idle < hours / 10)
    return {phrase("Crew plan", "%1 worker-hours, all placed."), {wholeHours(hours)}};
  return {phrase("Crew plan", "%1 worker-hours, %2 of them without a job."),
          {wholeHours(hours), wholeHours(idle)}};
}

Sentence whatIsMissed(const Orchard& orchard,
                      const Trade& trade,
                      const WindowAtRisk& risk) {
  const std::vector<Value> values{namesOf(orchard, trade, risk.tasks, tasksNamed),
                                  hoursValue(risk.hoursMissing),
                                  risk.by};
  if (risk.lost)
    return {phrase("Crew plan",
                   "%1: %2 worker-hours will not be done while they are of use, the "
                   "first by %3."),
            values};
  return {
      phrase("Crew plan", "%1: %2 worker-hours will be late, the first closing on %3."),
      values};
}

Sentence bottleneck(const WindowAtRisk& risk) {
  const std::int64_t days = risk.workingDays;
  return {
      counted(days,
              phrase("Crew plan", "There is %3 working day for it, %1."),
              phrase("Crew plan", "The days that are too few: %1 to %2, %3 of work.")),
      {risk.firstDay, risk.lastDay, days}};
}

std::optional<Sentence> whatHelps(const WindowAtRisk& risk) {
  if (risk.workersMore == 0) return std::nullopt;
  const std::int64_t more = risk.workersMore;
  if (risk.beyondHelp <= 0)
    return Sentence{
        counted(
            more,
            phrase("Crew plan", "%1 more worker on these days would save all of it."),
            phrase("Crew plan", "%1 more workers on these days would save all of it.")),
        {more}};
  return Sentence{
      counted(more,
              phrase("Crew plan",
                     "%1 more worker on these days would save all but %2 hours."),
              phrase("Crew plan",
                     "%1 more workers on these days would save all but %2 hours.")),
      {more, hoursValue(risk.beyondHelp)}};
}

std::optional<Sentence> whatNobodyHelps(const WindowAtRisk& risk) {
  if (risk.beyondHelp <= 0) return std::nullopt;
  return Sentence{phrase("Crew plan",
                         "No hiring saves %1 hours: the window is too short for as many "
                         "as the block holds. Begin earlier, or let more people in."),
                  {hoursValue(risk.beyondHelp)}};
}

/// In minutes where whole hours would say none.
Sentence shortSentence(const WindowAtRisk& risk) {
  const auto minutes =
      std::max<std::int64_t>(1, std::llround(risk.hoursMissing * minutesPerHour));
  if (minutes < minutesPerHour)
    return {risk.lost ? phrase("Crew plan", "%1 minutes short by %2.")
                      : phrase("Crew plan", "%1 minutes late after %2."),
            {minutes, risk.by}};
  return {risk.lost ? phrase("Crew plan", "%1 hours short by %2.")
                    : phrase("Crew plan", "%1 hours late after %2."),
          {wholeHours(risk.hoursMissing), risk.by}};
}

Sentence closedSentence(const Orchard& orchard, const BlockClosure& closure) {
  const std::string name = orchard.blocks.at(closure.block).name;
  if (closure.reason.empty())
    return {phrase("Crew plan", "%1: keep out until %3 on %2."),
            {name, closure.until, clockText(closure.untilMinute)}};
  return {phrase("Crew plan", "%1: keep out until %3 on %2, %4."),
          {name, closure.until, clockText(closure.untilMinute), closure.reason}};
}

}  // namespace

DayHeadline headlineOf(const Orchard& orchard, const CrewPlan& plan, Day day) {
  DayHeadline head{
      turnoutSentence(orchard, day), hoursSentence(orchard, plan, day), std::nullopt};
  const std::vector<WindowAtRisk> risks = windowsAtRisk(plan);
  const auto first = std::ranges::find_if(
      risks, [day](const WindowAtRisk& risk) { return risk.by >= day; });
  if (first == risks.end()) return head;
  head.shortBy = shortSentence(*first);
  return head;
}

std::vector<Sentence> wordsOf(const Orchard& orchard,
                              const Trade& trade,
                              const WindowAtRisk& risk) {
  std::vector<Sentence> words{whatIsMissed(orchard, trade, risk), bottleneck(risk)};
  if (auto help = whatHelps(risk)) words.push_back(std::move(*help));
  if (auto none = whatNobodyHelps(risk)) words.push_back(std::move(*none));
  return words;
}

std::vector<Sentence> wordsOfWhole(const CrewPlan& plan) {
  const double bound = hoursOfLoss(plan.flow.bound);
  const double loss = hoursOfLoss(plan.schedule.loss);
  const double moves = hoursOfLoss(plan.schedule.loss - plan.withoutMoves);
  constexpr double nothing = 0.05;
  if (loss < nothing)
    return {{phrase("Crew plan", "Nothing is lost: every window can be met.")}};
  if (moves < nothing)
    return {{phrase("Crew plan",
                    "Lateness costs what %1 hours of work would. No plan can do with "
                    "less than %2."),
             {hoursValue(loss), hoursValue(bound)}}};
  return {{phrase("Crew plan",
                  "Lateness costs what %1 hours of work would. No plan can do with less "
                  "than %2; of the difference, %3 goes with moves between blocks."),
           {hoursValue(loss), hoursValue(bound), hoursValue(moves)}}};
}

Sentence wordsOfWorth(const DayWorth& worth) {
  if (worth.hours <= 0) return {phrase("Crew plan", "%1: no work."), {worth.day}};
  constexpr double nothing = 0.005;
  if (worth.saves < nothing)
    return {phrase("Crew plan", "%1: time in hand."), {worth.day}};
  return {phrase("Crew plan", "%1: one more worker-hour saves what %2 hours would cost."),
          {worth.day, Figure{worth.saves, worth.saves < 1 ? 2 : 1}}};
}

std::vector<Sentence> keptOut(const Orchard& orchard, Day day) {
  std::vector<const BlockClosure*> closed;
  for (const auto& [id, closure] : orchard.closures)
    if (closure.from <= day && day <= closure.until) closed.push_back(&closure);
  std::ranges::stable_sort(closed, {}, [&](const BlockClosure* closure) {
    return std::tuple{std::string_view{orchard.blocks.at(closure->block).name},
                      closure->until,
                      closure->untilMinute};
  });
  std::vector<Sentence> sentences;
  for (const BlockClosure* closure : closed)
    sentences.push_back(closedSentence(orchard, *closure));
  return sentences;
}

}  // namespace topwire
