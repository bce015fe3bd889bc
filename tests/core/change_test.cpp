#include "core/edit/change.h"

#include "tests/support/builders.h"

#include <gmock/gmock.h>

#include <algorithm>

namespace topwire {
namespace {

using ::testing::HasSubstr;

constexpr TaskKey leaderTie{{0, 2}, "leader-tie", {2027}, 2};

Tick tickOf(const std::string& rows) {
  Tick tick;
  tick.id = {0xfedcba9876543210, 7};
  tick.task = leaderTie;
  tick.rows = parseRows(rows).rows;
  tick.percent = 50;
  tick.minutes = 90;
  tick.by = "Ñandú crew";
  tick.day = dayOf(2027, 4, 6);
  return tick;
}

Planting fullPlanting() {
  Planting planting =
      testing::planting(2, testing::block(1, "Creek", "1-12, 15"), dayOf(2024, 2, 29));
  planting.kind = PlantingKind::replant;
  planting.treesPerRow.reset();
  planting.trees = 37;
  planting.vigour = Vigour::strong;
  planting.vigourReason = "Brotes de más de 60 cm — 2026 \"visto\"";
  return planting;
}

TaskMark fullMark() {
  TaskMark mark;
  mark.task = leaderTie;
  mark.moved = DaySpan{dayOf(2027, 3, 1), dayOf(2027, 3, 9)};
  mark.setAsideReason = "lluvia\nlluvia";
  mark.handTitle = "Mend wire 🍎";
  mark.handSecondsPerTree = 4;
  return mark;
}

/// A leap February with a gap, days of each source, figures missing and such as have no
/// short decimal.
WeatherMonth fullMonth() {
  WeatherMonth month{{2028, 2}, {}};
  month.days[0] = WeatherDay{-1.1, 0.1 + 0.2, 12.7, WeatherSource::measured};
  month.days[1] = WeatherDay{std::nullopt, 1.0 / 3, std::nullopt, WeatherSource::typed};
  month.days[28] = WeatherDay{-0.0, 1e-300, 0, WeatherSource::forecast};
  return month;
}

Measurement fullMeasurement() {
  Measurement measurement;
  measurement.id = {0, 9};
  measurement.planting = {0, 2};
  measurement.measure = Measure::shootGrowth;
  measurement.day = dayOf(2027, 10, 1);
  measurement.values = {381'000, 0, 250'001};
  measurement.by = "Ana";
  measurement.note = "hileras 3–5, \"sin fruta\"";
  return measurement;
}

SeasonTarget fullTarget() {
  SeasonTarget target;
  target.of = {{0, 2}, Season{2028}};
  target.vigour = Vigour::weak;
  target.vigourReason = "Brotes cortos";
  target.fruitFrom = 20;
  target.fruitTo = 30;
  target.note = "año «alto»";
  return target;
}

Crew fullCrew() {
  Crew crew{{0, 5}, "Río", 6, 7.25, {"pruning", "poda ñ"}, {"Ana", "Béa"}, {}, 90};
  crew.daysOff = {{dayOf(2027, 5, 3), dayOf(2027, 5, 9)},
                  {dayOf(2027, 12, 25), dayOf(2027, 12, 25)}};
  return crew;
}

Pin fullPin() {
  return {{0, 10},
          PinKind::crewToJob,
          leaderTie,
          CrewId{0, 5},
          dayOf(2027, 4, 6),
          "porque sí"};
}

PlannedJob fullPlannedJob() {
  return {
      {dayOf(2027, 4, 6), {0, 5}, 2}, leaderTie, parseRows("1-4, 7").rows, 390, 480, 6};
}

/// Every record kind and every kind of value a name can hold, in each of the three
/// shapes of an edit.
Change changeOfEverything() {
  Block block = testing::block(1, "Río Ñ", "1-12, 15");
  block.rowLength = Length::feet(300);
  block.elevation = Length::metres(-3);
  block.minimumCorrection = -1.7;
  block.maximumCorrection = 0.1 + 0.2;
  block.wires = {Length::feet(3), Length::millimetres(1801)};
  block.postSpacing = Length::feet(30);
  Settings delayed = testing::southernSettings();
  delayed.firstLeafDelayDays = 7;
  delayed.workdays = {true, true, false, true, true, false, true};
  delayed.startMinute = 345;
  delayed.moveMinutes = 15;
  delayed.moveMinutesPerKm = 3;
  delayed.keepTogether = 80;
  delayed.gangAtMost = 5;
  block.workersAtMost = 9;
  block.latitude = 46.9012345;
  block.longitude = -120.5;
  Block later = block;
  later.notes = "two\nlines";
  WeatherMonth longer = fullMonth();
  longer.days[9] = WeatherDay{3, 4, std::nullopt, WeatherSource::typed};
  Tick back = tickOf("1-4");
  back.takesBack = TickId{1, 2};
  return {Sentence{phrase("Deed", "%1 %2 %3 %4 %5"),
                   {std::string{"Ñ"},
                    std::int64_t{-4},
                    Figure{0.1, 2},
                    dayOf(2027, 4, 6),
                    Words{"Tie", "Atar"}}},
          {Edit<Settings>{testing::northernSettings(), delayed},
           Edit<Block>{block, later},
           Edit<Planting>{std::nullopt, fullPlanting()},
           Edit<Crew>{fullCrew(), std::nullopt},
           Edit<Observation>{std::nullopt,
                             Observation{{0, 6}, {0, 2}, 53, dayOf(2027, 3, 30), "Ana"}},
           Edit<Tick>{std::nullopt, back},
           Edit<TaskMark>{std::nullopt, fullMark()},
           Edit<PastStage>{std::nullopt, PastStage{{0, 8}, "Ñ", 65, dayOf(2019, 5, 2)}},
           Edit<WeatherMonth>{fullMonth(), longer},
           Edit<Measurement>{std::nullopt, fullMeasurement()},
           Edit<SeasonTarget>{fullTarget(), std::nullopt},
           Edit<SeasonClose>{std::nullopt,
                             SeasonClose{Season{2027}, dayOf(2027, 12, 1), "Río"}},
           Edit<OwnProgramme>{OwnProgramme{"mío", "format = 1\n"},
                              OwnProgramme{"mío", "format = 1\nid = \"mío\"\n"}},
           Edit<WorkDay>{std::nullopt, WorkDay{dayOf(2027, 4, 5), 50, "lluvia"}},
           Edit<Turnout>{Turnout{{{0, 5}, dayOf(2027, 4, 6)}, 0}, std::nullopt},
           Edit<Pin>{std::nullopt, fullPin()},
           Edit<BlockClosure>{std::nullopt,
                              BlockClosure{{0, 11},
                                           {0, 1},
                                           dayOf(2027, 4, 8),
                                           dayOf(2027, 4, 9),
                                           360,
                                           "según la etiqueta"}},
           Edit<PlannedJob>{std::nullopt, fullPlannedJob()}}};
}

TEST(ChangeJson, ReadsBackEqualForEveryRecordKindAndNonAsciiText) {
  const Change change = changeOfEverything();
  ASSERT_EQ(change.edits.size(), std::variant_size_v<AnyEdit>);
  const auto read = changeFromJson(toJson(change));
  ASSERT_TRUE(read.has_value()) << read.error().detail;
  EXPECT_EQ(*read, change);
}

TEST(ChangeJson, WritesDaysAndRowsAsAPersonReadsThem) {
  const std::string json =
      toJson(Change{Sentence{}, {Edit<Tick>{std::nullopt, tickOf("1-4, 7")}}});
  EXPECT_THAT(json, HasSubstr("\"day\":\"2027-04-06\""));
  EXPECT_THAT(json, HasSubstr("\"rows\":\"1-4, 7\""));
  EXPECT_THAT(json, HasSubstr("\"id\":\"fedcba98765432100000000000000007\""));
}

TEST(ChangeJson, WritesAMonthOfWeatherAsColumns) {
  const std::string json =
      toJson(Change{Sentence{}, {Edit<WeatherMonth>{std::nullopt, fullMonth()}}});
  EXPECT_THAT(json, HasSubstr(R"("sources":"mt--------------------------f--")"));
  EXPECT_THAT(json, HasSubstr(R"("minimum":[-1.1,null,null,)"));
}

TEST(ChangeJson, OfAnEarlierVersionLacksFieldsThatCameLater) {
  const std::string json =
      R"({"name":{"context":"","text":"","values":[]},"edits":[{"record":"block",)"
      R"("before":null,"after":{"id":"00000000000000000000000000000001",)"
      R"("name":"Creek","rows":"1-10","rowSpacing":3352800,"rowLength":null,)"
      R"("elevation":null,"notes":""}}]})";
  const auto read = changeFromJson(json);
  ASSERT_TRUE(read.has_value()) << read.error().detail;
  EXPECT_EQ(std::get<Edit<Block>>(read->edits.at(0)).after,
            testing::block(1, "Creek", "1-10"));
}

TEST(ChangeJson, OfAnEarlierVersionHasAllRoundCrewsThatAreNeverOff) {
  const std::string json =
      R"({"name":{"context":"","text":"","values":[]},"edits":[{"record":"crew",)"
      R"("before":null,"after":{"id":"00000000000000000000000000000005",)"
      R"("name":"North","workers":6,"hoursPerDay":8.0}}]})";
  const auto read = changeFromJson(json);
  ASSERT_TRUE(read.has_value()) << read.error().detail;
  EXPECT_EQ(std::get<Edit<Crew>>(read->edits.at(0)).after, (Crew{{0, 5}, "North", 6, 8}));
}

TEST(ChangeJson, MendsTextThatIsNoUtf8RatherThanThrowing) {
  Tick tick = tickOf("1");
  tick.by = "caf\xE9";
  const auto read =
      changeFromJson(toJson(Change{Sentence{}, {Edit<Tick>{std::nullopt, tick}}}));
  ASSERT_TRUE(read.has_value());
  EXPECT_EQ(std::get<Edit<Tick>>(read->edits[0]).after->by, "caf\xEF\xBF\xBD");
}

class BadJson : public ::testing::TestWithParam<std::string> {};

TEST_P(BadJson, IsAProblemAndNoCrash) {
  EXPECT_FALSE(changeFromJson(GetParam()).has_value()) << GetParam();
}

std::string repeated(const std::string& text, int times) {
  std::string all;
  for (int i = 0; i < times; ++i) all += text;
  return all;
}

std::string jsonOfOneCrewWith(const std::string& crew) {
  return R"({"name":{"context":"","text":"","values":[]},"edits":[{"record":"crew",)"
         R"("before":null,"after":)"
         + crew + "}]}";
}

std::string jsonOfOneMonthWith(int month, std::string sources, std::string minimum) {
  const std::string nothing = "null" + repeated(",null", 30);
  sources.resize(std::max<std::size_t>(sources.size(), 31), '-');
  return R"({"name":{"context":"","text":"","values":[]},"edits":[{"record":"weather",)"
         R"("before":null,"after":{"year":2027,"month":)"
         + std::to_string(month) + R"(,"sources":")" + sources + R"(","minimum":[)"
         + minimum + "],\"maximum\":[" + nothing + "],\"rain\":[" + nothing + "]}}]}";
}

const std::string everyDay = "1" + repeated(",1", 30);

INSTANTIATE_TEST_SUITE_P(
    Change,
    BadJson,
    ::testing::Values(
        "",
        "{",
        "[]",
        "null",
        R"({"name":{}})",
        R"({"name":{"context":"","text":"","values":[{"day":"2027-02-30"}]},"edits":[]})",
        R"({"name":{"context":"","text":"","values":[]},"edits":[{"record":"tree","before":null,"after":null}]})",
        jsonOfOneCrewWith("null"),
        jsonOfOneCrewWith("{}"),
        jsonOfOneCrewWith(R"({"id":"12","name":"A","workers":1,"hoursPerDay":8})"),
        jsonOfOneCrewWith(
            R"({"id":"0123456789abcdef0123456789abcdef","name":7,"workers":1,"hoursPerDay":8})"),
        jsonOfOneMonthWith(13, "m", everyDay),
        jsonOfOneMonthWith(0, "m", everyDay),
        jsonOfOneMonthWith(4, "", everyDay),
        jsonOfOneMonthWith(4, "x", everyDay),
        jsonOfOneMonthWith(4, std::string(31, 'm'), everyDay),
        jsonOfOneMonthWith(3, std::string(32, 'm'), everyDay),
        jsonOfOneMonthWith(3, "mm", "1"),
        jsonOfOneMonthWith(3, "m", R"("cold")" + repeated(",null", 30)),
        jsonOfOneMonthWith(3, "m", "null" + repeated(",null", 30)),
        std::string(100'000, '[')));

TEST(ChangeJson, TheTableOfBadMonthsWouldReadWithAGoodOne) {
  EXPECT_TRUE(changeFromJson(jsonOfOneMonthWith(3, std::string(31, 'm'), everyDay)));
}

TEST(ChangeJson, TheTableOfBadCrewsWouldReadWithAGoodOne) {
  EXPECT_TRUE(
      changeFromJson(
          jsonOfOneCrewWith(
              R"({"id":"0123456789abcdef0123456789abcdef","name":"A","workers":1,"hoursPerDay":8})"))
          .has_value());
}

TEST(Inverted, UndoesAllEditsInTheOtherOrder) {
  const Orchard before =
      testing::orchardOfOne(testing::northernSettings(), dayOf(2025, 4, 1));
  const Block added = testing::block(9, "Hill", "1-3");
  Settings renamed = before.settings;
  renamed.name = "Elder Bend";
  const Change change{
      Sentence{phrase("Test", "Hill added")},
      {Edit<Settings>{before.settings, renamed},
       Edit<Block>{std::nullopt, added},
       Edit<Planting>{std::nullopt, testing::planting(8, added, dayOf(2026, 4, 1))}}};
  auto ids = IdSource::countingFrom(100);
  const Change inverse = inverted(change, ids);
  EXPECT_TRUE(std::holds_alternative<Edit<Planting>>(inverse.edits.front()));
  EXPECT_EQ(inverse.name, change.name);

  Orchard orchard = before;
  apply(orchard, change);
  EXPECT_NE(orchard, before);
  apply(orchard, inverse);
  EXPECT_EQ(orchard, before);
}

TEST(Inverted, TakesAnAddedTickBackWithAFurtherOne) {
  auto ids = IdSource::countingFrom(100);
  const Change inverse =
      inverted({Sentence{}, {Edit<Tick>{std::nullopt, tickOf("1-4")}}}, ids);
  const auto& edit = std::get<Edit<Tick>>(inverse.edits.at(0));
  EXPECT_FALSE(edit.before);
  EXPECT_EQ(edit.after->id, (TickId{100, 101}));
  EXPECT_EQ(edit.after->takesBack, tickOf("1-4").id);
  EXPECT_EQ(edit.after->task, leaderTie);
  EXPECT_EQ(edit.after->minutes, 0);
}

struct Unfit {
  const char* name;
  AnyEdit edit;
};

class ChangeThatDoesNotFit : public ::testing::TestWithParam<Unfit> {};

TEST_P(ChangeThatDoesNotFit, IsSaidSo) {
  Orchard orchard = testing::orchardOfOne(testing::northernSettings(), dayOf(2025, 4, 1));
  orchard.ticks[tickOf("1").id] = tickOf("1");
  EXPECT_FALSE(fits(orchard, {Sentence{}, {GetParam().edit}}).has_value());
}

Planting onlyPlanting() {
  return testing::orchardOfOne(testing::northernSettings(), dayOf(2025, 4, 1))
      .plantings.begin()
      ->second;
}

INSTANTIATE_TEST_SUITE_P(
    Change,
    ChangeThatDoesNotFit,
    ::testing::Values(
        Unfit{"settings otherwise",
              Edit<Settings>{testing::southernSettings(), testing::northernSettings()}},
        Unfit{"added twice",
              Edit<Block>{std::nullopt, testing::block(1, "Creek", "1-10")}},
        Unfit{"not there", Edit<Crew>{Crew{{0, 5}, "Río", 6, 8}, std::nullopt}},
        Unfit{"edited meanwhile",
              Edit<Block>{testing::block(1, "Creek", "1-9"),
                          testing::block(1, "Creek", "1-8")}},
        Unfit{"planting under ticks", Edit<Planting>{onlyPlanting(), std::nullopt}},
        Unfit{"tick changed", Edit<Tick>{tickOf("1"), tickOf("1-2")}},
        Unfit{"weather otherwise", Edit<WeatherMonth>{fullMonth(), std::nullopt}},
        Unfit{"tick removed", Edit<Tick>{tickOf("1"), std::nullopt}}),
    [](const auto& unfit) {
      std::string name = unfit.param.name;
      std::ranges::replace(name, ' ', '_');
      return name;
    });

TEST(Apply, LetsAPlantingsStoredTasksGoWithIt) {
  Orchard orchard = testing::orchardOfOne(testing::northernSettings(), dayOf(2025, 4, 1));
  orchard.tasks[leaderTie] = {
      leaderTie, dayOf(2027, 4, 1), dayOf(2027, 4, 9), std::nullopt, false};
  apply(orchard, {Sentence{}, {Edit<Planting>{onlyPlanting(), std::nullopt}}});
  EXPECT_TRUE(orchard.tasks.empty());
}

TEST(ApplyDeathTest, OfAChangeThatDoesNotFitIsABrokenContract) {
  Orchard orchard;
  const Change change{Sentence{}, {Edit<Crew>{Crew{{0, 5}, "Río", 6, 8}, std::nullopt}}};
  EXPECT_DEATH(apply(orchard, change), "contract broken");
}

TEST(Apply, AddsAndTakesOutMonthsOfWeather) {
  Orchard orchard = testing::orchardOfOne(testing::northernSettings(), dayOf(2025, 4, 1));
  const Change change{Sentence{}, {Edit<WeatherMonth>{std::nullopt, fullMonth()}}};
  apply(orchard, change);
  ASSERT_NE(weatherOn(orchard, dayOf(2028, 2, 29)), nullptr);
  EXPECT_EQ(*weatherOn(orchard, dayOf(2028, 2, 29)), fullMonth().days[28]);
  EXPECT_EQ(weatherOn(orchard, dayOf(2028, 2, 28)), nullptr);
  EXPECT_EQ(weatherOn(orchard, dayOf(2028, 3, 1)), nullptr);
  auto ids = IdSource::countingFrom(100);
  apply(orchard, inverted(change, ids));
  EXPECT_TRUE(orchard.weather.empty());
}

TEST(ApplyDeathTest, OfAMonthWithoutWeatherIsABrokenContract) {
  Orchard orchard;
  const Change change{Sentence{},
                      {Edit<WeatherMonth>{std::nullopt, WeatherMonth{{2027, 4}, {}}}}};
  EXPECT_DEATH(apply(orchard, change), "contract broken");
}

}  // namespace
}  // namespace topwire
