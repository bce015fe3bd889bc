#include "storage/weather_rows.h"

#include "core/edit/weather_deeds.h"
#include "core/edit/workbench.h"
#include "storage/orchard_file.h"
#include "storage/record_rows.h"
#include "tests/storage/file_support.h"
#include "tests/support/builders.h"

#include <gtest/gtest.h>

namespace topwire {
namespace {

class WeatherInAFile : public ::testing::Test {
protected:
  void SetUp() override {
    const auto made = files.create(path, testing::orchardOfEverything());
    ASSERT_TRUE(made.has_value()) << testing::outcome(made);
  }

  OpenedOrchard open() {
    auto opened = files.open(path, Access::write);
    EXPECT_TRUE(opened.has_value()) << testing::outcome(opened);
    return opened ? std::move(*opened) : OpenedOrchard{};
  }

  static Workbench benchOver(const OpenedOrchard& opened) {
    return {opened.orchard, *opened.journal, [] { return 0; }, IdSource::countingFrom(1)};
  }

  /// The first column of the first row.
  std::string ask(const std::string& sql) {
    return Connection{path, Connection::Mode::read}.text(sql);
  }

  testing::TemporaryFolder folder;
  std::string path = folder.file("creek.topwire");
  SqliteOrchardFiles files;
};

TEST_F(WeatherInAFile, IsARowADayThatAShellCanRead) {
  EXPECT_EQ(ask("SELECT group_concat(day || '|' || coalesce(minimum, '') || '|' || "
                "coalesce(rain, '') || '|' || source, ' ') FROM weather"),
            "1878-12-31||4.0|measured 2028-02-01|-1.1|12.7|measured 2028-02-02|||typed "
            "2028-02-29|-20.0|0.0|forecast");
}

TEST_F(WeatherInAFile, OfACenturyAndAHalfComesBackTheSameAndIsUndoneAtOnce) {
  const Orchard before = testing::orchardOfEverything();
  const auto change = importWeather(before, testing::longRecord(), "station.csv");
  ASSERT_TRUE(change.has_value());
  Orchard expected = before;
  apply(expected, *change);
  {
    const OpenedOrchard opened = open();
    Workbench bench = benchOver(opened);
    ASSERT_TRUE(bench.perform(*change).has_value());
  }
  {
    const OpenedOrchard opened = open();
    EXPECT_TRUE(opened.orchard == expected);
    Workbench bench = benchOver(opened);
    ASSERT_TRUE(bench.undo().has_value());
    EXPECT_TRUE(bench.orchard() == before);
  }
  EXPECT_TRUE(open().orchard == before);
}

TEST_F(WeatherInAFile, IsOnlyTouchedWhereADayDiffers) {
  OpenedOrchard opened = open();
  Connection other{path, Connection::Mode::write};
  const WeatherMonth before = opened.orchard.weather.at({2028, 2});
  WeatherMonth after = before;
  after.days[0].reset();
  after.days[1]->minimum = 0;
  after.days[2] = WeatherDay{1, 2, 3, WeatherSource::typed};
  const std::int64_t changed = other.number("SELECT total_changes()");
  WeatherRows{other}.write({before, after});
  EXPECT_EQ(other.number("SELECT total_changes()") - changed, 3);
  EXPECT_EQ(readWeather(other).at({2028, 2}), after);
  EXPECT_THROW(WeatherRows{other}.write({before, after}), StaleRecord);
}

TEST_F(WeatherInAFile, ThatNoDayCouldHaveIsRefused) {
  Connection connection{path, Connection::Mode::write};
  for (const char* values : {"'2027-4-05', 1, 2, NULL, 'typed'",
                             "'2027-04-05', 3, 2, NULL, 'typed'",
                             "'2027-04-05', 1, 200, NULL, 'typed'",
                             "'2027-04-05', 1, 2, -1, 'typed'",
                             "'2027-04-05', 1, 2, NULL, 'guessed'",
                             "'2027-04-05', NULL, NULL, NULL, 'typed'"})
    EXPECT_THROW(
        connection.execute("INSERT INTO weather VALUES (" + std::string{values} + ")"),
        SqliteError)
        << values;
}

}  // namespace
}  // namespace topwire
