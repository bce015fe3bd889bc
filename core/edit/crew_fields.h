#pragma once

#include "core/orchard/crew_records.h"

#include <concepts>
#include <type_traits>

namespace topwire {

template <class Held, class Record>
concept FieldsOf = std::same_as<std::remove_const_t<Held>, Record>;

/// A field that changes written by an earlier version lack; such a change knew no other
/// value than the one a new record has.
struct Later {
  const char* name;
};

/// The fields of the records of crews and their days, as a change's JSON names them: see
/// change_json.cpp.
template <FieldsOf<Crew> Record, class Visit>
void fields(Record& crew, Visit visit) {
  visit("id", crew.id);
  visit("name", crew.name);
  visit("workers", crew.workers);
  visit("hoursPerDay", crew.hoursPerDay);
  visit(Later{"skills"}, crew.skills);
  visit(Later{"members"}, crew.members);
  visit(Later{"daysOff"}, crew.daysOff);
  visit(Later{"youngMinutes"}, crew.youngMinutes);
}

template <FieldsOf<WorkDay> Record, class Visit>
void fields(Record& work, Visit visit) {
  visit("day", work.day);
  visit("percent", work.percent);
  visit("reason", work.reason);
}

template <FieldsOf<Turnout> Record, class Visit>
void fields(Record& turnout, Visit visit) {
  visit("crew", turnout.of.crew);
  visit("day", turnout.of.day);
  visit("workers", turnout.workers);
}

template <FieldsOf<Pin> Record, class Visit>
void fields(Record& pin, Visit visit) {
  visit("id", pin.id);
  visit("kind", pin.kind);
  visit("task", pin.task);
  visit("crew", pin.crew);
  visit("day", pin.day);
  visit("reason", pin.reason);
}

template <FieldsOf<BlockClosure> Record, class Visit>
void fields(Record& closure, Visit visit) {
  visit("id", closure.id);
  visit("block", closure.block);
  visit("from", closure.from);
  visit("until", closure.until);
  visit("untilMinute", closure.untilMinute);
  visit("reason", closure.reason);
}

template <FieldsOf<PlannedJob> Record, class Visit>
void fields(Record& job, Visit visit) {
  visit("day", job.of.day);
  visit("crew", job.of.crew);
  visit("order", job.of.order);
  visit("task", job.task);
  visit("rows", job.rows);
  visit("startMinute", job.startMinute);
  visit("workerMinutes", job.workerMinutes);
  visit("workers", job.workers);
}

}  // namespace topwire
