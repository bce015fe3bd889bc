#include "core/programme/window_order.h"

#include "core/calendar/day.h"
#include "core/phenology/stage.h"

#include <algorithm>

namespace topwire {

namespace {

/// As many days as so many months can have, or for a negative count must have at least.
int longestSpan(int months) {
  constexpr int longMonth = 31;
  constexpr int shortMonth = 28;
  return months >= 0 ? months * longMonth : months * shortMonth;
}

int offsetBetween(const Anchor& earlier, const Anchor& later) {
  return longestSpan(later.months - earlier.months) + later.days - earlier.days;
}

/// Trees set their terminal buds before an early or after a late cultivar's harvest.
bool eitherMayComeFirst(OnStage one, OnStage other) {
  const auto pair = std::minmax(one.bbch, other.bbch);
  return pair.first == stages::harvest && pair.second == stages::terminalBud;
}

Day dayInSomeSeason(const OnMonth& point, const Anchor& anchor) {
  constexpr int someYear = 2027;
  const Day monthsFirst = dayOf(someYear + point.seasonsLater, point.month, 1);
  const Day monthsEnd = plusDays(plusMonthsCapToMonthEnd(monthsFirst, 1), -1);
  const Day day =
      std::min(plusDays(monthsFirst, static_cast<int>(point.day) - 1), monthsEnd);
  return plusDays(plusMonthsCapToMonthEnd(day, anchor.months), anchor.days);
}

struct Comparison {
  const Anchor& earlier;
  const Anchor& later;

  std::optional<int> operator()(OnStage from, OnStage to) const {
    if (from.bbch < to.bbch || eitherMayComeFirst(from, to)) return std::nullopt;
    return offsetBetween(earlier, later) - (from == to ? 0 : 1);
  }

  std::optional<int> operator()(OnPlanting, OnPlanting) const {
    return offsetBetween(earlier, later);
  }

  std::optional<int> operator()(const OnMonth& from, const OnMonth& to) const {
    return daysBetween(dayInSomeSeason(from, earlier), dayInSomeSeason(to, later));
  }

  std::optional<int> operator()(const OnCompletion& from, const OnCompletion& to) const {
    if (from != to) return std::nullopt;
    return offsetBetween(earlier, later);
  }

  template <class From, class To>
  std::optional<int> operator()(const From&, const To&) const {
    return std::nullopt;
  }
};

}  // namespace

std::optional<int> mostDaysBetween(const Anchor& earlier, const Anchor& later) {
  return std::visit(Comparison{earlier, later}, earlier.point, later.point);
}

}  // namespace topwire
