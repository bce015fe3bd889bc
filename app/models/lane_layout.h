#pragma once

#include <vector>

namespace topwire {

/// The hours of a working day laid along a line, in minutes from midnight.
struct DayAxis {
  int from = 0;
  int to = 0;

  double placeOf(int minute, double width) const;

  friend bool operator==(const DayAxis&, const DayAxis&) = default;
};

/// A stretch of the axis, and where its card stands.
struct LaneStretch {
  double from = 0;
  double to = 0;
};

struct CardPlace {
  int line = 0;  ///< from 0; more than one where there are too many to read in one
  double left = 0;
  double width = 0;
};

/// How many cards stand side by side; one at least.
int mostInLine(double width, double least, double gap);

/// Cards in the order of their stretches, none narrower than `least` and none over
/// another: short ones take their room from the long ones beside them, and what cannot
/// stand in one line goes on in the next.
std::vector<CardPlace> placeCards(const std::vector<LaneStretch>& stretches,
                                  double width,
                                  double least,
                                  double gap);

}  // namespace topwire
