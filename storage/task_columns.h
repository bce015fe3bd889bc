#pragma once

#include "core/orchard/task_records.h"

#include <concepts>
#include <type_traits>

namespace topwire {

/// A record kind's table. The key is its first columns; none where there is one row.
struct TableOf {
  const char* name;
  int keyColumns;
};

template <class Held, class Record>
concept Is = std::same_as<std::remove_const_t<Held>, Record>;

constexpr TableOf tableOf(const Tick*) {
  return {"tick", 1};
}

constexpr TableOf tableOf(const TaskMark*) {
  return {"mark", 4};
}

constexpr TableOf tableOf(const StoredTask*) {
  return {"task", 4};
}

/// Each record lists its columns once, the key's first; creating the SQL, binding and
/// reading all walk the list. `visit` is called with a column's name and its field.
/// Weather is apart, since its table has a row a day: see weather_rows.h.
template <Is<TaskKey> Key, class Visit>
void columns(Key& key, Visit& visit) {
  visit("planting", key.planting);
  visit("operation", key.operation);
  visit("season", key.season.year);
  visit("pass", key.pass);
}

template <Is<Tick> Record, class Visit>
void columns(Record& tick, Visit& visit) {
  visit("id", tick.id);
  columns(tick.task, visit);
  visit("rows", tick.rows);
  visit("percent", tick.percent);
  visit("minutes", tick.minutes);
  visit("who", tick.by);
  visit("day", tick.day);
  visit("takes_back", tick.takesBack);
}

template <Is<TaskMark> Record, class Visit>
void columns(Record& mark, Visit& visit) {
  columns(mark.task, visit);
  visit.span("moved_first", "moved_last", mark.moved);
  visit("set_aside_reason", mark.setAsideReason);
  visit("hand_title", mark.handTitle);
  visit("hand_seconds_per_tree", mark.handSecondsPerTree);
}

template <Is<StoredTask> Record, class Visit>
void columns(Record& task, Visit& visit) {
  columns(task.key, visit);
  visit("opens", task.opens);
  visit("closes", task.closes);
  visit("cut_off", task.cutOff);
  visit("no_longer_asked", task.noLongerAsked);
}

}  // namespace topwire
