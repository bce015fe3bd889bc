#pragma once

#include "core/base/phrase.h"
#include "core/calendar/day.h"
#include "core/weather/weather_file.h"

#include <optional>
#include <string_view>

namespace topwire {

/// Nothing for a date that does not exist.
std::optional<Day> realDay(int year, unsigned month, unsigned dayOfMonth);
unsigned daysOfMonth(int year, unsigned month);
/// YYYYMMDD.
std::optional<Day> parseCompactDay(std::string_view text);

/// A date as written: year first, which is plain, or the year last, which leaves open
/// what the first two numbers are.
struct WrittenDate {
  bool yearFirst = true;
  int year = 0;
  unsigned first = 0;  ///< the month where the year stands first
  unsigned second = 0;
};

/// Reads 2027-04-06, 20270406, 2027/4/6, 6/4/2027 and the like with -, / or . between; a
/// time of day may follow after a blank or a T. Nothing for anything else.
std::optional<WrittenDate> parseDate(std::string_view text);
std::optional<Day> dayFrom(const WrittenDate& date, DateOrder order);

/// Finds out in which order a file's dates name day and month.
class DateOrderFinder {
public:
  void see(const WrittenDate& date);

  /// True where some date is another day in the other order.
  bool needed() const { return needed_; }

  /// The order in which the dates exist, of which a mistyped one says nothing; where all
  /// exist in both, the one in which days follow each other. Nothing where neither
  /// settles it.
  std::optional<DateOrder> found() const;

private:
  /// What speaks for one order.
  struct Evidence {
    int onlyReal = 0;  ///< dates that do not exist in the other
    int steps = 0;     ///< dates a day from the one before
    std::optional<Day> last;
  };

  Evidence dayFirst_;
  Evidence monthFirst_;
  bool needed_ = false;
};

Sentence noDay(std::string_view text);
Sentence noNumber(std::string_view text);
/// A quality flag that can stand in a sentence.
char shownFlag(char flag);

}  // namespace topwire
