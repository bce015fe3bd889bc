#include "core/programme/window_order.h"

#include <gmock/gmock.h>

namespace topwire {

namespace {

TEST(MostDaysBetween, comparesOnlyWhatHangsOnTheSameThing) {
  const AnchorPoint planting = OnPlanting{};
  const AnchorPoint bloom = OnStage{65};

  struct Row {
    Anchor earlier;
    Anchor later;
    std::optional<int> days;
  };

  for (const Row& row : {
           Row{{planting, -36, 0}, {planting, -24, 0}, 12 * 31},
           Row{{planting, -1, 0}, {planting, -2, 10}, -18},
           Row{{planting, 0, 3}, {bloom, 0, 0}, std::nullopt},
           Row{{bloom, 0, 14}, {bloom, 0, 10}, -4},
           Row{{OnStage{57}, 0, 0}, {bloom, 0, -30}, std::nullopt},
           Row{{bloom, 0, -20}, {OnStage{57}, 0, 0}, 19},
           Row{{bloom, 0, 0}, {OnStage{57}, 0, 0}, -1},
           Row{{OnStage{91}, 0, 0}, {OnStage{87}, 0, 0}, std::nullopt},
           Row{{OnMonth{11, 1, -1}, 0, 0}, {OnMonth{3, 1}, 0, 0}, 120},
           Row{{OnMonth{3, 1}, 0, 0}, {OnMonth{2, 29}, 0, 0}, -1},
           Row{{OnCompletion{"a"}, 0, 5}, {OnCompletion{"a"}, 0, 4}, -1},
           Row{{OnCompletion{"a"}, 0, 5}, {OnCompletion{"b"}, 0, 4}, std::nullopt},
       })
    EXPECT_EQ(mostDaysBetween(row.earlier, row.later), row.days);
}

}  // namespace

}  // namespace topwire
