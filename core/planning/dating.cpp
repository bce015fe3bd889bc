#include "core/planning/dating.h"

#include "core/planning/needs.h"
#include "core/planning/visits.h"

#include <algorithm>

namespace topwire {

namespace {

/// How many seasons back an `after` anchor looks for the work it waits for: from a
/// bearing tree to the chain before planting.
constexpr int seasonsLookedBack = 12;

Day offsetFrom(Day day, const Anchor& anchor) {
  return plusDays(plusMonthsCapToMonthEnd(day, anchor.months), anchor.days);
}

DateReason reasonAt(const Anchor& anchor, Day anchorDay) {
  DateReason reason;
  reason.anchor = anchor;
  reason.anchorDay = anchorDay;
  reason.day = offsetFrom(anchorDay, anchor);
  return reason;
}

bool hangsOnPlanting(const Anchor& anchor) {
  return std::holds_alternative<OnPlanting>(anchor.point);
}

/// An edge no later than bloom, which is still to be seen. Work counted in weeks from
/// bloom is dated again once bloom has come, long before it closes.
bool hangsOnComingBloom(const DateReason& edge) {
  if (!edge.stage || edge.stage->kind == StageKind::observed) return false;
  const int bbch = edge.stage->bbch;
  return stages::firstBloom <= bbch && bbch <= stages::fullBloom
         && offsetFrom(edge.anchorDay, edge.anchor) <= edge.anchorDay;
}

/// Takes the edge back to where an early bloom would put it, but not before `middle`.
void takeEarlyEdge(DateReason& edge, Day middle) {
  const Day early = offsetFrom(edge.stage->early, edge.anchor);
  if (early >= edge.day) return;
  edge.anchorDay = edge.stage->early;
  edge.earlyEdge = early < middle ? EarlyEdge::heldToMiddle : EarlyEdge::taken;
  edge.day = std::min(edge.day, std::max(early, middle));
}

}  // namespace

PlantingDates::PlantingDates(const Orchard& orchard,
                             const Trade& trade,
                             StageForecast& forecast,
                             const Planting& planting,
                             const Programme& programme,
                             const ProgressByTask& progress,
                             const LearnedRates& rates)
    : orchard_(&orchard)
    , forecast_(&forecast)
    , planting_(&planting)
    , programme_(&programme)
    , progress_(&progress)
    , rates_(&rates)
    , hemisphere_(orchard.settings.hemisphere())
    , tables_(&trade.tables) {}

const std::vector<Task>& PlantingDates::tasksOf(const Operation& operation,
                                                Season season) {
  const std::pair key{operation.id, season};
  if (const auto known = dated_.find(key); known != dated_.end()) return known->second;
  auto tasks = date(operation, season);
  return dated_.emplace(key, std::move(tasks)).first->second;
}

std::vector<Task> PlantingDates::date(const Operation& operation, Season season) {
  if (!isAskedFor(operation, season)) return {};
  auto task = dateOnce(operation, season);
  if (!task) return {};
  auto tasks = operation.repeat ? passesOf(operation, *task) : std::vector{*task};
  weighConditions(operation, tasks);
  for (Task& each : tasks) noteNeeds(operation, each);
  return tasks;
}

/// An operation without leaves is done once, in the season its opening falls in.
bool PlantingDates::isAskedFor(const Operation& operation, Season season) const {
  const int leaf = leafIn(season, planting_->planted, hemisphere_);
  if (!operation.appliesTo(leaf, vigour(season), planting_->kind)) return false;
  if (!operation.leaves.empty() || !hangsOnPlanting(operation.opens)) return true;
  return seasonOf(offsetFrom(planting_->planted, operation.opens), hemisphere_) == season;
}

Vigour PlantingDates::vigour(Season season) const {
  return vigourIn(season, *orchard_, *tables_, *planting_).vigour;
}

std::optional<Task> PlantingDates::dateOnce(const Operation& operation, Season season) {
  const Edge opens = resolve(operation.opens, season);
  const Edge closes = resolve(operation.closes, season);
  if (!opens || !closes) return std::nullopt;
  Task task;
  task.key = {planting_->id, operation.id, season, 1};
  task.leaf = leafIn(season, planting_->planted, hemisphere_);
  task.vigour = vigour(season);
  task.opens = opens->day;
  task.closes = closes->day;
  task.opensWhy = *opens;
  task.closesWhy = *closes;
  task.rows = planting_->rows;
  task.trees = treesIn(*orchard_, *planting_);
  task.labour = rates_->of(programme_->id, operation, task.leaf);
  task.secondsPerTree = task.labour.seconds();
  if (!holdForPlanting(operation, task)) return std::nullopt;
  holdForNeeds(operation, task);
  if (task.closes < task.opens) {
    notes_.emplace_back(
        phrase("Plan",
               "%1 in %2, %3: the window would close before it opens; "
               "it is held to one day. Look at the stages' dates."),
        std::vector<Value>{operation.name, planting_->code, nameOf(season, hemisphere_)});
    task.closes = task.opens;
  }
  setCutOff(operation, season, task);
  heedEarlyBloom(operation, task);
  return task;
}

/// Trees that are not in the ground yet have no buds to rub. False where the window is
/// over before they are.
bool PlantingDates::holdForPlanting(const Operation& operation, Task& task) const {
  const bool aboutPlanting =
      hangsOnPlanting(operation.opens) || hangsOnPlanting(operation.closes);
  if (aboutPlanting || task.leaf < 1 || task.opens >= planting_->planted) return true;
  if (task.closes < planting_->planted) return false;
  task.opens = planting_->planted;
  task.opensWhy.day = task.opens;
  task.opensWhy.heldForPlanting = true;
  return true;
}

void PlantingDates::setCutOff(const Operation& operation, Season season, Task& task) {
  if (!operation.cutOff) return;
  task.cutOffWhy = resolve(operation.cutOff->anchor, season);
  if (!task.cutOffWhy) return;
  task.cutOffWhy->day = std::max(task.cutOffWhy->day, task.closes);
  task.cutOff = task.cutOffWhy->day;
}

/// Where late is better than never nothing presses, and the expected date will do.
void PlantingDates::heedEarlyBloom(const Operation& operation, Task& task) const {
  if (!operation.cutOff || !task.cutOffWhy) return;
  const Day middle = plusDays(task.opens, daysBetween(task.opens, task.closes) / 2);
  if (hangsOnComingBloom(*task.cutOffWhy)) takeEarlyEdge(*task.cutOffWhy, middle);
  if (hangsOnComingBloom(task.closesWhy)) takeEarlyEdge(task.closesWhy, middle);
  if (task.closesWhy.day > task.cutOffWhy->day) task.closesWhy = *task.cutOffWhy;
  task.closes = std::max(task.closesWhy.day, task.opens);
  task.cutOff = task.cutOffWhy->day;
}

/// Missed, a visit is worth doing until the next one closes, which takes its place.
std::vector<Task> PlantingDates::passesOf(const Operation& operation, const Task& whole) {
  const Repeat& repeat = *operation.repeat;
  VisitRule rule{
      repeat.everyDays[static_cast<std::size_t>(whole.vigour)], repeat.everyGrowth, {}};
  if (rule.everyGrowth) rule.paces = measured().pacesIn(whole.key.season);
  const auto visits = visitsIn({whole.opens, whole.closes}, rule);
  std::vector<Task> tasks;
  for (std::size_t i = 0; i < visits.size(); ++i) {
    Task task = whole;
    task.key.pass = static_cast<int>(i) + 1;
    task.opens = task.opensWhy.day = visits[i].days.first;
    task.opensWhy.repeatEvery = visits[i].every;
    task.opensWhy.growth = visits[i].growth;
    if (i > 0) task.opensWhy.heldForWork.reset();
    if (i + 1 < visits.size()) {
      task.closesWhy = task.opensWhy;
      task.closes = task.closesWhy.day = visits[i].days.last;
      task.cutOffWhy = task.closesWhy;
      task.cutOff = task.cutOffWhy->day = visits[i + 1].days.last;
    }
    tasks.push_back(std::move(task));
  }
  return tasks;
}

PlantingDates::Edge PlantingDates::resolve(const Anchor& anchor, Season season) {
  if (hangsOnPlanting(anchor)) return reasonAt(anchor, planting_->planted);
  if (const auto* month = std::get_if<OnMonth>(&anchor.point)) {
    const Season in = season.plus(month->seasonsLater);
    return reasonAt(anchor, localSeasonDay(in, hemisphere_, month->month, month->day));
  }
  if (const auto* after = std::get_if<OnCompletion>(&anchor.point)) {
    Edge edge = onCompletion(after->operation, season);
    if (!edge) return edge;
    DateReason reason = reasonAt(anchor, edge->anchorDay);
    reason.completion = edge->completion;
    return reason;
  }
  const auto* stage = outlook(season).find(std::get<OnStage>(anchor.point).bbch);
  if (!stage) return std::nullopt;
  DateReason reason = reasonAt(anchor, stage->date);
  reason.stage = *stage;
  return reason;
}

PlantingDates::Edge PlantingDates::onCompletion(const std::string& id, Season season) {
  const Operation* operation = programme_->find(id);
  if (!operation) return std::nullopt;
  for (int back = 0; back <= seasonsLookedBack; ++back) {
    const auto& tasks = tasksOf(*operation, season.plus(-back));
    if (tasks.empty() && isLeftOut(*operation, season.plus(-back))) break;
    if (tasks.empty()) continue;
    const Task& task = tasks.back();
    DateReason reason;
    reason.completion =
        CompletionBasis{task.key, isFinished(*progress_, task), task.closes};
    if (reason.completion->done)
      reason.completion->day = *progress_->at(task.key).lastTick;
    reason.anchorDay = reason.completion->day;
    return reason;
  }
  return std::nullopt;
}

/// Each visit by what was measured up to its own closing, so that a later measurement
/// leaves the visits before it as they were.
void PlantingDates::weighConditions(const Operation& operation,
                                    std::vector<Task>& tasks) {
  for (Task& task : tasks)
    for (const Condition& condition : operation.when)
      task.conditions.push_back(
          measured().weigh(condition,
                           task.key.season,
                           task.closes,
                           looksToLastSeason(condition.measure, task)));
  std::erase_if(tasks, [](const Task& task) {
    return std::ranges::any_of(task.conditions, [](const ConditionReason& reason) {
      return reason.holds() == false;
    });
  });
  if (operation.repeat && operation.repeat->until)
    endVisits(*operation.repeat->until, tasks);
}

/// Whether what was measured may have left work out that the trees would be due for; an
/// earlier season's then is not what follows it waits for.
bool PlantingDates::isLeftOut(const Operation& operation, Season season) const {
  const bool conditional =
      !operation.when.empty() || (operation.repeat && operation.repeat->until);
  return conditional && isAskedFor(operation, season);
}

/// Until this season's shoots are measured last season's tell how strong the trees are.
/// Last season's fruit tells only what is done before this season's flowers open.
bool PlantingDates::looksToLastSeason(Measure measure, const Task& task) {
  if (measure != Measure::fruitPerTree) return true;
  const auto* bloom = outlook(task.key.season).find(stages::firstBloom);
  return bloom != nullptr && task.opens < bloom->date;
}

/// A visit that had opened when the end was measured is still asked for.
void PlantingDates::endVisits(const Condition& until, std::vector<Task>& tasks) {
  std::erase_if(tasks, [&](const Task& task) {
    const Day before = plusDays(task.opens, -1);
    return measured().weigh(until, task.key.season, before, false).holds() == true;
  });
  for (Task& task : tasks)
    task.until = measured().weigh(until, task.key.season, task.closes, false);
}

/// Needed work as of the latest season that has any, where it is still to be done. What
/// comes back every season lapses with its own; only what is done once lies further back.
std::optional<Task> PlantingDates::waitedFor(const std::string& id,
                                             Season season,
                                             Day opens) {
  const Operation* needed = programme_->find(id);
  if (!needed) return std::nullopt;
  const int furthest = needed->oncePerPlanting() ? seasonsLookedBack : 1;
  for (int back = 0; back <= furthest; ++back) {
    std::vector<Task> visits = tasksOf(*needed, season.plus(-back));
    if (visits.empty() && isLeftOut(*needed, season.plus(-back))) break;
    if (visits.empty()) continue;
    for (Task& visit : visits) obeyMark(*orchard_, visit);
    const Task& visit = visitBy(visits, opens);
    if (hasLapsed(*needed, visit, opens) || !isWaitedFor(*orchard_, *progress_, visit))
      return std::nullopt;
    return visit;
  }
  return std::nullopt;
}

/// A trellis that was begun does not lapse: its other rows have no wire yet. One without
/// any tick is more likely to stand, unrecorded, than to be missing.
bool PlantingDates::hasLapsed(const Operation& operation,
                              const Task& task,
                              Day day) const {
  const bool begun = progress_->contains(task.key);
  if (operation.oncePerPlanting() && begun) return false;
  return lapsesAfter(*orchard_, task) < day;
}

/// No tying before the wire: work cannot open before what it waits for does. Its closing
/// has reasons of its own and stays, so that a day is left at the least.
void PlantingDates::holdForNeeds(const Operation& operation, Task& task) {
  for (const std::string& need : operation.needs) {
    const auto needed = waitedFor(need, task.key.season, task.opens);
    if (!needed || needed->opens <= task.opens || task.opens >= task.closes) continue;
    task.opens = task.opensWhy.day = std::min(needed->opens, task.closes);
    task.opensWhy.heldForWork = needed->key;
  }
}

void PlantingDates::noteNeeds(const Operation& operation, Task& task) {
  if (operation.needs.empty() || isFinished(*progress_, task)) return;
  Task marked = task;
  obeyMark(*orchard_, marked);
  for (const std::string& need : operation.needs)
    if (const auto needed = waitedFor(need, task.key.season, marked.opens))
      task.waitsFor.push_back(needed->key);
}

const MeasuredTrees& PlantingDates::measured() {
  if (!measured_) measured_.emplace(*orchard_, *planting_);
  return *measured_;
}

const Outlook& PlantingDates::outlook(Season season) {
  const auto known = outlooks_.find(season);
  if (known != outlooks_.end()) return known->second;
  return outlooks_.emplace(season, forecast_->outlook(*planting_, season)).first->second;
}

}  // namespace topwire
