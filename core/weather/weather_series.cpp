#include "core/weather/weather_series.h"

namespace topwire {

WeatherSeries::WeatherSeries(const std::map<MonthOfYear, WeatherMonth>& months) {
  if (months.empty()) return;
  const Day first = spanOf(months.begin()->first).first;
  days_ = DaySpan{first, spanOf(months.rbegin()->first).last};
  values_.resize(static_cast<std::size_t>(days_->length()));
  for (const auto& [month, record] : months) {
    const auto start = static_cast<std::size_t>(daysBetween(first, spanOf(month).first));
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
