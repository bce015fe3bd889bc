#pragma once

#include "core/calendar/season.h"

#include <map>
#include <string>
#include <vector>

namespace topwire {

/// One date from the grower's own book set against the published heat: how many times the
/// published sum was in when the stage was reached.
struct OwnHeat {
  std::string cultivar;
  int bbch = 0;
  Season season{};
  double ratio = 1;
};

/// What the grower's own past dates say about the published heat sums here. Three things
/// are learned, each from what the one before leaves over: how the place differs (all
/// cultivars), how a cultivar differs there, how a stage of that cultivar differs. Each
/// is a mean over seasons shrunk toward nothing by n / (n + k), k being the variance of
/// single seasons over that of places, cultivars or stages: one season counts for about
/// half, five for more than four fifths.
class Calibration {
public:
  Calibration() = default;
  /// `placeDeviation`: standard deviation of the sums' logarithm between places; that of
  /// cool-winter districts unless said otherwise.
  explicit Calibration(const std::vector<OwnHeat>& own,
                       double placeDeviation = coolPlaces);

  /// By what to multiply the published sum.
  double factorFor(const std::string& cultivar, int bbch) const;
  /// Standard deviation of that factor, as a share of it: what is not known of the place
  /// and the cultivar; a season's own deviation comes on top.
  double uncertaintyFor(const std::string& cultivar) const;
  /// Seasons with a date of this cultivar.
  int seasonsOf(const std::string& cultivar) const;

  static constexpr double coolPlaces = 0.06;
  /// At Meknes bloom took three times the heat of Klein-Altendorf.
  static constexpr double warmPlaces = 0.6;

private:
  struct Learned {
    double shift = 0;  ///< of the logarithm
    int seasons = 0;
  };

  double placeDeviation_ = coolPlaces;
  Learned place_;
  std::map<std::string, Learned> cultivars_;
  std::map<std::pair<std::string, int>, Learned> stages_;
};

}  // namespace topwire
