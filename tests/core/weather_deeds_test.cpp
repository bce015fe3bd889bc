#include "core/edit/weather_deeds.h"

#include "tests/core/deeds_support.h"
#include "tests/support/builders.h"

#include <gmock/gmock.h>

#include <limits>

namespace topwire {
namespace {

using testing::after;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using testing::nameOf;
using testing::northernSettings;
using ::testing::Optional;
using testing::said;

using enum WeatherSource;

constexpr auto unknown = std::nullopt;

Day april(unsigned day) {
  return dayOf(2027, 4, day);
}

/// 6 April 2027.
Day today() {
  return april(6);
}

Orchard knowing(std::vector<DatedWeather> days) {
  Orchard orchard;
  orchard.settings = northernSettings();
  return after(orchard, importWeather(orchard, days, "known.csv"));
}

std::optional<WeatherDay> on(const Orchard& orchard, Day day) {
  const WeatherDay* found = weatherOn(orchard, day);
  return found ? std::optional{*found} : std::nullopt;
}

struct Meeting {
  const char* name;
  WeatherDay stands;
  WeatherDay comes;
  WeatherDay stays;
};

class TwoFiguresForADay : public ::testing::TestWithParam<Meeting> {};

TEST_P(TwoFiguresForADay, AreSettledByTheirWeight) {
  const auto& [name, stands, comes, stays] = GetParam();
  const Orchard before = knowing({{april(5), stands}});
  const std::vector days{DatedWeather{april(5), comes}};
  EXPECT_THAT(on(after(before, importWeather(before, days, "new.csv")), april(5)),
              Optional(stays));
}

// clang-format off
INSTANTIATE_TEST_SUITE_P(Weather, TwoFiguresForADay, ::testing::Values(
    Meeting{"same_source",      {1, 9, 2, measured},        {2, 8, 3, measured},        {2, 8, 3, measured}},
    Meeting{"heavier",          {1, 9, 2, typed},           {2, 8, 3, measured},        {2, 8, 3, measured}},
    Meeting{"lighter",          {1, 9, 2, measured},        {2, 8, 3, typed},           {1, 9, 2, measured}},
    Meeting{"forecast_late",    {1, 9, 2, typed},           {2, 8, 3, forecast},        {1, 9, 2, typed}},
    Meeting{"forecast_early",   {1, 9, 2, forecast},        {2, 8, unknown, typed},     {2, 8, unknown, typed}},
    Meeting{"rain_is_kept",     {1, 9, 2, measured},        {2, 8, unknown, measured},  {2, 8, 2, measured}},
    Meeting{"gauge_is_kept",    {1, 9, 2, typed},           {2, 8, unknown, measured},  {2, 8, 2, measured}},
    Meeting{"gauge_is_added",   {1, 9, unknown, measured},  {unknown, 8, 3, typed},     {1, 9, 3, measured}},
    Meeting{"gap_is_filled",    {unknown, 9, 2, measured},  {1, 8, 3, typed},           {1, 9, 2, measured}},
    Meeting{"no_forecast_fill", {unknown, 9, unknown, measured}, {1, 8, 3, forecast},   {unknown, 9, unknown, measured}},
    Meeting{"old_maximum_is_below", {1, 3, unknown, typed}, {5, unknown, 1, typed},     {5, unknown, 1, typed}}),
    [](const auto& meeting) { return meeting.param.name; });

// clang-format on

TEST(MergeWeather, CountsWhatBecomesOfEachDay) {
  const Orchard before = knowing({{april(1), {1, 9, unknown, measured}},
                                  {april(2), {1, 9, unknown, measured}},
                                  {april(3), {1, 9, unknown, measured}},
                                  {april(5), {0, 5, unknown, forecast}},
                                  {april(9), {0, 5, unknown, forecast}},
                                  {april(10), {0, 5, unknown, forecast}}});
  const std::vector<DatedWeather> days{{april(1), {1, 9, unknown, measured}},
                                       {april(2), {1, 8, unknown, measured}},
                                       {april(3), {1, 8, unknown, forecast}},
                                       {april(4), {1, 8, unknown, measured}},
                                       {april(5), {1, 8, unknown, measured}},
                                       {april(9), {0, 5, unknown, forecast}},
                                       {dayOf(2027, 5, 1), {1, 8, unknown, forecast}}};
  const MergedWeather merged = mergeWeather(before, days);
  EXPECT_EQ(merged.added, 2);
  EXPECT_EQ(merged.replaced, 2);
  EXPECT_EQ(merged.unchanged, 2);
  EXPECT_EQ(merged.keptBecauseWeightier, 1);
  EXPECT_EQ(merged.forecastDropped, 1);
  EXPECT_EQ(merged.edits.size(), 2U) << "one for each month";
}

TEST(MergeWeather, ANewForecastReplacesAllOfTheEarlierOne) {
  const Orchard before = knowing({{april(5), {0, 5, unknown, typed}},
                                  {april(29), {0, 5, 3, forecast}},
                                  {april(30), {0, 5, 3, forecast}},
                                  {dayOf(2027, 5, 1), {0, 5, 3, forecast}}});
  const std::vector<DatedWeather> days{{april(30), {2, 7, unknown, forecast}}};
  const Orchard later = after(before, importWeather(before, days, "new.csv"));
  EXPECT_TRUE(on(later, april(5)));
  EXPECT_EQ(on(later, april(29)), std::nullopt);
  EXPECT_THAT(on(later, april(30)), Optional(days[0].weather)) << "without the old rain";
  EXPECT_FALSE(later.weather.contains({2027, 5})) << "no month stays empty";
}

TEST(MergeWeather, OfMeasuredDaysLeavesTheForecastStanding) {
  const Orchard before = knowing({{april(9), {0, 5, unknown, forecast}}});
  const std::vector<DatedWeather> days{{april(5), {2, 7, unknown, measured}}};
  EXPECT_TRUE(on(after(before, importWeather(before, days, "new.csv")), april(9)));
}

TEST(ImportWeather, IsNamedByItsDaysAndFile) {
  const Orchard bare = knowing({{april(1), {1, 9, unknown, measured}}});
  std::vector<DatedWeather> days{{april(2), {1, 9, unknown, measured}}};
  EXPECT_EQ(nameOf(importWeather(bare, days, "a.csv")),
            "Weather of 1 day from a.csv brought in");
  days.push_back({april(3), {1, 9, unknown, measured}});
  EXPECT_EQ(nameOf(importWeather(bare, days, "a.csv")),
            "Weather of 2 days from a.csv brought in");
  for (DatedWeather& day : days) day.weather.source = forecast;
  EXPECT_EQ(nameOf(importWeather(bare, days, "a.csv")),
            "Forecast of 2 days from a.csv brought in");
}

TEST(ImportWeather, OfWhatIsKnownIsAnEmptyChangeThatSaysSo) {
  const std::vector<DatedWeather> days{{april(2), {1, 9, unknown, measured}}};
  const auto again = importWeather(knowing(days), days, "a.csv");
  ASSERT_TRUE(again.has_value());
  EXPECT_TRUE(again->empty());
  EXPECT_EQ(nameOf(again), "No new weather in a.csv");
}

TEST(ImportWeather, WithoutADayIsRefused) {
  EXPECT_THAT(said(importWeather(Orchard{}, {}, "a.csv")),
              ElementsAre("a.csv: There is no day of weather in this file."));
}

TEST(ImportWeather, IsRefusedWhereAFigureCannotBe) {
  const double none = std::numeric_limits<double>::quiet_NaN();
  for (const WeatherDay& day : {WeatherDay{9, 1, unknown},
                                WeatherDay{none, 1, unknown},
                                WeatherDay{1, 101, unknown},
                                WeatherDay{1, 9, -1},
                                WeatherDay{1, 9, none}}) {
    const std::vector days{DatedWeather{april(1), {1, 9, unknown}},
                           DatedWeather{april(2), day}};
    EXPECT_THAT(said(importWeather(Orchard{}, days, "a.csv")),
                ElementsAre(HasSubstr("a.csv: The figures of 2 April 2027 can't be")));
  }
}

TEST(ImportWeather, IsUndoneAsOneStep) {
  const Orchard before = knowing({{april(9), {0, 5, unknown, forecast}}});
  std::vector<DatedWeather> days;
  for (int i = 0; i < 800; ++i)
    days.push_back({plusDays(april(6), -i), {1, 9, 0.5, measured}});
  days.push_back({april(10), {0, 5, unknown, forecast}});
  const auto change = importWeather(before, days, "a.csv");
  auto ids = IdSource::countingFrom(1);
  Orchard orchard = after(before, change);
  EXPECT_NE(orchard, before);
  apply(orchard, inverted(*change, ids));
  EXPECT_EQ(orchard, before);
}

TEST(TypeWeather, KeepsWhatIsLeftOut) {
  Orchard orchard;
  orchard =
      after(orchard, typeWeather(orchard, {april(5), {1, 9, unknown, typed}}, today()));
  orchard = after(
      orchard, typeWeather(orchard, {april(5), {unknown, unknown, 3, typed}}, today()));
  EXPECT_THAT(on(orchard, april(5)), Optional(WeatherDay{1, 9, 3, typed}));
}

TEST(TypeWeather, OfADayToComeChangesNothingElseOfTheForecast) {
  const Orchard before =
      knowing({{april(7), {0, 5, 2, forecast}}, {april(8), {0, 5, 2, forecast}}});
  const Orchard later =
      after(before, typeWeather(before, {april(7), {-2, 5, unknown, forecast}}, today()));
  EXPECT_THAT(on(later, april(7)), Optional(WeatherDay{-2, 5, 2, forecast}));
  EXPECT_THAT(on(later, april(8)), Optional(WeatherDay{0, 5, 2, forecast}));
}

TEST(TypeWeather, IsNamedByItsDay) {
  EXPECT_EQ(nameOf(typeWeather(Orchard{}, {april(5), {1, 9, unknown, typed}}, today())),
            "Weather of 5 April 2027 typed in");
  EXPECT_EQ(
      nameOf(typeWeather(Orchard{}, {april(7), {1, 9, unknown, forecast}}, today())),
      "Forecast for 7 April 2027 typed in");
}

TEST(TypeWeather, NeverCountsAsMeasured) {
  const Orchard orchard = after(
      Orchard{}, typeWeather(Orchard{}, {april(5), {1, 9, unknown, measured}}, today()));
  EXPECT_EQ(on(orchard, april(5))->source, typed);
}

TEST(TypeWeather, IsRefusedWhereMeasuredFiguresStand) {
  const Orchard orchard = knowing({{april(5), {1, 9, unknown, measured}}});
  EXPECT_THAT(
      said(typeWeather(orchard, {april(5), {2, 9, unknown, typed}}, today())),
      ElementsAre(HasSubstr("day: Figures measured on 5 April 2027 are on record")));
}

struct BadTyping {
  DatedWeather typed;
  std::string expected;
};

class TypingFault : public ::testing::TestWithParam<BadTyping> {};

TEST_P(TypingFault, IsSaidWithItsField) {
  EXPECT_THAT(said(typeWeather(Orchard{}, GetParam().typed, today())),
              ElementsAre(HasSubstr(GetParam().expected)));
}

INSTANTIATE_TEST_SUITE_P(
    Weather,
    TypingFault,
    ::testing::Values(
        BadTyping{{april(5), {9, 1, unknown, typed}},
                  "minimum: The minimum is above the maximum"},
        BadTyping{{april(5), {-60.1, 1, unknown, typed}}, "minimum: A temperature lies"},
        BadTyping{{april(5), {1, 61, unknown, typed}}, "maximum: A temperature lies"},
        BadTyping{{april(5), {1, 9, -0.1, typed}}, "rain: Rain of one day"},
        BadTyping{{april(5), {1, 9, 2001, typed}}, "rain: Rain of one day"},
        BadTyping{{april(5), {unknown, unknown, unknown, typed}},
                  "minimum: Both temperatures are missing"},
        BadTyping{{april(5), {unknown, unknown, 2, typed}},
                  "minimum: Both temperatures are missing"},
        BadTyping{{april(7), {1, 9, unknown, typed}},
                  "day: 7 April 2027 is still to come"},
        BadTyping{{april(6), {1, 9, unknown, forecast}},
                  "day: 6 April 2027 is not ahead"},
        BadTyping{{dayOf(27, 4, 5), {1, 9, unknown, typed}}, "day: Weather of 5 April"}));

TEST(RemoveWeather, TakesTheDaysOutAndTheMonthsThatBecomeEmpty) {
  const Orchard before = knowing({{dayOf(2027, 2, 28), {1, 9, unknown, measured}},
                                  {dayOf(2027, 3, 1), {1, 9, unknown, measured}},
                                  {dayOf(2027, 3, 31), {1, 9, unknown, measured}},
                                  {april(1), {1, 9, unknown, measured}},
                                  {april(2), {1, 9, unknown, measured}}});
  const auto change = removeWeather(before, {dayOf(2027, 3, 1), april(1)});
  EXPECT_EQ(nameOf(change), "Weather from 1 March 2027 to 1 April 2027 removed");
  const Orchard later = after(before, change);
  EXPECT_TRUE(on(later, dayOf(2027, 2, 28)));
  EXPECT_FALSE(later.weather.contains({2027, 3}));
  EXPECT_FALSE(on(later, april(1)));
  EXPECT_TRUE(on(later, april(2)));
  EXPECT_EQ(nameOf(removeWeather(later, {april(2), april(2)})),
            "Weather of 2 April 2027 removed");
}

TEST(RemoveWeather, IsRefusedWhereNothingIsKnown) {
  const Orchard orchard = knowing({{april(2), {1, 9, unknown, measured}}});
  for (const DaySpan& days : {DaySpan{april(3), april(30)}, DaySpan{april(2), april(1)}})
    EXPECT_THAT(said(removeWeather(orchard, days)),
                ElementsAre("day: No weather is on record for these days."));
}

}  // namespace
}  // namespace topwire
