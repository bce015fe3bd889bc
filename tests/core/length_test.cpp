#include "core/units/length.h"

#include <gtest/gtest.h>

#include <type_traits>

namespace topwire {

namespace {

template <class A, class B>
concept Addable = requires(A a, B b) { a + b; };

template <class A, class B>
concept Multipliable = requires(A a, B b) { a* b; };

template <class A, class B>
concept Comparable = requires(A a, B b) { a < b; };

static_assert(Addable<Length, Length>);
static_assert(!Addable<Length, int>, "a bare number has no unit");
static_assert(!Addable<Length, double>);
static_assert(!Multipliable<Length, Length>, "an area is not a length");
static_assert(!Comparable<Length, int>);
static_assert(!std::is_convertible_v<int, Length>);

/// International yard and pound agreement, 1959: an inch is exactly 25.4 mm.
static_assert(Length::inches(12) == Length::feet(1));
static_assert(Length::inches(1).inMicrometres() == 25'400);
static_assert(Length::feet(10'000) == Length::metres(3048));

constexpr UnitSystem metric = UnitSystem::metric;
constexpr UnitSystem us = UnitSystem::usCustomary;

TEST(Length, ReadsWhatGrowersType) {
  struct Row {
    const char* text;
    UnitSystem bare;
    std::optional<Length> length;
  };

  const Row rows[] = {{"3 ft", metric, Length::feet(3)},
                      {"11.5ft", metric, Length::inches(138)},
                      {"36 in", metric, Length::feet(3)},
                      {"3 ft 6 in", metric, Length::inches(42)},
                      {"3' 6\"", metric, Length::inches(42)},
                      {"0.9 m", us, Length::centimetres(90)},
                      {"0,9 m", us, Length::centimetres(90)},
                      {"90 cm", us, Length::centimetres(90)},
                      {"900 mm", us, Length::centimetres(90)},
                      {"  3.2 m ", us, Length::millimetres(3200)},
                      {"3", us, Length::feet(3)},
                      {"3", metric, Length::metres(3)},
                      {"0.1 mm", metric, Length::micrometres(100)},
                      {"-3 m", metric, Length::metres(-3)},
                      {"0 m", metric, Length{}},
                      {"100 km", metric, Length::metres(100'000)},
                      {"100.1 km", metric, {}},
                      {"999999999999999999999", metric, {}},
                      {"", metric, {}},
                      {" ", metric, {}},
                      {"ft", metric, {}},
                      {"-", metric, {}},
                      {"--3 m", metric, {}},
                      {"three ft", metric, {}},
                      {"3 yd", metric, {}},
                      {"3 ft -6 in", metric, {}},
                      {"3 ft of row", metric, {}},
                      {"3..5 m", metric, {}},
                      {"3,500.0 m", metric, {}},
                      {"1e3 m", metric, {}},
                      {"inf", metric, {}},
                      {"nan m", metric, {}},
                      {"0x10 m", metric, {}}};
  for (const auto& [text, bare, length] : rows)
    EXPECT_EQ(parseLength(text, bare), length) << '"' << text << '"';
}

TEST(Length, ASpacingComesBackAsItWasEntered) {
  EXPECT_EQ(lengthText(parseLength("3 ft", metric).value(), us), "3 ft");
  EXPECT_EQ(lengthText(parseLength("36 in", metric).value(), us), "3 ft");
  EXPECT_EQ(lengthText(parseLength("11.5 ft", metric).value(), us), "11.5 ft");
  EXPECT_EQ(lengthText(parseLength("0.9 m", us).value(), metric), "0.9 m");
  EXPECT_EQ(lengthText(Length{}, metric), "0 m");
  EXPECT_EQ(lengthText(Length::metres(-3), metric), "-3 m");
}

TEST(Length, TextOfQuarterFeetAndCentimetresIsReadBackExactly) {
  for (int i = 1; i <= 400; ++i) {
    const Length quarterFeet = Length::inches(3L * i);
    const Length centimetres = Length::centimetres(i);
    EXPECT_EQ(parseLength(lengthText(quarterFeet, us), metric), quarterFeet) << i;
    EXPECT_EQ(parseLength(lengthText(centimetres, metric), us), centimetres) << i;
  }
}

TEST(LengthDeathTest, TreesNeedASpacing) {
  EXPECT_DEATH(treesPerAcre(Length{}, Length::feet(3)), "contract broken");
  EXPECT_DEATH(treesPerHectare(Length::metres(3), Length::metres(-1)), "contract broken");
}

}  // namespace

}  // namespace topwire
