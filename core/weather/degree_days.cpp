#include "core/weather/degree_days.h"

#include "core/base/contract.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace topwire {

namespace {

using std::numbers::pi;

DayRange inOrder(DayRange day) {
  if (day.minimum > day.maximum) std::swap(day.minimum, day.maximum);
  return day;
}

double mean(DayRange day) {
  return (day.minimum + day.maximum) / 2;
}

/// A day's course as a straight line from minimum to maximum.
struct Triangle {
  static double shareAbove(DayRange day, double threshold) {
    return (day.maximum - threshold) / (day.maximum - day.minimum);
  }

  static double areaAbove(DayRange day, double threshold) {
    const double above = day.maximum - threshold;
    return above * above / (2 * (day.maximum - day.minimum));
  }
};

/// A day's course as half a sine wave (Baskerville and Emin 1969, Ecology 50:514).
struct Sine {
  static double angleAt(DayRange day, double threshold) {
    const double amplitude = (day.maximum - day.minimum) / 2;
    return std::asin(std::clamp((threshold - mean(day)) / amplitude, -1.0, 1.0));
  }

  static double shareAbove(DayRange day, double threshold) {
    return 0.5 - angleAt(day, threshold) / pi;
  }

  static double areaAbove(DayRange day, double threshold) {
    const double amplitude = (day.maximum - day.minimum) / 2;
    const double angle = angleAt(day, threshold);
    return ((mean(day) - threshold) * (pi / 2 - angle) + amplitude * std::cos(angle))
           / pi;
  }
};

template <class Course>
double areaAbove(DayRange day, double threshold) {
  if (day.maximum <= threshold) return 0;
  if (day.minimum >= threshold) return mean(day) - threshold;
  return Course::areaAbove(day, threshold);
}

template <class Course>
double shareAbove(DayRange day, double threshold) {
  if (day.maximum <= threshold) return 0;
  if (day.minimum >= threshold) return 1;
  return Course::shareAbove(day, threshold);
}

template <class Course>
double single(DayRange day, Thresholds thresholds) {
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
double ofTwoHalves(DayRange day, double nextMinimum, Thresholds thresholds) {
  day = inOrder(day);
  return (single<Course>(day, thresholds)
          + single<Course>({nextMinimum, day.maximum}, thresholds))
         / 2;
}

}  // namespace

double simpleAverage(DayRange day, double lower) {
  return std::max(0.0, mean(day) - lower);
}

double modifiedAverage(DayRange day, double lower, double upper) {
  TOPWIRE_REQUIRE(upper > lower);
  return mean({std::clamp(day.minimum, lower, upper),
               std::clamp(day.maximum, lower, upper)})
         - lower;
}

double singleTriangle(DayRange day, Thresholds thresholds) {
  return single<Triangle>(day, thresholds);
}

double singleSine(DayRange day, Thresholds thresholds) {
  return single<Sine>(day, thresholds);
}

double doubleTriangle(DayRange day, double nextMinimum, Thresholds thresholds) {
  return ofTwoHalves<Triangle>(day, nextMinimum, thresholds);
}

double doubleSine(DayRange day, double nextMinimum, Thresholds thresholds) {
  return ofTwoHalves<Sine>(day, nextMinimum, thresholds);
}

}  // namespace topwire
