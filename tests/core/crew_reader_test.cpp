#include "core/exchange/crew_reader.h"

#include "core/exchange/orchard_reader.h"
#include "tests/support/builders.h"

#include <gmock/gmock.h>

#include <ostream>

namespace topwire {
namespace {

using ::testing::AllOf;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using testing::shippedProgrammes;
using testing::shippedTables;

/// Lines are counted below, so the text starts on its first line.
const std::string good = R"([orchard]
name = "Alder Bend"
latitude = 46.9
elevation = "1620 ft"
station = "Ellensburg"
records-from = 2027-01-01
workdays = ["monday", "saturday", "sunday"]
start = "5:45"
move-minutes = 15
move-minutes-per-km = 4
keep-together = 80
gang-at-most = 5

[[crew]]
name = "Heron"
workers = 7
skills = ["pruning", "Tractor"]
members = ["Ada", "Béa"]
days-off = ["2027-07-05 to 2027-07-17", "2027-05-03"]
young-hours = 1.5

[[block]]
name = "Creek 1"
rows = "1-8"
row-spacing = 3.5
workers-at-most = 6
latitude = 46.91
longitude = -120.5

[[work-day]]
day = 2027-05-31
percent = 0
reason = "Holiday"

[[turnout]]
crew = "Heron"
day = 2027-04-06
workers = 6

[[closure]]
block = "Creek 1"
from = 2027-04-08
until = "2027-04-09 06:00"
reason = "spray"

[[pin]]
task = "creek-1-gala:rub-rivals:2027:1"
crew = "Heron"
day = 2027-04-06
reason = "They know it"

[[pin]]
task = "creek-1-gala:leader-tie:2027:1"
not-before = 2027-06-01
)";

Checked<DescribedOrchard> read(const std::string& text) {
  IdSource ids = IdSource::countingFrom(1);
  return readOrchard(text, "orchard.toml", shippedTables(), shippedProgrammes(), ids);
}

/// `good` with one piece of it replaced.
std::string with(const std::string& from, const std::string& to) {
  std::string text = good;
  const auto at = text.find(from);
  EXPECT_NE(at, std::string::npos) << from;
  return text.replace(at, from.size(), to);
}

std::vector<std::string> problemsIn(const std::string& text) {
  std::vector<std::string> told;
  const auto result = read(text);
  if (result) return told;
  for (const Problem& problem : result.error()) told.push_back(inEnglish(problem));
  return told;
}

class CrewReader : public ::testing::Test {
protected:
  void SetUp() override { ASSERT_THAT(problemsIn(good), IsEmpty()); }

  const DescribedOrchard described = read(good).value_or(DescribedOrchard{});
  const Orchard& orchard = described.orchard;
};

TEST_F(CrewReader, ReadsTheWorkingDay) {
  const Settings& settings = orchard.settings;
  EXPECT_THAT(settings.workdays,
              ElementsAre(true, false, false, false, false, true, true));
  EXPECT_EQ(settings.startMinute, 345);
  EXPECT_EQ(settings.moveMinutes, 15);
  EXPECT_EQ(settings.moveMinutesPerKm, 4);
  EXPECT_EQ(settings.keepTogether, 80);
  EXPECT_EQ(settings.gangAtMost, 5);
}

TEST_F(CrewReader, ReadsACrew) {
  const Crew& crew = orchard.crews.begin()->second;
  EXPECT_THAT(crew.skills, ElementsAre("pruning", "tractor"));
  EXPECT_THAT(crew.members, ElementsAre("Ada", "Béa"));
  EXPECT_THAT(crew.daysOff,
              ElementsAre(DaySpan{dayOf(2027, 5, 3), dayOf(2027, 5, 3)},
                          DaySpan{dayOf(2027, 7, 5), dayOf(2027, 7, 17)}));
  EXPECT_EQ(crew.youngMinutes, 90);
}

TEST_F(CrewReader, ReadsWhereABlockLiesAndHowManyCanWorkInIt) {
  const Block& block = orchard.blocks.begin()->second;
  EXPECT_EQ(block.workersAtMost, 6);
  EXPECT_EQ(block.latitude, 46.91);
  EXPECT_EQ(block.longitude, -120.5);
}

TEST_F(CrewReader, ReadsDaysTurnoutsAndClosings) {
  const CrewId heron = orchard.crews.begin()->first;
  const Day holiday = dayOf(2027, 5, 31);
  EXPECT_EQ(orchard.workDays.at(holiday), (WorkDay{holiday, 0, "Holiday"}));
  EXPECT_EQ(orchard.turnouts.at({heron, dayOf(2027, 4, 6)}).workers, 6);
  ASSERT_EQ(orchard.closures.size(), 1U);
  const BlockClosure& closure = orchard.closures.begin()->second;
  EXPECT_EQ(closure.block, orchard.blocks.begin()->first);
  EXPECT_EQ(closure.from, dayOf(2027, 4, 8));
  EXPECT_EQ(closure.until, dayOf(2027, 4, 9));
  EXPECT_EQ(closure.untilMinute, 360);
  EXPECT_EQ(closure.reason, "spray");
}

TEST_F(CrewReader, ReadsPinsOfBothKinds) {
  ASSERT_EQ(described.pins.size(), 2U);
  const WantedPin& toCrew = described.pins[0];
  EXPECT_EQ(toCrew.task, "creek-1-gala:rub-rivals:2027:1");
  EXPECT_EQ(toCrew.pin.kind, PinKind::crewToJob);
  EXPECT_EQ(toCrew.pin.crew, orchard.crews.begin()->first);
  EXPECT_EQ(toCrew.pin.reason, "They know it");
  EXPECT_EQ(toCrew.line, 47);
  const WantedPin& later = described.pins[1];
  EXPECT_EQ(later.pin.kind, PinKind::notBefore);
  EXPECT_EQ(later.pin.crew, std::nullopt);
  EXPECT_EQ(later.pin.day, dayOf(2027, 6, 1));
}

TEST(CrewReaderDefaults, AnOrchardThatSaysNothingWorksMondayToSaturday) {
  const auto described = read(good.substr(0, good.find("workdays")));
  ASSERT_TRUE(described) << inEnglish(described.error().front());
  EXPECT_THAT(described->orchard.settings.workdays,
              ElementsAre(true, true, true, true, true, true, false));
  EXPECT_EQ(described->orchard.settings.startMinute, 390);
}

TEST(CrewReaderDefaults, AClosingUntilADayIsUntilItsEnd) {
  const auto described = read(with("2027-04-09 06:00", "2027-04-09"));
  ASSERT_TRUE(described) << inEnglish(described.error().front());
  EXPECT_EQ(described->orchard.closures.begin()->second.untilMinute, 1440);
}

struct FaultCase {
  std::string name;
  std::string from;
  std::string to;
  std::string place;
  std::string part;
};

/// What a failing test is called by.
void PrintTo(const FaultCase& fault, std::ostream* out) {
  *out << fault.name;
}

class CrewReaderFault : public ::testing::TestWithParam<FaultCase> {};

TEST_P(CrewReaderFault, IsToldOnceWithItsLine) {
  const FaultCase& fault = GetParam();
  EXPECT_THAT(problemsIn(with(fault.from, fault.to)),
              ElementsAre(AllOf(HasSubstr("orchard.toml:" + fault.place + ": "),
                                HasSubstr(fault.part))));
}

// clang-format off
INSTANTIATE_TEST_SUITE_P(Table, CrewReaderFault, ::testing::Values(
  FaultCase{"weekday", "\"sunday\"", "\"sonday\"", "7", "no day of the week"},
  FaultCase{"noWorkday", "[\"monday\", \"saturday\", \"sunday\"]", "[]", "7", "one day of the week"},
  FaultCase{"workdaysAsText", "[\"monday\", \"saturday\", \"sunday\"]", "\"monday\"", "7", "texts in square brackets"},
  FaultCase{"start", "\"5:45\"", "\"quarter to six\"", "8", "write a time of day"},
  FaultCase{"startAtMidnightAfter", "\"5:45\"", "\"24:00\"", "8", "between 00:00 and 23:59"},
  FaultCase{"gang", "gang-at-most = 5", "gang-at-most = 0", "12", "from 1 to 200"},
  FaultCase{"skillTwice", "\"Tractor\"", "\"PRUNING\"", "17", "pruning is named twice"},
  FaultCase{"membersAsNumbers", "[\"Ada\", \"Béa\"]", "[1, 2]", "18", "each in quotes"},
  FaultCase{"dayOff", "\"2027-05-03\"", "\"3 May\"", "19", "\"3 May\" where days belong"},
  FaultCase{"dayOffOpen", "\"2027-05-03\"", "\"2027-05-03 to \"", "19", "where days belong"},
  FaultCase{"daysOffBackwards", "07-05 to 2027-07-17", "07-17 to 2027-07-05", "19", "swap the two"},
  FaultCase{"youngHours", "young-hours = 1.5", "young-hours = 57", "20", "56.0 worker-hours"},
  FaultCase{"youngHoursHuge", "young-hours = 1.5", "young-hours = 1e300", "20", "56.0 worker-hours"},
  FaultCase{"workersAtMost", "workers-at-most = 6", "workers-at-most = 0", "26", "from 1 to 999"},
  FaultCase{"oneCoordinate", "longitude = -120.5\n", "", "22", "give both or neither"},
  FaultCase{"wrongSign", "latitude = 46.91", "latitude = -46.91", "27", "within one degree"},
  FaultCase{"percent", "percent = 0", "percent = 101", "32", "from 0 to 100"},
  FaultCase{"noPercent", "percent = 0\n", "", "30", "no \"percent\""},
  FaultCase{"turnoutOfNobody", "crew = \"Heron\"\nday = 2027-04-06\nworkers", "crew = \"Herron\"\nday = 2027-04-06\nworkers", "36", "the nearest is \"Heron\""},
  FaultCase{"closureOfNoBlock", "block = \"Creek 1\"", "block = \"Moor\"", "41", "called so"},
  FaultCase{"untilNoTime", "2027-04-09 06:00", "2027-04-09 25:00", "43", "a day and a time"},
  FaultCase{"untilNoDay", "2027-04-09 06:00", "Friday", "43", "a day and a time"},
  FaultCase{"untilBefore", "2027-04-09 06:00", "2027-04-07 06:00", "43", "swap the two"},
  FaultCase{"untilAtOnce", "2027-04-09 06:00", "2027-04-08 00:00", "43", "as soon as it is closed"},
  FaultCase{"pinOfBoth", "not-before = 2027-06-01", "not-before = 2027-06-01\nday = 2027-06-02", "54", "keep the one that is meant"},
  FaultCase{"pinOfNoDay", "day = 2027-04-06\nreason = \"They", "reason = \"They", "46", "no \"day\""},
  FaultCase{"pinOfNobody", "not-before = 2027-06-01", "day = 2027-06-01", "52", "no \"crew\""}),
  [](const auto& tested) { return tested.param.name; });
// clang-format on

}  // namespace
}  // namespace topwire
