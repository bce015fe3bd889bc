#pragma once

#include "core/labour/learned_rates.h"
#include "core/planning/conditions.h"
#include "core/planning/planner.h"
#include "core/planning/progress.h"

#include <map>
#include <optional>
#include <vector>

namespace topwire {

/// Dates the operations of one planting. Asked for an operation and a season it answers
/// that season's tasks, having dated first whatever they are anchored to; each is worked
/// out once. The programme's anchors must not go round in a circle (its reader sees to
/// it).
class PlantingDates {
public:
  /// The references must outlive this.
  PlantingDates(const Orchard& orchard,
                const Trade& trade,
                StageForecast& forecast,
                const Planting& planting,
                const Programme& programme,
                const ProgressByTask& progress,
                const LearnedRates& rates);

  /// The operation's passes in this season, in order; none where it does not apply.
  const std::vector<Task>& tasksOf(const Operation& operation, Season season);

  std::vector<Sentence> takeNotes() { return std::move(notes_); }

private:
  using Edge = std::optional<DateReason>;

  std::vector<Task> date(const Operation& operation, Season season);
  std::optional<Task> dateOnce(const Operation& operation, Season season);
  bool isAskedFor(const Operation& operation, Season season) const;
  Edge resolve(const Anchor& anchor, Season season);
  Edge onCompletion(const std::string& id, Season season);
  Vigour vigour(Season season) const;
  const Outlook& outlook(Season season);
  bool holdForPlanting(const Operation& operation, Task& task) const;
  void setCutOff(const Operation& operation, Season season, Task& task);
  void heedEarlyBloom(const Operation& operation, Task& task) const;
  std::vector<Task> passesOf(const Operation& operation, const Task& whole);
  void weighConditions(const Operation& operation, std::vector<Task>& tasks);
  bool isLeftOut(const Operation& operation, Season season) const;
  bool looksToLastSeason(Measure measure, const Task& task);
  void endVisits(const Condition& until, std::vector<Task>& tasks);
  std::optional<Task> waitedFor(const std::string& id, Season season, Day opens);
  bool hasLapsed(const Operation& operation, const Task& task, Day day) const;
  void holdForNeeds(const Operation& operation, Task& task);
  void noteNeeds(const Operation& operation, Task& task);
  const MeasuredTrees& measured();

  const Orchard* orchard_;
  StageForecast* forecast_;
  const Planting* planting_;
  const Programme* programme_;
  const ProgressByTask* progress_;
  const LearnedRates* rates_;
  Hemisphere hemisphere_;
  const TradeTables* tables_;
  std::map<Season, Outlook> outlooks_;
  std::optional<MeasuredTrees> measured_;
  std::map<std::pair<std::string, Season>, std::vector<Task>> dated_;
  std::vector<Sentence> notes_;
};

}  // namespace topwire
