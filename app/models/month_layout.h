#pragma once

#include "core/calendar/iso_week.h"
#include "core/planning/progress.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace topwire {

/// One window to be shown as a bar: a task, or several alike that share one.
struct MonthBar {
  std::vector<TaskKey> tasks;  ///< at least one
  std::string operation;  ///< what must agree, with dates and state, for bars to merge
  std::string name;
  std::string shortName;
  std::string place;  ///< "Creek 1", or "3 blocks" once merged
  Day opens{};
  Day closes{};  ///< inclusive
  std::optional<Day> cutOff;
  TaskState state = TaskState::open;
  /// A visit that comes back every fortnight or sooner: it gives way to work that is done
  /// once, until it is late.
  bool routine = false;
};

/// Bars of the same operation, dates and state in several places become one, which stands
/// where the first of them stood. `places` words how many blocks it covers.
std::vector<MonthBar> mergeAlike(std::vector<MonthBar> bars,
                                 const std::function<std::string(int)>& places);

/// A stage in one planting, or in all of them once merged.
struct MonthStage {
  int bbch = 0;
  std::string name;
  Day early{};  ///< eight cases in ten lie from here
  Day date{};   ///< the likeliest
  Day late{};   ///< to here
  bool observed = false;
  /// What the whisker spans: the likeliest days of the several plantings, or where there
  /// is only one such day, the days it may be.
  DaySpan shown{};

  friend bool operator==(const MonthStage&, const MonthStage&) = default;
};

/// One stage for each code and kind: from the earliest to the latest, its day the middle
/// one of the likeliest days; in order of those days.
std::vector<MonthStage> mergeStages(std::vector<MonthStage> stages);

struct MonthMeasures {
  double columnWidth = 96;
  int lanes = 5;           ///< a week shows so many; the rest is counted
  double labelStart = 24;  ///< from a body's left edge, past its shape
  double labelEnd = 6;     ///< kept free after the words
  /// Width of a label: the name, bold, and the place after it, where there is one.
  std::function<double(const std::string& name, const std::string& place)> textWidth;
};

enum class LabelAt { nowhere, inside, onTail, after };

/// Where the words of a segment stand. `left` counts from the week's left edge.
struct BarLabel {
  LabelAt at = LabelAt::nowhere;
  std::string name;
  std::string place;
  double left = 0;
  double width = 0;
};

/// Days of one week, 0 for Monday; both inclusive.
struct WeekSpan {
  int first;
  int last;

  friend bool operator==(const WeekSpan&, const WeekSpan&) = default;
};

/// The part of a bar in one week.
struct MonthSegment {
  std::size_t bar = 0;
  int lane = 0;
  std::optional<WeekSpan> body;  ///< opening to closing
  std::optional<WeekSpan> tail;  ///< from the closing on, while it is still worth doing
  bool tornLeft = false;         ///< it goes on before this week
  bool tornRight = false;        ///< it goes on after this week
  std::optional<int> bracket;    ///< the cut-off's day
  BarLabel label;

  WeekSpan span() const;
};

struct StageMark {
  std::size_t stage = 0;
  WeekSpan span{};
  bool startsHere = false;
  bool endsHere = false;
  std::optional<int> diamond;
  bool whisker = false;  ///< it spans more than its day
  bool lowered = false;  ///< its whisker crosses an earlier one
  enum class Name { none, after, before } name = Name::none;  ///< of the diamond
};

struct MonthWeek {
  IsoWeek week{};
  Day monday{};
  std::vector<MonthSegment> segments;  ///< by lane, then day
  std::vector<StageMark> stages;
  int hidden = 0;  ///< bars that found no lane
  int lanesUsed = 0;
};

struct MonthLayout {
  std::vector<MonthBar> bars;  ///< late, closing, open, waiting, set aside, done, lapsed
  std::vector<MonthStage> stages;
  std::vector<MonthWeek> weeks;
};

/// First Monday to last Sunday of the weeks that hold a day of this month.
DaySpan weeksOfMonth(Day anyDay);

/// The last day a bar is drawn on: its closing; the cut-off while that still matters;
/// today, where it is late and nothing cuts it off.
Day lastShown(const MonthBar& bar, Day today);

/// Where every bar, label and stage of whole weeks stands. `weeks` begins on a Monday and
/// ends on a Sunday.
MonthLayout layOutWeeks(DaySpan weeks,
                        std::vector<MonthBar> bars,
                        std::vector<MonthStage> stages,
                        const MonthMeasures& measures,
                        Day today);

}  // namespace topwire
