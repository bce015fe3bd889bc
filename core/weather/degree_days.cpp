#include "core/weather/degree_days.h"

#include "core/base/contract.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace topwire {

namespace {

using std::numbers::pi;

DayExtremes inOrder(DayExtremes day) {
  if (day.minimum > day.maximum) std::swap(day.minimum, day.maximum);
  return day;
}

double mean(DayExtremes day) {
  return (day.minimum + day.maximum) / 2;
}

/// A day's course as a straight line from minimum to maximum.
struct Triangle {
  static double shareAbove(DayExtremes day, double threshold) {
    return (day.maximum - threshold) / (day.maximum - day.minimum);
  }

  static double areaAbove(DayExtremes day, double threshold) {
    const double above = day.maximum - threshold;
    return above * above / (2 * (day.maximum - day.minimum));
  }
};

/// A day's course as half a sine wave (Baskerville and Emin 1969, Ecology 50:514).
struct Sine {
  static double angleAt(DayExtremes day, double threshold) {
    const double amplitude = (day.maximum - day.minimum) / 2;
    return std::asin(std::clamp((threshold - mean(day)) / amplitude, -1.0, 1.0));
  }

  static double shareAbove(DayExtremes day, double threshold) {
    return 0.5 - angleAt(day, threshold) / pi;
  }

  static double areaAbove(DayExtremes day, double threshold) {
    const double amplitude = (day.maximum - day.minimum) / 2;
    const double angle = angleAt(day, threshold);
    return ((mean(day) - threshold) * (pi / 2 - angle) + amplitude * std::cos(angle))
           / pi;
  }
};

template <class Course>
double areaAbove(DayExtremes day, double threshold) {
  if (day.maximum <= threshold) return 0;
  if (day.minimum >= threshold) return mean(day) - threshold;
  return Course::areaAbove(day, threshold);
}

template <class Course>
double shareAbove(DayExtremes day, double threshold) {
  if (day.maximum <= threshold) return 0;
  if (day.minimum >= threshold) return 1;
  return Course::shareAbove(day, threshold);
}

template <class Course>
double single(DayExtremes day, Thresholds thresholds) {
  day = inOrder(day);
  const auto [lower, upper, cutoff] = thresholds;
  TOPWIRE_REQUIRE(cutoff == Cutoff::none || upper > lower);
  const double heat = areaAbove<Course>(day, lower);
  switch (cutoff) {
    case Cutoff::none:
      break;
    case Cutoff::horizontal:
      return heat - areaAbove<Course>(day, upper);
    case Cutoff::intermediate:
      return heat - 2 * areaAbove<Course>(day, upper);
    case Cutoff::vertical:
      return heat - areaAbove<Course>(day, upper)
             - (upper - lower) * shareAbove<Course>(day, upper);
  }
  return heat;
}

template <class Course>
double ofTwoHalves(DayExtremes day, double nextMinimum, Thresholds thresholds) {
  day = inOrder(day);
  return (single<Course>(day, thresholds)
          + single<Course>({nextMinimum, day.maximum}, thresholds))
         / 2;
}

}  // namespace

double simpleAverage(DayExtremes day, double lower) {
  return std::max(0.0, mean(day) - lower);
}

double modifiedAverage(DayExtremes day, double lower, double upper) {
  TOPWIRE_REQUIRE(upper > lower);
  return mean({std::clamp(day.minimum, lower, upper),
               std::clamp(day.maximum, lower, upper)})
         - lower;
}

double singleTriangle(DayExtremes day, Thresholds thresholds) {
  return single<Triangle>(day, thresholds);
}

double singleSine(DayExtremes day, Thresholds thresholds) {
  return single<Sine>(day, thresholds);
}

double doubleTriangle(DayExtremes day, double nextMinimum, Thresholds thresholds) {
  return ofTwoHalves<Triangle>(day, nextMinimum, thresholds);
}

double doubleSine(DayExtremes day, double nextMinimum, Thresholds thresholds) {
  return ofTwoHalves<Sine>(day, nextMinimum, thresholds);
}

}  // namespace topwire
