#include "core/weather/normals.h"

#include "core/calendar/day.h"

#include <array>

namespace topwire {

namespace {

/// After these, further passes move no day by more than 0.06 degrees at a station with
/// cold winters (Penticton).
constexpr int passes = 400;

/// Fall of temperature with height in the standard atmosphere (ISO 2533:1975), degrees C
/// per metre.
constexpr double lapseRate = 0.0065;

/// Index of each month's first day in its year, and the year's length at the end.
std::array<std::size_t, 13> monthStarts(int year) {
  std::array<std::size_t, 13> starts{};
  const Day newYear = dayOf(year, 1, 1);
  for (int month = 0; month <= 12; ++month)
    starts[static_cast<std::size_t>(month)] = static_cast<std::size_t>(
        daysBetween(newYear, plusMonthsCapToMonthEnd(newYear, month)));
  return starts;
}

struct Month {
  std::size_t first;
  std::size_t end;
};

/// Each day of the month becomes the mean of itself and its neighbours, plus what brings
/// the month back to its mean: smoothing moves only heat across the month's two ends.
/// `days` carries the year's last day in front and its first one behind.
void smooth(const std::vector<double>& days, std::vector<double>& smoothed, Month month) {
  const auto [first, end] = month;
  const double gained = (days[first - 1] - days[first] + days[end] - days[end - 1]) / 3;
  constexpr double third = 1.0 / 3;
  const double putBack = -gained / static_cast<double>(end - first);
  for (std::size_t i = first; i < end; ++i)
    smoothed[i] = (days[i - 1] + days[i] + days[i + 1]) * third + putBack;
}

/// The year closes on itself.
void joinEnds(std::vector<double>& days) {
  days.front() = days[days.size() - 2];
  days.back() = days[1];
}

}  // namespace

std::vector<double> dailyFromMonthly(const std::array<double, 12>& monthly, int year) {
  const auto starts = monthStarts(year);
  std::vector<double> days(starts.back() + 2);
  for (std::size_t month = 0; month < 12; ++month)
    for (std::size_t i = starts[month]; i < starts[month + 1]; ++i)
      days[i + 1] = monthly[month];
  std::vector<double> smoothed(days.size());
  for (int pass = 0; pass < passes; ++pass) {
    joinEnds(days);
    for (std::size_t month = 0; month < 12; ++month)
      smooth(days, smoothed, {starts[month] + 1, starts[month + 1] + 1});
    days.swap(smoothed);
  }
  return {days.begin() + 1, days.end() - 1};
}

double lapseCorrection(Length site, Length station) {
  return -lapseRate * (site - station).inMetres();
}

double expectedDegreeDays(DayExtremes normal, double lower, double scatter) {
  double sum = 0;
  for (const double deviate : equallyLikely) {
    const double shift = scatter * deviate;
    sum += singleSine({normal.minimum + shift, normal.maximum + shift}, {.lower = lower});
  }
  return sum / static_cast<double>(equallyLikely.size());
}

}  // namespace topwire
