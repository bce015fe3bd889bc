#include "app/models/month_layout.h"

#include "app/models/month_labels.h"
#include "core/base/contract.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <set>
#include <tuple>

namespace topwire {

namespace {

constexpr int daysInWeek = 7;

bool givesWay(const MonthBar& bar) {
  return bar.routine && bar.state != TaskState::late
         && urgency(bar.state) <= urgency(TaskState::waiting);
}

int rankOf(const MonthBar& bar) {
  return givesWay(bar) ? urgency(TaskState::waiting) : urgency(bar.state);
}

void sortByUrgency(std::vector<MonthBar>& bars) {
  std::ranges::stable_sort(bars, [](const MonthBar& a, const MonthBar& b) {
    return std::tuple{rankOf(a), givesWay(a), a.closes, a.opens}
           < std::tuple{rankOf(b), givesWay(b), b.closes, b.opens};
  });
}

bool alike(const MonthBar& a, const MonthBar& b) {
  return a.operation == b.operation && a.state == b.state && a.opens == b.opens
         && a.closes == b.closes && a.cutOff == b.cutOff;
}

std::optional<WeekSpan> partOf(DaySpan days, Day monday) {
  const int first = std::max(0, daysBetween(monday, days.first));
  const int last = std::min(daysInWeek - 1, daysBetween(monday, days.last));
  if (first > last) return std::nullopt;
  return WeekSpan{first, last};
}

DaySpan shownDays(const MonthBar& bar, Day today) {
  return {bar.opens, lastShown(bar, today)};
}

/// Which days of every lane of one week are taken.
class Lanes {
public:
  bool isFree(int lane, WeekSpan span) const {
    const auto taken = taken_.find(lane);
    return taken == taken_.end()
           || std::ranges::none_of(taken->second, [span](WeekSpan other) {
                return other.first <= span.last && span.first <= other.last;
              });
  }

  int firstFree(WeekSpan span) const {
    int lane = 0;
    while (!isFree(lane, span)) ++lane;
    return lane;
  }

  void take(int lane, WeekSpan span) { taken_[lane].push_back(span); }

private:
  std::map<int, std::vector<WeekSpan>> taken_;
};

/// The lane each bar would have if it kept one through all the weeks.
std::vector<int> lanesThrough(const std::vector<MonthBar>& bars,
                              DaySpan weeks,
                              Day today) {
  Lanes lanes;
  std::vector<int> wanted;
  for (const MonthBar& bar : bars) {
    const DaySpan days = shownDays(bar, today);
    const WeekSpan span{daysBetween(weeks.first, days.first),
                        daysBetween(weeks.first, days.last)};
    wanted.push_back(lanes.firstFree(span));
    lanes.take(wanted.back(), span);
  }
  return wanted;
}

MonthSegment segmentOf(const MonthBar& bar, Day monday, Day today) {
  const DaySpan shown = shownDays(bar, today);
  const Day sunday = plusDays(monday, daysInWeek - 1);
  MonthSegment segment;
  segment.body = partOf({bar.opens, bar.closes}, monday);
  segment.tail = partOf({plusDays(bar.closes, 1), shown.last}, monday);
  segment.tornLeft = bar.opens < monday;
  segment.tornRight = shown.last > sunday;
  if (bar.cutOff && monday <= *bar.cutOff && *bar.cutOff <= sunday
      && *bar.cutOff == shown.last)
    segment.bracket = daysBetween(monday, *bar.cutOff);
  return segment;
}

/// Gives lanes to the bars of one week: first to those that keep theirs, then to the
/// rest, in order of urgency. A moved bar keeps its new lane from then on.
class WeekFiller {
public:
  WeekFiller(MonthWeek& week, const MonthLayout& layout, int lanes, Day today)
      : week_(&week), layout_(&layout), lanes_(lanes), today_(today) {}

  void fill(std::vector<int>& wanted) {
    std::vector<std::size_t> homeless;
    for (std::size_t bar = 0; bar < layout_->bars.size(); ++bar)
      if (isHere(bar) && !place(bar, wanted[bar])) homeless.push_back(bar);
    for (const std::size_t bar : homeless) {
      const int lane = taken_.firstFree(segment(bar).span());
      if (place(bar, lane))
        wanted[bar] = lane;
      else
        ++week_->hidden;
    }
  }

private:
  bool isHere(std::size_t bar) const {
    return partOf(shownDays(layout_->bars[bar], today_), week_->monday).has_value();
  }

  MonthSegment segment(std::size_t bar) const {
    MonthSegment made = segmentOf(layout_->bars[bar], week_->monday, today_);
    made.bar = bar;
    return made;
  }

  bool place(std::size_t bar, int lane) {
    MonthSegment placed = segment(bar);
    if (lane >= lanes_ || !taken_.isFree(lane, placed.span())) return false;
    placed.lane = lane;
    taken_.take(lane, placed.span());
    week_->segments.push_back(placed);
    week_->lanesUsed = std::max(week_->lanesUsed, lane + 1);
    return true;
  }

  MonthWeek* week_;
  const MonthLayout* layout_;
  int lanes_;
  Day today_;
  Lanes taken_;
};

StageMark markOf(const MonthStage& stage, std::size_t index, WeekSpan span, Day monday) {
  StageMark mark;
  mark.stage = index;
  mark.span = span;
  mark.startsHere = plusDays(monday, span.first) == stage.shown.first;
  mark.endsHere = plusDays(monday, span.last) == stage.shown.last;
  mark.whisker = stage.shown.length() > 1;
  if (const auto day = partOf({stage.date, stage.date}, monday))
    mark.diamond = day->first;
  return mark;
}

void markStages(MonthWeek& week,
                const MonthLayout& layout,
                const MonthMeasures& measures) {
  int whiskersTo = -1;
  for (std::size_t index = 0; index < layout.stages.size(); ++index) {
    const MonthStage& stage = layout.stages[index];
    const auto span = partOf(stage.shown, week.monday);
    if (!span) continue;
    StageMark mark = markOf(stage, index, *span, week.monday);
    mark.lowered = mark.whisker && span->first <= whiskersTo;
    if (mark.whisker && !mark.lowered) whiskersTo = span->last;
    week.stages.push_back(mark);
  }
  nameStages(week, layout.stages, measures);
}

MonthStage spanning(const std::vector<MonthStage>& same) {
  MonthStage merged = same.front();
  std::vector<Day> dates;
  for (const MonthStage& stage : same) {
    merged.early = std::min(merged.early, stage.early);
    merged.late = std::max(merged.late, stage.late);
    dates.push_back(stage.date);
  }
  std::ranges::sort(dates);
  merged.date = dates[(dates.size() - 1) / 2];
  merged.shown = {dates.front(), dates.back()};
  if (!merged.observed && dates.front() == dates.back())
    merged.shown = {merged.early, merged.late};
  return merged;
}

}  // namespace

WeekSpan MonthSegment::span() const {
  TOPWIRE_REQUIRE(body || tail);
  return {body ? body->first : tail->first, tail ? tail->last : body->last};
}

std::vector<MonthBar> mergeAlike(std::vector<MonthBar> bars,
                                 const std::function<std::string(int)>& places) {
  std::vector<MonthBar> merged;
  std::vector<std::set<std::string>> placesOf;
  for (MonthBar& bar : bars) {
    const auto same = std::ranges::find_if(
        merged, [&bar](const MonthBar& other) { return alike(bar, other); });
    const auto index = static_cast<std::size_t>(same - merged.begin());
    if (same == merged.end()) {
      placesOf.push_back({bar.place});
      merged.push_back(std::move(bar));
      continue;
    }
    placesOf[index].insert(bar.place);
    same->tasks.insert(same->tasks.end(), bar.tasks.begin(), bar.tasks.end());
  }
  for (std::size_t i = 0; i < merged.size(); ++i)
    if (placesOf[i].size() > 1)
      merged[i].place = places(static_cast<int>(placesOf[i].size()));
  return merged;
}

std::vector<MonthStage> mergeStages(std::vector<MonthStage> stages) {
  std::map<std::pair<int, bool>, std::vector<MonthStage>> same;
  for (MonthStage& stage : stages)
    same[{stage.bbch, stage.observed}].push_back(std::move(stage));
  std::vector<MonthStage> merged;
  for (const auto& [kind, group] : same) merged.push_back(spanning(group));
  std::ranges::stable_sort(merged, {}, &MonthStage::date);
  return merged;
}

DaySpan weeksOfMonth(Day anyDay) {
  const CivilDate date = civil(anyDay);
  const Day first{date.year() / date.month() / 1};
  const Day last{date.year() / date.month() / date::last};
  return {plusDays(first, 1 - isoWeekday(first)),
          plusDays(last, daysInWeek - isoWeekday(last))};
}

Day lastShown(const MonthBar& bar, Day today) {
  switch (bar.state) {
    case TaskState::late:
      return std::max(bar.closes, bar.cutOff.value_or(today));
    case TaskState::waiting:
    case TaskState::open:
    case TaskState::closing:
    case TaskState::lapsed:
      return std::max(bar.closes, bar.cutOff.value_or(bar.closes));
    case TaskState::done:
    case TaskState::setAside:
      return bar.closes;
  }
  return bar.closes;
}

MonthLayout layOutWeeks(DaySpan weeks,
                        std::vector<MonthBar> bars,
                        std::vector<MonthStage> stages,
                        const MonthMeasures& measures,
                        Day today) {
  TOPWIRE_REQUIRE(isoWeekday(weeks.first) == 1 && isoWeekday(weeks.last) == daysInWeek);
  MonthLayout layout{{}, std::move(stages), {}};
  for (MonthBar& bar : bars)
    if (shownDays(bar, today).overlaps(weeks)) layout.bars.push_back(std::move(bar));
  sortByUrgency(layout.bars);
  std::vector<int> wanted = lanesThrough(layout.bars, weeks, today);
  for (Day monday = weeks.first; monday <= weeks.last;
       monday = plusDays(monday, daysInWeek)) {
    MonthWeek week;
    week.week = isoWeekOf(monday);
    week.monday = monday;
    WeekFiller{week, layout, measures.lanes, today}.fill(wanted);
    labelSegments(week, layout.bars, measures);
    markStages(week, layout, measures);
    layout.weeks.push_back(std::move(week));
  }
  return layout;
}

}  // namespace topwire
