#include "app/models/month_layout.h"

#include <gmock/gmock.h>

#include <set>

namespace topwire {

namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

const Day today = dayOf(2027, 4, 8);

MonthBar bar(const std::string& name,
             Day opens,
             Day closes,
             TaskState state = TaskState::open,
             std::optional<Day> cutOff = std::nullopt) {
  MonthBar made;
  made.tasks = {TaskKey{PlantingId{0, 1}, name, {2027}, 1}};
  made.operation = name;
  made.name = name;
  made.shortName = name;
  made.place = "Creek";
  made.opens = opens;
  made.closes = closes;
  made.state = state;
  made.cutOff = cutOff;
  return made;
}

/// Every letter is 8 wide; a place counts with its comma and space.
MonthMeasures measures(int lanes = 5) {
  MonthMeasures made;
  made.columnWidth = 100;
  made.lanes = lanes;
  made.textWidth = [](const std::string& name, const std::string& place) {
    const std::size_t comma = name.empty() || place.empty() ? 0 : 2;
    return 8.0 * static_cast<double>(name.size() + place.size() + comma);
  };
  return made;
}

MonthLayout april(std::vector<MonthBar> bars, int lanes = 5) {
  return layOutWeeks(weeksOfMonth(today), std::move(bars), {}, measures(lanes), today);
}

const MonthSegment* segmentOf(const MonthLayout& layout, int week, const char* name) {
  for (const auto& segment : layout.weeks.at(static_cast<std::size_t>(week)).segments)
    if (layout.bars[segment.bar].name == name) return &segment;
  return nullptr;
}

struct MonthCase {
  const char* what;
  Day day;
  Day first;
  Day last;
  std::vector<int> weeks;
};

class WeeksOfMonth : public ::testing::TestWithParam<MonthCase> {};

TEST_P(WeeksOfMonth, runFromMondayToSundayWithIsoNumbers) {
  const MonthCase& row = GetParam();
  const DaySpan weeks = weeksOfMonth(row.day);
  EXPECT_EQ(isoText(weeks.first), isoText(row.first)) << row.what;
  EXPECT_EQ(isoText(weeks.last), isoText(row.last)) << row.what;
  std::vector<int> numbers;
  for (const MonthWeek& week : layOutWeeks(weeks, {}, {}, measures(), today).weeks)
    numbers.push_back(week.week.number);
  EXPECT_EQ(numbers, row.weeks) << row.what;
}

// As Python 3.11 gives them: calendar.Calendar().monthdatescalendar, date.isocalendar.
INSTANTIATE_TEST_SUITE_P(Months,
                         WeeksOfMonth,
                         ::testing::Values(MonthCase{"over New Year, week 53 of 2026",
                                                     dayOf(2027, 1, 15),
                                                     dayOf(2026, 12, 28),
                                                     dayOf(2027, 1, 31),
                                                     {53, 1, 2, 3, 4}},
                                           MonthCase{"December 2026 ends in week 53",
                                                     dayOf(2026, 12, 1),
                                                     dayOf(2026, 11, 30),
                                                     dayOf(2027, 1, 3),
                                                     {49, 50, 51, 52, 53}},
                                           MonthCase{"leap February",
                                                     dayOf(2028, 2, 29),
                                                     dayOf(2028, 1, 31),
                                                     dayOf(2028, 3, 5),
                                                     {5, 6, 7, 8, 9}},
                                           MonthCase{"February in four weeks exactly",
                                                     dayOf(2027, 2, 28),
                                                     dayOf(2027, 2, 1),
                                                     dayOf(2027, 2, 28),
                                                     {5, 6, 7, 8}},
                                           MonthCase{"six weeks",
                                                     dayOf(2027, 5, 31),
                                                     dayOf(2027, 4, 26),
                                                     dayOf(2027, 6, 6),
                                                     {17, 18, 19, 20, 21, 22}}));

TEST(MonthLayout, theMostUrgentStandOnTop) {
  const Day first = dayOf(2027, 4, 1);
  const Day last = dayOf(2027, 4, 30);
  const MonthLayout layout = april({bar("lapsed", first, last, TaskState::lapsed),
                                    bar("done", first, last, TaskState::done),
                                    bar("aside", first, last, TaskState::setAside),
                                    bar("waiting", first, last, TaskState::waiting),
                                    bar("open later", first, last),
                                    bar("open sooner", first, plusDays(last, -1)),
                                    bar("closing", first, last, TaskState::closing),
                                    bar("late", first, last, TaskState::late)},
                                   8);
  std::vector<std::string> lanes;
  for (const MonthSegment& segment : layout.weeks[1].segments)
    lanes.push_back(layout.bars[segment.bar].name);
  EXPECT_THAT(lanes,
              ElementsAre("late",
                          "closing",
                          "open sooner",
                          "open later",
                          "waiting",
                          "aside",
                          "done",
                          "lapsed"));
}

TEST(MonthLayout, aRoutineVisitGivesWayUntilItIsLate) {
  const Day first = dayOf(2027, 4, 5);
  MonthBar visit = bar("visit", first, plusDays(first, 6), TaskState::closing);
  visit.routine = true;
  MonthBar missed = bar("missed", first, plusDays(first, 2), TaskState::late);
  missed.routine = true;
  const MonthLayout layout = april(
      {visit, bar("waiting", first, plusDays(first, 9), TaskState::waiting), missed});
  EXPECT_EQ(segmentOf(layout, 1, "missed")->lane, 0);
  EXPECT_EQ(segmentOf(layout, 1, "waiting")->lane, 1);
  EXPECT_EQ(segmentOf(layout, 1, "visit")->lane, 2);
}

TEST(MonthLayout, wordsKeepOffACutOff) {
  const MonthLayout layout = april({bar("Brush",
                                        dayOf(2027, 4, 5),
                                        dayOf(2027, 4, 5),
                                        TaskState::open,
                                        dayOf(2027, 4, 6))});
  const BarLabel& label = segmentOf(layout, 1, "Brush")->label;
  EXPECT_EQ(label.at, LabelAt::after);
  EXPECT_GE(label.left, 200) << "right of the bracket";
}

TEST(MonthLayout, aBarKeepsItsLaneThoughTheOneAboveEnds) {
  const MonthLayout layout =
      april({bar("short", dayOf(2027, 4, 1), dayOf(2027, 4, 9), TaskState::closing),
             bar("long", dayOf(2027, 4, 1), dayOf(2027, 4, 30))});
  for (const int week : {0, 1, 2, 3, 4})
    EXPECT_EQ(segmentOf(layout, week, "long")->lane, 1) << "week " << week;
}

TEST(MonthLayout, aFreeLaneIsUsedAgain) {
  const MonthLayout layout =
      april({bar("first", dayOf(2027, 4, 5), dayOf(2027, 4, 7)),
             bar("second", dayOf(2027, 4, 8), dayOf(2027, 4, 11))});
  EXPECT_EQ(segmentOf(layout, 1, "first")->lane, 0);
  EXPECT_EQ(segmentOf(layout, 1, "second")->lane, 0);
}

TEST(MonthLayout, barsNeverOverlapInALaneAndNoneIsLost) {
  std::vector<MonthBar> bars;
  constexpr int count = 60;
  for (int i = 0; i < count; ++i) {
    const Day opens = plusDays(dayOf(2027, 3, 20), i * 7 % 41);
    bars.push_back(bar("job " + std::to_string(i), opens, plusDays(opens, i * 5 % 17)));
  }
  const MonthLayout layout = april(bars);
  for (const MonthWeek& week : layout.weeks) {
    std::set<std::pair<int, int>> taken;
    for (const MonthSegment& segment : week.segments) {
      EXPECT_LT(segment.lane, 5);
      for (int day = segment.span().first; day <= segment.span().last; ++day)
        EXPECT_TRUE(taken.emplace(segment.lane, day).second)
            << "week " << week.week.number;
    }
    int here = 0;
    for (const MonthBar& one : bars)
      if (DaySpan{one.opens, one.closes}.overlaps(
              {week.monday, plusDays(week.monday, 6)}))
        ++here;
    EXPECT_EQ(static_cast<int>(week.segments.size()) + week.hidden, here);
  }
}

TEST(MonthLayout, aBarBelowTheLastLaneMovesUpWhereThereIsRoom) {
  const Day monday = dayOf(2027, 4, 5);
  const MonthLayout layout = april({bar("one", monday, plusDays(monday, 6)),
                                    bar("two", monday, plusDays(monday, 6)),
                                    bar("three", monday, plusDays(monday, 20))},
                                   2);
  EXPECT_EQ(layout.weeks[1].hidden, 1);
  EXPECT_EQ(segmentOf(layout, 1, "three"), nullptr);
  ASSERT_NE(segmentOf(layout, 2, "three"), nullptr);
  EXPECT_EQ(segmentOf(layout, 2, "three")->lane, 0);
  EXPECT_EQ(layout.weeks[2].hidden, 0);
}

TEST(MonthLayout, endsAreTornWhereTheWindowGoesOn) {
  const MonthLayout layout = april({bar("job", dayOf(2027, 4, 7), dayOf(2027, 4, 20))});
  const MonthSegment& first = *segmentOf(layout, 1, "job");
  EXPECT_FALSE(first.tornLeft);
  EXPECT_TRUE(first.tornRight);
  EXPECT_EQ(first.span(), (WeekSpan{2, 6}));
  const MonthSegment& middle = *segmentOf(layout, 2, "job");
  EXPECT_TRUE(middle.tornLeft);
  EXPECT_TRUE(middle.tornRight);
  const MonthSegment& last = *segmentOf(layout, 3, "job");
  EXPECT_TRUE(last.tornLeft);
  EXPECT_FALSE(last.tornRight);
  EXPECT_EQ(last.span(), (WeekSpan{0, 1}));
}

struct CutOffCase {
  const char* what;
  TaskState state;
  std::optional<Day> cutOff;
  std::optional<WeekSpan> tail;  ///< in the week of the closing, Wednesday 7 April
  std::optional<int> bracket;
};

class CutOffs : public ::testing::TestWithParam<CutOffCase> {};

TEST_P(CutOffs, leadFromTheClosing) {
  const CutOffCase& row = GetParam();
  const MonthLayout layout =
      april({bar("job", dayOf(2027, 4, 5), dayOf(2027, 4, 7), row.state, row.cutOff)});
  const MonthSegment& segment = *segmentOf(layout, 1, "job");
  EXPECT_EQ(segment.body, (WeekSpan{0, 2})) << row.what;
  EXPECT_EQ(segment.tail, row.tail) << row.what;
  EXPECT_EQ(segment.bracket, row.bracket) << row.what;
}

INSTANTIATE_TEST_SUITE_P(States,
                         CutOffs,
                         ::testing::Values(CutOffCase{"late, to its cut-off",
                                                      TaskState::late,
                                                      dayOf(2027, 4, 10),
                                                      WeekSpan{3, 5},
                                                      5},
                                           CutOffCase{"late, cut off next week",
                                                      TaskState::late,
                                                      dayOf(2027, 4, 14),
                                                      WeekSpan{3, 6},
                                                      std::nullopt},
                                           CutOffCase{"late, no cut-off: to today",
                                                      TaskState::late,
                                                      std::nullopt,
                                                      WeekSpan{3, 3},
                                                      std::nullopt},
                                           CutOffCase{"open, to its cut-off",
                                                      TaskState::open,
                                                      dayOf(2027, 4, 10),
                                                      WeekSpan{3, 5},
                                                      5},
                                           CutOffCase{"cut off at its closing",
                                                      TaskState::closing,
                                                      dayOf(2027, 4, 7),
                                                      std::nullopt,
                                                      2},
                                           CutOffCase{"done: it no longer matters",
                                                      TaskState::done,
                                                      dayOf(2027, 4, 10),
                                                      std::nullopt,
                                                      std::nullopt}));

TEST(MonthLayout, theSameJobOnTheSameDaysMerges) {
  std::vector<MonthBar> bars;
  for (const char* place : {"Creek", "Quarry", "Quarry", "North Ridge"}) {
    bars.push_back(bar("limbs", dayOf(2027, 4, 1), dayOf(2027, 4, 10)));
    bars.back().place = place;
  }
  bars.push_back(bar("limbs", dayOf(2027, 4, 1), dayOf(2027, 4, 11)));
  const auto merged =
      mergeAlike(bars, [](int blocks) { return std::to_string(blocks) + " blocks"; });
  ASSERT_THAT(merged, SizeIs(2));
  EXPECT_EQ(merged[0].place, "3 blocks");
  EXPECT_THAT(merged[0].tasks, SizeIs(4));
  EXPECT_EQ(merged[1].place, "Creek") << "another closing: a bar of its own";
}

TEST(MonthLayout, anotherStateKeepsBarsApart) {
  const auto merged =
      mergeAlike({bar("limbs", dayOf(2027, 4, 1), dayOf(2027, 4, 10)),
                  bar("limbs", dayOf(2027, 4, 1), dayOf(2027, 4, 10), TaskState::done)},
                 [](int) { return std::string{"several"}; });
  EXPECT_THAT(merged, SizeIs(2));
}

struct LabelCase {
  const char* what;
  std::string name;
  std::string shortName;
  int days;
  LabelAt at;
  std::string shown;
  std::string place;
};

class Labels : public ::testing::TestWithParam<LabelCase> {};

/// 24 before the words, 6 after; "Creek" with its comma is 56 wide.
TEST_P(Labels, takeTheRoomThereIs) {
  const LabelCase& row = GetParam();
  const Day monday = dayOf(2027, 4, 5);
  MonthBar job = bar(row.name, monday, plusDays(monday, row.days - 1));
  job.shortName = row.shortName;
  const Day next = plusDays(monday, row.days);
  const MonthLayout layout = april({job, bar("next", next, plusDays(next, 10))}, 1);
  const BarLabel& label = layout.weeks[1].segments.front().label;
  EXPECT_EQ(label.at, row.at) << row.what;
  EXPECT_EQ(label.name, row.shown) << row.what;
  EXPECT_EQ(label.place, row.place) << row.what;
}

INSTANTIATE_TEST_SUITE_P(
    Rooms,
    Labels,
    ::testing::Values(
        LabelCase{"all inside", "Prune", "Cut", 2, LabelAt::inside, "Prune", "Creek"},
        LabelCase{"the short name",
                  "Prune the long leaders",
                  "Leaders",
                  2,
                  LabelAt::inside,
                  "Leaders",
                  "Creek"},
        LabelCase{"the short name alone",
                  "Prune the leaders",
                  "Leaders",
                  1,
                  LabelAt::inside,
                  "Leaders",
                  ""},
        LabelCase{"nothing fits, a bar follows",
                  "Prune the leaders",
                  "Long leaders",
                  1,
                  LabelAt::nowhere,
                  "",
                  ""}));

TEST(MonthLayout, aLabelGoesRightOfItsBarWhereTheLaneIsFree) {
  const MonthLayout layout =
      april({bar("Prune the leaders", dayOf(2027, 4, 5), dayOf(2027, 4, 5))});
  const BarLabel& label = segmentOf(layout, 1, "Prune the leaders")->label;
  EXPECT_EQ(label.at, LabelAt::after);
  EXPECT_EQ(label.name, "Prune the leaders");
  EXPECT_GE(label.left, 100);
}

TEST(MonthLayout, onceItsBodyIsPastTheTailCarriesTheLabel) {
  const MonthLayout layout = april({bar("Plant",
                                        dayOf(2027, 3, 22),
                                        dayOf(2027, 4, 3),
                                        TaskState::late,
                                        dayOf(2027, 4, 25))});
  const MonthSegment& segment = *segmentOf(layout, 1, "Plant");
  EXPECT_FALSE(segment.body.has_value());
  EXPECT_EQ(segment.label.at, LabelAt::onTail);
}

MonthStage stage(int bbch, Day early, Day date, Day late, bool observed = false) {
  return {bbch, "growth stage " + std::to_string(bbch), early, date, late, observed, {}};
}

TEST(MonthLayout, aStageOfSeveralPlantingsIsShownOnce) {
  const auto merged =
      mergeStages({stage(53, dayOf(2027, 4, 5), dayOf(2027, 4, 12), dayOf(2027, 4, 18)),
                   stage(53, dayOf(2027, 4, 2), dayOf(2027, 4, 8), dayOf(2027, 4, 14)),
                   stage(53, dayOf(2027, 4, 4), dayOf(2027, 4, 10), dayOf(2027, 4, 16))});
  ASSERT_THAT(merged, SizeIs(1));
  EXPECT_EQ(isoText(merged[0].date), "2027-04-10") << "the middle one";
  EXPECT_EQ(merged[0].shown, (DaySpan{dayOf(2027, 4, 8), dayOf(2027, 4, 12)}));
  EXPECT_EQ(isoText(merged[0].early), "2027-04-02");
  EXPECT_EQ(isoText(merged[0].late), "2027-04-18");
}

TEST(MonthLayout, oneLikeliestDayIsShownWithTheDaysItMayBe) {
  const auto merged =
      mergeStages({stage(53, dayOf(2027, 4, 5), dayOf(2027, 4, 8), dayOf(2027, 4, 13))});
  EXPECT_EQ(merged[0].shown, (DaySpan{dayOf(2027, 4, 5), dayOf(2027, 4, 13)}));
}

TEST(MonthLayout, aStageSeenHasNoWhisker) {
  const auto stages = mergeStages(
      {stage(52, dayOf(2027, 4, 6), dayOf(2027, 4, 6), dayOf(2027, 4, 6), true)});
  const MonthLayout layout =
      layOutWeeks(weeksOfMonth(today), {}, stages, measures(), today);
  ASSERT_THAT(layout.weeks[1].stages, SizeIs(1));
  EXPECT_FALSE(layout.weeks[1].stages[0].whisker);
  EXPECT_EQ(layout.weeks[1].stages[0].diamond, 1);
  EXPECT_EQ(layout.weeks[1].stages[0].name, StageMark::Name::after);
}

TEST(MonthLayout, namesOfStagesDoNotRunIntoEachOther) {
  const auto stages =
      mergeStages({stage(53, dayOf(2027, 4, 5), dayOf(2027, 4, 6), dayOf(2027, 4, 7)),
                   stage(54, dayOf(2027, 4, 5), dayOf(2027, 4, 7), dayOf(2027, 4, 9)),
                   stage(55, dayOf(2027, 4, 9), dayOf(2027, 4, 11), dayOf(2027, 4, 12))});
  const auto& marks =
      layOutWeeks(weeksOfMonth(today), {}, stages, measures(), today).weeks[1].stages;
  ASSERT_THAT(marks, SizeIs(3));
  EXPECT_EQ(marks[0].name, StageMark::Name::after);
  EXPECT_EQ(marks[1].name, StageMark::Name::none) << "the first one's name is there";
  EXPECT_EQ(marks[2].name, StageMark::Name::before) << "no room right of Sunday";
  EXPECT_TRUE(marks[1].lowered);
}

TEST(MonthLayout, workOutsideTheWeeksIsLeftOut) {
  EXPECT_THAT(april({bar("job", dayOf(2027, 6, 1), dayOf(2027, 6, 9))}).bars, IsEmpty());
}

}  // namespace

}  // namespace topwire
