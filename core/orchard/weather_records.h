#pragma once

#include "core/calendar/day.h"

#include <array>
#include <compare>
#include <cstddef>
#include <optional>

namespace topwire {

/// Where a day's figures come from, the weightier later: what is typed or measured takes
/// the place of a forecast, what a station measured that of figures typed in.
enum class WeatherSource { forecast, typed, measured };

/// What is known of one day at the station; no correction for a block is in it.
struct WeatherDay {
  std::optional<double> minimum;  ///< degrees C, never above the maximum
  std::optional<double> maximum;
  std::optional<double> rain;  ///< mm
  WeatherSource source = WeatherSource::measured;

  /// Both temperatures, without which a day counts as a gap.
  bool whole() const { return minimum && maximum; }

  bool known() const { return minimum || maximum || rain; }

  friend bool operator==(const WeatherDay&, const WeatherDay&) = default;
};

/// A calendar month.
struct MonthOfYear {
  int year = 0;
  unsigned month = 1;

  friend auto operator<=>(const MonthOfYear&, const MonthOfYear&) = default;
};

/// A month of weather: the unit in which it is kept, changed and undone, so that a
/// century comes in at once and yesterday's two figures stay a small edit.
struct WeatherMonth {
  MonthOfYear month;
  std::array<std::optional<WeatherDay>, 31> days;  ///< the first of the month first

  /// `day` must lie in this month.
  std::optional<WeatherDay>& on(Day day) { return days[placeOf(day)]; }

  const std::optional<WeatherDay>& on(Day day) const { return days[placeOf(day)]; }

  static std::size_t placeOf(Day day) {
    return static_cast<unsigned>(civil(day).day()) - 1U;
  }

  friend bool operator==(const WeatherMonth&, const WeatherMonth&) = default;
};

MonthOfYear monthOf(Day day);
/// First and last day of the month.
DaySpan spanOf(MonthOfYear month);
/// Whether it may stand in an orchard: a month of the calendar with at least one day,
/// none past the month's end and none of which nothing is known.
bool isSound(const WeatherMonth& month);

struct DatedWeather {
  Day day{};
  WeatherDay weather;

  friend bool operator==(const DatedWeather&, const DatedWeather&) = default;
};

}  // namespace topwire
