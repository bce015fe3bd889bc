#pragma once

#include "core/orchard/orchard.h"
#include "core/orchard/trade_tables.h"
#include "core/phenology/outlook.h"

#include <functional>
#include <map>
#include <string>
#include <vector>

namespace topwire::testing {

/// First bloom as the day of the year, by cultivar and year.
using Blooms = std::map<std::string, std::map<int, int>>;

/// CSV with the columns cultivar, year and first_bloom_doy in any order.
Blooms readBlooms(const std::string& csv);

/// A place with observed bloom and its daily weather; its normals are the weather's
/// means.
struct BloomRecord {
  BloomRecord(Blooms observed, std::vector<DatedWeather> days, double latitude);

  Blooms blooms;
  Orchard orchard;  ///< one old planting at the station itself, all of the weather
};

/// The shipped tables with the published offsets of further cultivars at Klein-Altendorf.
const TradeTables& trialTables();

/// One thing to be tried: whose other seasons are in the grower's book, and what is known
/// of the weather. An outlook on 31 December knows all of it.
struct BloomTrial {
  std::string name;
  std::function<bool(const std::string& cultivar)> hasOwnDates;
  unsigned month = 12;
  unsigned day = 31;
  bool otherSeasons = true;  ///< daily weather of other years is at hand
};

struct BloomScore {
  std::string cultivar;
  int seasons = 0;
  int held = 0;  ///< cases inside the span of eight in ten
  double rmse = 0;
  double bias = 0;  ///< days; later than observed is positive
};

/// Each season of each cultivar dated with its own bloom date left out.
std::vector<BloomScore> scoresOf(const BloomRecord& record, const BloomTrial& trial);

/// Over the cultivars with ten seasons or more: the mean of their RMSE, their cases.
BloomScore meanOf(const std::vector<BloomScore>& scores);

}  // namespace topwire::testing
