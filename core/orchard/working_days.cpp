#include "core/orchard/working_days.h"

#include <algorithm>

namespace topwire {

namespace {

bool coversDay(const BlockClosure& closure, Day day, int endMinute) {
  if (day < closure.from || day > closure.until) return false;
  return day < closure.until || closure.untilMinute >= endMinute;
}

}  // namespace

int workablePercent(const Orchard& orchard, Day day) {
  const auto said = orchard.workDays.find(day);
  if (said != orchard.workDays.end()) return said->second.percent;
  const unsigned weekday = date::weekday{day}.iso_encoding() - 1;
  return orchard.settings.workdays[weekday] ? 100 : 0;
}

bool isOff(const Crew& crew, Day day) {
  return std::ranges::any_of(crew.daysOff,
                             [day](const DaySpan& span) { return span.contains(day); });
}

bool canDo(const Crew& crew, std::string_view skill) {
  if (skill.empty() || crew.skills.empty()) return true;
  return std::ranges::find(crew.skills, skill) != crew.skills.end();
}

const BlockClosure* closedAllDay(const Orchard& orchard,
                                 BlockId block,
                                 Day day,
                                 int endMinute) {
  for (const auto& [id, closure] : orchard.closures)
    if (closure.block == block && coversDay(closure, day, endMinute)) return &closure;
  return nullptr;
}

}  // namespace topwire
