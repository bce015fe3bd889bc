#pragma once

#include "core/orchard/crew_records.h"
#include "storage/task_columns.h"

namespace topwire {

constexpr TableOf tableOf(const Crew*) {
  return {"crew", 1};
}

constexpr TableOf tableOf(const WorkDay*) {
  return {"work_day", 1};
}

constexpr TableOf tableOf(const Turnout*) {
  return {"turnout", 2};
}

constexpr TableOf tableOf(const Pin*) {
  return {"pin", 1};
}

constexpr TableOf tableOf(const BlockClosure*) {
  return {"closure", 1};
}

constexpr TableOf tableOf(const PlannedJob*) {
  return {"planned_job", 3};
}

/// See task_columns.h.
template <Is<Crew> Record, class Visit>
void columns(Record& crew, Visit& visit) {
  visit("id", crew.id);
  visit("name", crew.name);
  visit("workers", crew.workers);
  visit("hours_per_day", crew.hoursPerDay);
  visit("skills", crew.skills);
  visit("members", crew.members);
  visit("days_off", crew.daysOff);
  visit("young_minutes", crew.youngMinutes);
}

template <Is<WorkDay> Record, class Visit>
void columns(Record& work, Visit& visit) {
  visit("day", work.day);
  visit("percent", work.percent);
  visit("reason", work.reason);
}

template <Is<Turnout> Record, class Visit>
void columns(Record& turnout, Visit& visit) {
  visit("crew", turnout.of.crew);
  visit("day", turnout.of.day);
  visit("workers", turnout.workers);
}

template <Is<Pin> Record, class Visit>
void columns(Record& pin, Visit& visit) {
  visit("id", pin.id);
  visit("kind", pin.kind);
  columns(pin.task, visit);
  visit("crew", pin.crew);
  visit("day", pin.day);
  visit("reason", pin.reason);
}

template <Is<BlockClosure> Record, class Visit>
void columns(Record& closure, Visit& visit) {
  visit("id", closure.id);
  visit("block", closure.block);
  visit("first_day", closure.from);
  visit("last_day", closure.until);
  visit("until_minute", closure.untilMinute);
  visit("reason", closure.reason);
}

template <Is<PlannedJob> Record, class Visit>
void columns(Record& job, Visit& visit) {
  visit("day", job.of.day);
  visit("crew", job.of.crew);
  visit("place", job.of.order);
  columns(job.task, visit);
  visit("rows", job.rows);
  visit("start_minute", job.startMinute);
  visit("worker_minutes", job.workerMinutes);
  visit("workers", job.workers);
}

}  // namespace topwire
