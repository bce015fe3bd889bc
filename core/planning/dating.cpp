#include "core/planning/dating.h"

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
                             const ProgressByTask& progress)
    : orchard_(&orchard)
    , forecast_(&forecast)
    , planting_(&planting)
    , programme_(&programme)
    , progress_(&progress)
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
  return operation.repeat ? passesOf(operation, *task) : std::vector{std::move(*task)};
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
  task.secondsPerTree = operation.secondsPerTreeAt(task.leaf);
  if (!holdForPlanting(operation, task)) return std::nullopt;
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

/// A pass is due until the next one begins. Missed, it is worth doing until the next one
/// closes, which takes its place. A remainder under half an interval joins the last pass.
std::vector<Task> PlantingDates::passesOf(const Operation& operation,
                                          const Task& whole) const {
  const int every = operation.repeat->everyDays[static_cast<std::size_t>(whole.vigour)];
  const int passes =
      std::max(1, (DaySpan{whole.opens, whole.closes}.length() + every / 2) / every);
  std::vector<Task> tasks;
  for (int pass = 1; pass <= passes; ++pass) {
    Task task = whole;
    const bool last = pass == passes;
    task.key.pass = pass;
    task.opens = plusDays(whole.opens, every * (pass - 1));
    task.opensWhy.day = task.opens;
    task.opensWhy.repeatEvery = every;
    if (!last) {
      task.closes = plusDays(task.opens, every - 1);
      task.closesWhy = task.opensWhy;
      task.closesWhy.day = task.closes;
      const bool nextIsLast = pass + 1 == passes;
      task.cutOff = nextIsLast ? whole.closes : plusDays(task.closes, every);
      task.cutOffWhy = task.closesWhy;
      task.cutOffWhy->day = *task.cutOff;
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
    if (tasks.empty()) continue;
    const Task& task = tasks.back();
    DateReason reason;
    reason.completion = CompletionBasis{task.key, isFinished(task), task.closes};
    if (reason.completion->done)
      reason.completion->day = *progress_->at(task.key).lastTick;
    reason.anchorDay = reason.completion->day;
    return reason;
  }
  return std::nullopt;
}

bool PlantingDates::isFinished(const Task& task) const {
  const auto found = progress_->find(task.key);
  return found != progress_->end() && found->second.lastTick
         && found->second.wholeRows().contains(task.rows);
}

const Outlook& PlantingDates::outlook(Season season) {
  const auto known = outlooks_.find(season);
  if (known != outlooks_.end()) return known->second;
  return outlooks_.emplace(season, forecast_->outlook(*planting_, season)).first->second;
}

}  // namespace topwire
