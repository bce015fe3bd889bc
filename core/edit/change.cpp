#include "core/edit/change.h"

#include "core/base/contract.h"

#include <algorithm>
#include <type_traits>

namespace topwire {

namespace {

template <class Record>
auto keyOf(const Record& record) {
  if constexpr (requires { record.id; })
    return record.id;
  else if constexpr (requires { record.month; })
    return record.month;
  else if constexpr (requires { record.of; })
    return record.of;
  else if constexpr (requires { record.season; })
    return record.season;
  else if constexpr (requires { record.task; })
    return record.task;
  else
    return record.day;
}

auto& shelf(auto& orchard, const Block*) {
  return orchard.blocks;
}

auto& shelf(auto& orchard, const Planting*) {
  return orchard.plantings;
}

auto& shelf(auto& orchard, const Crew*) {
  return orchard.crews;
}

auto& shelf(auto& orchard, const Observation*) {
  return orchard.observations;
}

auto& shelf(auto& orchard, const Tick*) {
  return orchard.ticks;
}

auto& shelf(auto& orchard, const TaskMark*) {
  return orchard.marks;
}

auto& shelf(auto& orchard, const PastStage*) {
  return orchard.pastStages;
}

auto& shelf(auto& orchard, const WeatherMonth*) {
  return orchard.weather;
}

auto& shelf(auto& orchard, const Measurement*) {
  return orchard.measurements;
}

auto& shelf(auto& orchard, const SeasonTarget*) {
  return orchard.targets;
}

auto& shelf(auto& orchard, const SeasonClose*) {
  return orchard.closes;
}

auto& shelf(auto& orchard, const OwnProgramme*) {
  return orchard.programmes;
}

auto& shelf(auto& orchard, const WorkDay*) {
  return orchard.workDays;
}

auto& shelf(auto& orchard, const Turnout*) {
  return orchard.turnouts;
}

auto& shelf(auto& orchard, const Pin*) {
  return orchard.pins;
}

auto& shelf(auto& orchard, const BlockClosure*) {
  return orchard.closures;
}

auto& shelf(auto& orchard, const PlannedJob*) {
  return orchard.plannedJobs;
}

template <class Record>
auto& shelfOf(auto& orchard) {
  return shelf(orchard, static_cast<const Record*>(nullptr));
}

template <class Record>
const Record& eitherSide(const Edit<Record>& edit) {
  TOPWIRE_REQUIRE(edit.before || edit.after);
  return edit.before ? *edit.before : *edit.after;
}

template <class Record>
bool matches(const Orchard& orchard, const Edit<Record>& edit) {
  if constexpr (std::is_same_v<Record, Settings>) {
    return edit.before && edit.after && *edit.before == orchard.settings;
  } else {
    const auto& records = shelfOf<Record>(orchard);
    const auto found = records.find(keyOf(eitherSide(edit)));
    if (found == records.end()) return !edit.before;
    return edit.before == found->second;
  }
}

template <class Record>
void applyOne(Orchard& orchard, const Edit<Record>& edit) {
  if constexpr (std::is_same_v<Record, Settings>) {
    orchard.settings = *edit.after;
  } else {
    auto& records = shelfOf<Record>(orchard);
    const auto key = keyOf(eitherSide(edit));
    if (edit.after)
      records.insert_or_assign(key, *edit.after);
    else
      records.erase(key);
  }
}

void dropTasksOf(Orchard& orchard, PlantingId planting) {
  std::erase_if(orchard.tasks,
                [&](const auto& item) { return item.first.planting == planting; });
}

Sentence movedOn() {
  return Sentence{
      phrase("Deed",
             "What this step would change has been changed since, so it was left as it "
             "is. Look at it as it stands now and decide again.")};
}

Sentence ticksStandOn(const Planting& planting) {
  return Sentence{
      phrase("Deed",
             "Planting %1 has ticks on record, so it can't be taken out. Set its open "
             "tasks aside instead."),
      {planting.code}};
}

Sentence tickStays(const Tick& tick) {
  return Sentence{
      phrase("Deed", "A tick of %1 is a record and stays; take it back with a new one."),
      {tick.day}};
}

std::optional<Sentence> obstacle(const Orchard& orchard, const Edit<Planting>& edit) {
  if (edit.after) return std::nullopt;
  const bool ticked = std::ranges::any_of(orchard.ticks, [&](const auto& item) {
    return item.second.task.planting == edit.before->id;
  });
  if (!ticked) return std::nullopt;
  return ticksStandOn(*edit.before);
}

std::optional<Sentence> obstacle(const Orchard&, const Edit<Tick>& edit) {
  if (!edit.before) return std::nullopt;
  return tickStays(*edit.before);
}

std::optional<Sentence> obstacle(const Orchard&, const Edit<WeatherMonth>& edit) {
  TOPWIRE_REQUIRE(!edit.after || isSound(*edit.after));
  return std::nullopt;
}

template <class Record>
std::optional<Sentence> obstacle(const Orchard&, const Edit<Record>&) {
  return std::nullopt;
}

struct Inverter {
  IdSource& ids;

  AnyEdit operator()(const Edit<Tick>& edit) const {
    TOPWIRE_REQUIRE(edit.after && !edit.before);
    Tick back = *edit.after;
    back.takesBack = back.id;
    back.id = ids.next<TickId>();
    back.minutes = 0;
    return Edit<Tick>{std::nullopt, back};
  }

  template <class Record>
  AnyEdit operator()(const Edit<Record>& edit) const {
    return Edit<Record>{edit.after, edit.before};
  }
};

}  // namespace

Change inverted(const Change& change, IdSource& ids) {
  Change inverse{change.name, {}};
  for (const AnyEdit& edit : change.edits)
    inverse.edits.push_back(std::visit(Inverter{ids}, edit));
  std::ranges::reverse(inverse.edits);
  return inverse;
}

Done fits(const Orchard& orchard, const Change& change) {
  for (const AnyEdit& any : change.edits) {
    const bool matched =
        std::visit([&](const auto& edit) { return matches(orchard, edit); }, any);
    if (!matched) return refuse(movedOn());
    auto found =
        std::visit([&](const auto& edit) { return obstacle(orchard, edit); }, any);
    if (found) return refuse(std::move(*found));
  }
  return {};
}

void apply(Orchard& orchard, const Change& change) {
  TOPWIRE_REQUIRE(fits(orchard, change).has_value());
  for (const AnyEdit& any : change.edits) {
    std::visit([&](const auto& edit) { applyOne(orchard, edit); }, any);
    const auto* planting = std::get_if<Edit<Planting>>(&any);
    if (planting && !planting->after) dropTasksOf(orchard, planting->before->id);
  }
}

}  // namespace topwire
