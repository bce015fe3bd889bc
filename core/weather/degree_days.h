#pragma once

namespace topwire {

/// A day's minimum and maximum, in the unit the thresholds are given in. Swapped silently
/// by the functions below if the minimum is the higher one.
struct DayExtremes {
  double minimum;
  double maximum;
};

/// How heat above an upper threshold counts (Zalom et al. 1983): `horizontal` counts it
/// as the threshold, `intermediate` takes it off once more, `vertical` counts no heat
/// while it is that hot.
enum class Cutoff { none, horizontal, intermediate, vertical };

struct Thresholds {
  double lower;
  double upper = 0;  ///< read only with a cutoff; must then be above `lower`
  Cutoff cutoff = Cutoff::none;
};

/// Degree days of one day, each by one published method. A sum is only valid with the
/// method its requirement was derived with.
double simpleAverage(DayExtremes day, double lower);
/// Both temperatures clamped to the thresholds first (McMaster and Wilhelm 1997, method
/// 2).
double modifiedAverage(DayExtremes day, double lower, double upper);
double singleTriangle(DayExtremes day, Thresholds thresholds);
double singleSine(DayExtremes day, Thresholds thresholds);
/// The day's second half falls to the next day's minimum.
double doubleTriangle(DayExtremes day, double nextMinimum, Thresholds thresholds);
double doubleSine(DayExtremes day, double nextMinimum, Thresholds thresholds);

}  // namespace topwire
