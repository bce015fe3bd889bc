#pragma once

#include "core/closing/next_season.h"

#include <vector>

namespace topwire {

/// Worker-hours of one month of the year.
struct MonthLabour {
  unsigned month = 1;  ///< 1 for January
  double planned = 0;  ///< of the season looked back on, by the programme
  double noted = 0;    ///< of that season, with its ticks
  double coming = 0;   ///< planned of the next season

  friend bool operator==(const MonthLabour&, const MonthLabour&) = default;
};

/// Twelve months, the season's first one first. Planned hours are spread evenly over the
/// days of their windows, noted ones stand on the days of their ticks; work of a season
/// outside its own twelve months counts under the month's name. Work set aside is left
/// out. The next season is planned as it will be once `proposal` is settled.
std::vector<MonthLabour> labourByMonth(const Orchard& orchard,
                                       const Plan& plan,
                                       const Trade& trade,
                                       const SeasonProposal& proposal,
                                       Day today);

/// The orchard with the season closed as proposed; as it is where that is refused.
Orchard onceClosed(const Orchard& orchard,
                   const TradeTables& tables,
                   const SeasonProposal& proposal,
                   Day today);

}  // namespace topwire
