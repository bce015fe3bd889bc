#pragma once

#include "core/base/result.h"
#include "core/edit/change.h"
#include "core/orchard/trade_tables.h"

#include <span>
#include <string>
#include <vector>

namespace topwire {

/// What a run of days changes in an orchard's weather.
struct MergedWeather {
  std::vector<AnyEdit> edits;
  int added = 0;  ///< days of which nothing was known
  int replaced = 0;
  int unchanged = 0;
  int keptBecauseWeightier = 0;
  int forecastDropped = 0;  ///< days of an earlier forecast that the new one lacks
};

/// Fits days into what the orchard knows. A day from a weightier source is never replaced
/// by one from a lighter; of two from the same source the new one stands. Where the day
/// that stands lacks a figure it takes the other's, unless that is a forecast's: rain
/// read off a gauge stays beside the station's temperatures.
///
/// Where the days hold a forecast, it replaces the whole of an earlier one, so that no
/// day is left of a forecast that has been given up.
MergedWeather mergeWeather(const Orchard& orchard, std::span<const DatedWeather> days);

/// Days read from a file, which `fileName` names. Where they tell nothing new the change
/// is empty, and its name says so. Refused where there is no day, and where a figure
/// can't be one.
Checked<Change> importWeather(const Orchard& orchard,
                              std::span<const DatedWeather> days,
                              const std::string& fileName);

/// One day's figures by hand; fields: day, minimum, maximum, rain. A day after `today`
/// is a forecast and changes nothing else of the forecast; no other day is. What is left
/// out stays as it was. Refused where measured figures stand in the way.
Checked<Change> typeWeather(const Orchard& orchard, const DatedWeather& typed, Day today);

/// Refused where nothing is known of these days.
Checked<Change> removeWeather(const Orchard& orchard, DaySpan days);

/// Dates from the grower's book; fields: cultivar, stage, day. The cultivar is one of the
/// tables or of the orchard's plantings, its capitals aside. A date of the same cultivar,
/// stage and season is replaced.
Checked<Change> addPastStage(const Orchard& orchard,
                             const TradeTables& tables,
                             const PastStage& past,
                             Day today);
Checked<Change> removePastStage(const Orchard& orchard, PastStageId past);

/// A date read from a file, and its place there for problems: "bloom.csv:12".
struct PlacedPastStage {
  PastStage past;
  std::string place;
};

/// All of them or none; of two for the same cultivar, stage and season the later stands.
Checked<Change> importPastStages(const Orchard& orchard,
                                 const TradeTables& tables,
                                 std::span<const PlacedPastStage> dates,
                                 const std::string& fileName,
                                 Day today);

}  // namespace topwire
