#include "core/closing/labour_by_month.h"

#include <algorithm>
#include <array>

namespace topwire {

namespace {

using Hours = std::array<double, 12>;

unsigned monthIndex(Day day) {
  return static_cast<unsigned>(civil(day).month()) - 1;
}

void spread(Hours& hours, const Task& task) {
  const double total = static_cast<double>(task.trees) * task.secondsPerTree / 3600;
  if (total <= 0) return;
  const double perDay = total / daysBetween(task.opens, plusDays(task.closes, 1));
  for (Day day = task.opens; day <= task.closes; day = plusDays(day, 1))
    hours[monthIndex(day)] += perDay;
}

bool isSetAside(const Orchard& orchard, const TaskKey& key) {
  const auto mark = orchard.marks.find(key);
  return mark != orchard.marks.end() && !mark->second.setAsideReason.empty();
}

Hours plannedIn(const Orchard& orchard, const Plan& plan, Season season) {
  Hours hours{};
  for (const Task& task : plan.tasks)
    if (task.key.season == season && !isSetAside(orchard, task.key)) spread(hours, task);
  return hours;
}

Hours notedIn(const Orchard& orchard, Season season) {
  Hours hours{};
  for (const Tick* tick : standingTicks(orchard))
    if (tick->task.season == season && !isSetAside(orchard, tick->task))
      hours[monthIndex(tick->day)] += tick->minutes / 60.0;
  return hours;
}

}  // namespace

std::vector<MonthLabour> labourByMonth(const Orchard& orchard,
                                       const Plan& plan,
                                       const Trade& trade,
                                       const SeasonProposal& proposal,
                                       Day today) {
  const Season season = proposal.season;
  const Season next = season.plus(1);
  const Orchard closed = onceClosed(orchard, trade.tables, proposal, today);
  const Hours planned = plannedIn(orchard, plan, season);
  const Hours noted = notedIn(orchard, season);
  const Hours coming =
      plannedIn(closed, planTasks(closed, trade, SeasonSpan{next, next}, today), next);
  const unsigned first = monthIndex(firstDayOf(season, orchard.settings.hemisphere()));
  std::vector<MonthLabour> months;
  for (unsigned i = 0; i < 12; ++i) {
    const unsigned at = (first + i) % 12;
    months.push_back({at + 1, planned[at], noted[at], coming[at]});
  }
  return months;
}

Orchard onceClosed(const Orchard& orchard,
                   const TradeTables& tables,
                   const SeasonProposal& proposal,
                   Day today) {
  Orchard closed = orchard;
  // Never written down, so ids that repeat from one look to the next do no harm.
  IdSource ids = IdSource::countingFrom(std::uint64_t{1} << 63);
  const Checked<Change> change = closeSeason(orchard, tables, proposal, {}, today, ids);
  if (change && fits(closed, *change)) apply(closed, *change);
  return closed;
}

}  // namespace topwire
