#include "core/crews/crew_question.h"

#include "core/base/contract.h"
#include "core/crews/agreed_work.h"
#include "core/crews/crew_hands.h"
#include "core/crews/crew_jobs.h"
#include "core/crews/crew_pins.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace topwire {

namespace {

constexpr Seconds minute = 60;
constexpr int minutesOfDay = 24 * 60;

/// Everything a crew can do, with work for anyone first; then what jobs ask for that none
/// can do is not in it.
std::vector<std::string> skillsAskedFor(const Orchard& orchard,
                                        const Trade& trade,
                                        const std::vector<TaskView>& views) {
  std::vector<std::string> skills{""};
  for (const TaskView& view : views) {
    const Operation* operation = operationOf(orchard, trade.programmes, view.task->key);
    if (operation != nullptr && !operation->skill.empty())
      skills.push_back(operation->skill);
  }
  std::ranges::sort(skills);
  skills.erase(std::ranges::unique(skills).begin(), skills.end());
  return skills;
}

void addClosure(CrewBlock& block,
                const CrewQuestion& question,
                const BlockClosure& closure) {
  const int first = std::max(0, question.indexOf(closure.from));
  const int last = std::min(question.problem.days - 1, question.indexOf(closure.until));
  for (int day = first; day <= last; ++day) {
    const bool reopens = question.dayOf(day) == closure.until;
    const int until = reopens ? closure.untilMinute : minutesOfDay;
    const Seconds from = Seconds{until - question.startMinute} * minute;
    if (from > 0) block.shut.push_back({day, from});
  }
}

CrewBlock crewBlock(const Orchard& orchard,
                    const CrewQuestion& question,
                    const Block& block) {
  CrewBlock made;
  made.workersAtMost = std::max(1, block.workersAtMost.value_or(block.rows.count()));
  for (const auto& [id, closure] : orchard.closures)
    if (closure.block == block.id) addClosure(made, question, closure);
  return made;
}

/// Along the great circle.
double kilometresBetween(const Block& one, const Block& other) {
  constexpr double earthRadius = 6371;  // km, mean
  const auto radians = [](double degrees) { return degrees * std::numbers::pi / 180; };
  const double north = radians(*other.latitude - *one.latitude);
  const double east = radians(*other.longitude - *one.longitude);
  const double a = std::pow(std::sin(north / 2), 2)
                   + std::cos(radians(*one.latitude)) * std::cos(radians(*other.latitude))
                         * std::pow(std::sin(east / 2), 2);
  return 2 * earthRadius * std::asin(std::sqrt(a));
}

Seconds moveBetween(const Settings& settings, const Block& one, const Block& other) {
  const Seconds setUp = Seconds{settings.moveMinutes} * minute;
  if (!one.latitude || !one.longitude || !other.latitude || !other.longitude)
    return setUp;
  // Whole minutes, so that no machine's arithmetic moves a plan.
  const double onTheWay = kilometresBetween(one, other) * settings.moveMinutesPerKm;
  return setUp + static_cast<Seconds>(std::lround(onTheWay)) * minute;
}

void addMoves(CrewQuestion& question, const Orchard& orchard) {
  const Settings& settings = orchard.settings;
  question.problem.move = Seconds{settings.moveMinutes} * minute;
  if (settings.moveMinutesPerKm == 0) return;
  for (const BlockId from : question.blocks) {
    auto& row = question.problem.moveBetween.emplace_back();
    for (const BlockId to : question.blocks)
      row.push_back(
          from == to
              ? 0
              : moveBetween(settings, orchard.blocks.at(from), orchard.blocks.at(to)));
  }
}

void addBlocks(CrewQuestion& question, const Orchard& orchard) {
  for (const Block* block : blocksInOrder(orchard)) {
    question.blocks.push_back(block->id);
    question.problem.blocks.push_back(crewBlock(orchard, question, *block));
  }
  addMoves(question, orchard);
}

void addCrews(CrewQuestion& question, const Orchard& orchard) {
  for (const Crew* crew : crewsInOrder(orchard)) question.crews.push_back(crew->id);
  if (question.crews.empty())
    question.notes.push_back(
        {phrase("Crew plan", "There are no crews yet; add one under Settings.")});
}

}  // namespace

std::optional<int> CrewQuestion::jobOf(const TaskKey& task) const {
  const auto found = std::ranges::find(tasks, task);
  if (found == tasks.end()) return std::nullopt;
  return static_cast<int>(found - tasks.begin());
}

CrewQuestion crewQuestion(const Orchard& orchard,
                          const Trade& trade,
                          const std::vector<TaskView>& views,
                          const Outlooks& outlooks,
                          Day today,
                          int days,
                          const Supposition& supposed) {
  TOPWIRE_REQUIRE(days > 0);
  CrewQuestion question;
  question.first = today;
  question.startMinute = orchard.settings.startMinute;
  question.skills = skillsAskedFor(orchard, trade, views);
  CrewProblem& problem = question.problem;
  problem.days = days;
  problem.skills = static_cast<int>(question.skills.size());
  problem.keepTogether = orchard.settings.keepTogether / 100.0;
  problem.dayLength = dayLengths(orchard, today, days, supposed);
  addCrews(question, orchard);
  addBlocks(question, orchard);
  addGangs(question, orchard, outlooks, supposed);
  addJobs(question, orchard, trade, views, outlooks, supposed);
  addPins(question, orchard);
  addAgreed(question, orchard);
  return question;
}

}  // namespace topwire
