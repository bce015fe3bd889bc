#pragma once

#include "app/models/month_layout.h"

namespace topwire {

/// Finds each segment's words their room, and puts the segments in order of lane and day.
/// In turn: the name with its place inside the bar, the short name, both after the bar or
/// on its tail while the lane is free, the short name alone; else none.
void labelSegments(MonthWeek& week,
                   const std::vector<MonthBar>& bars,
                   const MonthMeasures& measures);

/// A name stands right of its diamond, or of its whisker's start where the diamond comes
/// later; left of it where only that side has room.
void nameStages(MonthWeek& week,
                const std::vector<MonthStage>& stages,
                const MonthMeasures& measures);

}  // namespace topwire
