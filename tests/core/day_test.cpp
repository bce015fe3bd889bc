#include "core/calendar/day.h"

#include <gtest/gtest.h>

namespace topwire {

namespace {

template <class A, class B>
concept Addable = requires(A a, B b) { a + b; };

template <class A, class B>
concept Subtractable = requires(A a, B b) { a - b; };

static_assert(!Addable<Day, Day>, "two days have no sum");
static_assert(!Addable<Day, int>, "a bare number does not say days");
static_assert(!Subtractable<Days, Day>);
static_assert(Addable<Day, Days>);
static_assert(Subtractable<Day, Day>);
static_assert(!std::is_convertible_v<int, Day>);

TEST(Day, PartsAreRead) {
  const Day day = dayOf(2028, 12, 31);
  EXPECT_EQ(yearOf(day), 2028);
  EXPECT_EQ(dayOfYear(day), 366);
  EXPECT_EQ(dayOfYear(dayOf(2027, 1, 1)), 1);
}

TEST(DayDeathTest, ADateThatDoesNotExistBreaksTheContract) {
  EXPECT_DEATH(dayOf(2027, 2, 29), "contract broken");
}

TEST(Day, MonthsLaterIsCappedToTheMonthsEnd) {
  struct Row {
    Day from;
    int months;
    Day to;
  };

  const Row rows[] = {{dayOf(2027, 1, 31), 1, dayOf(2027, 2, 28)},
                      {dayOf(2028, 1, 31), 1, dayOf(2028, 2, 29)},
                      {dayOf(2028, 2, 29), 12, dayOf(2029, 2, 28)},
                      {dayOf(2028, 2, 29), 48, dayOf(2032, 2, 29)},
                      {dayOf(2027, 8, 31), 1, dayOf(2027, 9, 30)},
                      {dayOf(2027, 11, 15), 3, dayOf(2028, 2, 15)},
                      {dayOf(2027, 3, 31), -1, dayOf(2027, 2, 28)},
                      {dayOf(2027, 1, 10), -1, dayOf(2026, 12, 10)},
                      {dayOf(2027, 5, 5), 0, dayOf(2027, 5, 5)}};
  for (const auto& [from, months, to] : rows)
    EXPECT_EQ(isoText(plusMonthsCapToMonthEnd(from, months)), isoText(to))
        << isoText(from) << " " << months;
}

TEST(Day, ReadsIsoDatesAndNothingElse) {
  struct Row {
    const char* text;
    std::optional<Day> day;
  };

  const Row rows[] = {{"2027-04-06", dayOf(2027, 4, 6)},
                      {"2028-02-29", dayOf(2028, 2, 29)},
                      {"2000-02-29", dayOf(2000, 2, 29)},
                      {"2027-02-29", {}},
                      {"1900-02-29", {}},
                      {"2027-04-31", {}},
                      {"2027-13-01", {}},
                      {"2027-00-10", {}},
                      {"2027-10-00", {}},
                      {"2027-4-6", {}},
                      {"2027-04-6 ", {}},
                      {" 2027-04-06", {}},
                      {"2027-04-06 ", {}},
                      {"2027/04/06", {}},
                      {"06-04-2027", {}},
                      {"2027-+4-06", {}},
                      {"20270406", {}},
                      {"", {}}};
  for (const auto& [text, day] : rows)
    EXPECT_EQ(parseDay(text), day) << '"' << text << '"';
}

TEST(Day, TextIsReadBackAsTheSameDay) {
  for (Day day = dayOf(1999, 12, 1); day < dayOf(2001, 4, 1); day += Days{1})
    ASSERT_EQ(parseDay(isoText(day)), day) << isoText(day);
}

TEST(DaySpan, BothEndsBelongToIt) {
  const DaySpan week{dayOf(2027, 4, 5), dayOf(2027, 4, 11)};
  EXPECT_EQ(week.length(), 7);
  EXPECT_TRUE(week.contains(week.first) && week.contains(week.last));
  EXPECT_FALSE(week.contains(dayOf(2027, 4, 4)) || week.contains(dayOf(2027, 4, 12)));
  EXPECT_TRUE(week.overlaps({dayOf(2027, 4, 11), dayOf(2027, 4, 20)}));
  EXPECT_FALSE(week.overlaps({dayOf(2027, 4, 12), dayOf(2027, 4, 20)}));
}

}  // namespace

}  // namespace topwire
