#pragma once

#include "core/orchard/trade_tables.h"
#include "core/phenology/outlook.h"

#include <optional>
#include <string>
#include <vector>

namespace topwire {

/// The height wanted of the leader's tip in one season: it rises in a straight line
/// through the days in which shoots grow.
struct LeaderCourse {
  /// What `end` is: from the fourth leaf on it is the mature height.
  enum class Aim { byTable, topWire, matureHeight };

  Season season{};
  int leaf = 0;
  Length start;  ///< wanted at the end of the season before; in the first leaf as planted
  Length end;    ///< wanted at this season's end
  DaySpan growth{};  ///< full bloom to terminal bud
  Aim aim = Aim::byTable;
  std::string source;

  Length wantedOn(Day day) const;
};

/// Full bloom to terminal bud as the outlook has them; 1 May to 15 August (1 November to
/// 15 February) where it has not.
DaySpan growthDays(const Outlook& outlook, Season season, Hemisphere hemisphere);

/// Nothing for trees that are not planted yet.
std::optional<LeaderCourse> leaderCourse(const Orchard& orchard,
                                         const TradeTables& tables,
                                         StageForecast& forecast,
                                         const Planting& planting,
                                         Season season);

enum class Standing { behind, asWanted, ahead };

/// The leader as measured last, against what was wanted on that day.
struct LeaderStanding {
  Length measured;  ///< mean of the sample trees
  Length wanted;
  Day day{};
  Standing standing = Standing::asWanted;  ///< within a twentieth is as wanted
};

std::optional<LeaderStanding> leaderStanding(const Orchard& orchard,
                                             const TradeTables& tables,
                                             StageForecast& forecast,
                                             const Planting& planting,
                                             Day upTo);

std::vector<Sentence> reasonsOf(const LeaderCourse& course, Day today, UnitSystem units);
Sentence sentenceOf(const LeaderStanding& standing, UnitSystem units);

}  // namespace topwire
