#include "core/weather/weather_series.h"

#include <algorithm>

namespace topwire {

namespace {

Day firstOf(MonthOfYear month) {
  return dayOf(month.year, month.month, 1);
}

}  // namespace

WeatherSeries::WeatherSeries(const std::map<MonthOfYear, WeatherMonth>& months) {
  if (months.empty()) return;
  const Day first = firstOf(months.begin()->first);
  const Day end = plusMonthsCapToMonthEnd(firstOf(months.rbegin()->first), 1);
  days_ = DaySpan{first, plusDays(end, -1)};
  values_.resize(static_cast<std::size_t>(daysBetween(first, end)));
  for (const auto& [month, record] : months) {
    const auto start = static_cast<std::size_t>(daysBetween(first, firstOf(month)));
    for (std::size_t i = 0; i < record.days.size(); ++i)
      if (record.days[i]) values_[start + i] = *record.days[i];
  }
}

const WeatherDay* WeatherSeries::at(Day day) const {
  if (!days_ || !days_->contains(day)) return nullptr;
  const WeatherDay& value =
      values_[static_cast<std::size_t>(daysBetween(days_->first, day))];
  return value.whole() ? &value : nullptr;
}

int WeatherSeries::wholeDaysIn(DaySpan span) const {
  int count = 0;
  for (Day day = span.first; day <= span.last; day = plusDays(day, 1))
    count += at(day) != nullptr ? 1 : 0;
  return count;
}

}  // namespace topwire
