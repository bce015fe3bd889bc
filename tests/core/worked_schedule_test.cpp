#include "core/phenology/stage.h"
#include "tests/support/builders.h"

#include <gmock/gmock.h>

namespace topwire {

namespace {

using namespace topwire::testing;

/// Stages counted from a full bloom that was seen, as the trade's stage calendar has them
/// (derived, for some 42 to 46 degrees of latitude).
class CountedFromBloom final : public PlainForecaster {
public:
  Outlook outlook(const Orchard& orchard,
                  const Planting&,
                  Season season,
                  Day) const override {
    const Day bloom = localSeasonDay(season, orchard.settings.hemisphere(), 5, 12);
    Outlook outlook;
    for (const auto& [bbch, days] : offsets) {
      StageEstimate estimate;
      estimate.bbch = bbch;
      estimate.kind = StageKind::observed;
      estimate.date = estimate.early = estimate.late = plusDays(bloom, days);
      outlook.stages.push_back(estimate);
    }
    return outlook;
  }

private:
  struct Offset {
    int bbch;
    int days;
  };

  static constexpr std::array offsets{Offset{stages::budSwell, -38},
                                      Offset{stages::silverTip, -35},
                                      Offset{stages::greenTip, -28},
                                      Offset{stages::halfInchGreen, -21},
                                      Offset{stages::tightCluster, -14},
                                      Offset{stages::pink, -5},
                                      Offset{stages::fullPink, -3},
                                      Offset{stages::firstBloom, -2},
                                      Offset{stages::fullBloom, 0},
                                      Offset{stages::petalFall, 8},
                                      Offset{stages::fruitSet, 16},
                                      Offset{stages::juneDrop, 40},
                                      Offset{stages::terminalBud, 110},
                                      Offset{stages::harvest, 120},
                                      Offset{stages::leafFall, 180}};
};

/// A window's edge; empty where the programme hangs it elsewhere on purpose.
struct Row {
  const char* id;
  int season;
  const char* opens;
  const char* closes;
};

// A schedule worked out by hand (derived) from the trade's stage calendar for Gala on
// M.9, moderate, 12 by 3 ft, planted on 10 April 2025, full bloom on 12 May in both
// years.
const Row north[]{
    {"feather-removal", 2025, "2025-04-10", "2025-04-20"},
    {"rub-rivals", 2026, "2026-04-14", "2026-05-07"},
    {"second-rub", 2026, "", "2026-05-28"},
    // Closes before open flowers let fire blight in; the schedule works on to petal fall.
    {"flower-removal", 2025, "2025-05-07", ""},
    {"clothes-pins", 2025, "2025-05-22", "2025-06-16"},
    {"clothes-pins", 2026, "2026-05-22", "2026-06-16"},
    {"limb-bending", 2025, "2025-06-02", "2025-06-26"},
    {"limb-bending", 2026, "2026-06-02", "2026-06-26"},
    {"hand-thinning", 2026, "2026-05-26", "2026-06-21"},
    {"guards-on", 2025, "", "2025-10-31"},
    {"white-paint", 2025, "", "2025-10-31"},
};

// The same in the south with full bloom on 12 November: counted from bloom, not by
// months.
const Row south[]{
    {"hand-thinning", 2026, "2026-11-26", "2026-12-22"},
};

void expectDates(const Orchard& orchard, std::span<const Row> rows) {
  const CountedFromBloom forecaster;
  const Trade trade{shippedTables(), shippedProgrammes(), forecaster};
  const Plan plan =
      planTasks(orchard, trade, {Season{2025}, Season{2026}}, dayOf(2025, 1, 1));
  const PlantingId planting = orchard.plantings.begin()->first;
  for (const Row& row : rows) {
    SCOPED_TRACE(row.id);
    const Task* task = plan.find({planting, row.id, Season{row.season}, 1});
    ASSERT_NE(task, nullptr);
    if (*row.opens != '\0') {
      EXPECT_EQ(isoText(task->opens), row.opens);
    }
    if (*row.closes != '\0') {
      EXPECT_EQ(isoText(task->closes), row.closes);
    }
  }
}

TEST(WorkedSchedule, AgreesWhereTheAnchorsAreTheSame) {
  expectDates(orchardOfOne(northernSettings(), dayOf(2025, 4, 10)), north);
}

TEST(WorkedSchedule, IsCountedFromBloomInTheSouth) {
  expectDates(orchardOfOne(southernSettings(), dayOf(2025, 9, 10)), south);
}

TEST(WorkedSchedule, LooksAtTiesInMidJulyAndMidOctober) {
  const CountedFromBloom forecaster;
  const Trade trade{shippedTables(), shippedProgrammes(), forecaster};
  const Orchard orchard = orchardOfOne(northernSettings(), dayOf(2025, 4, 10));
  const Plan plan =
      planTasks(orchard, trade, {Season{2025}, Season{2025}}, dayOf(2025, 1, 1));
  const PlantingId planting = orchard.plantings.begin()->first;
  const Task& july = *plan.find({planting, "tie-check", Season{2025}, 1});
  const Task& october = *plan.find({planting, "tie-check-autumn", Season{2025}, 1});
  EXPECT_TRUE((DaySpan{july.opens, july.closes}.contains(dayOf(2025, 7, 15))));
  EXPECT_TRUE((DaySpan{october.opens, october.closes}.contains(dayOf(2025, 10, 15))));
}

}  // namespace

}  // namespace topwire
