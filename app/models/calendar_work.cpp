#include "app/models/calendar_work.h"

#include "app/words/say.h"
#include "core/base/contract.h"

#include <QCoreApplication>

#include <algorithm>

namespace topwire {

namespace {

constexpr int fortnight = 14;

MonthBar datesOf(const TaskView& view) {
  MonthBar bar;
  bar.opens = view.task->opens;
  bar.closes = view.task->closes;
  bar.state = view.state;
  // A visit's cut-off is only the next visit: worth a mark once it is late.
  const int every = view.task->opensWhy.repeatEvery;
  bar.routine = every > 0 && every <= fortnight;
  if (every == 0 || view.state == TaskState::late) bar.cutOff = view.task->cutOff;
  return bar;
}

MonthBar barOf(const Session& session, const TaskView& view) {
  const Task& task = *view.task;
  const Operation* operation = session.operationOf(task);
  MonthBar bar = datesOf(view);
  bar.tasks = {task.key};
  bar.name = session.titleOf(task).in(language());
  bar.shortName = operation != nullptr && task.handTitle.empty()
                      ? operation->shortName.in(language())
                      : bar.name;
  bar.operation = task.handTitle.empty() ? task.key.operation : task.handTitle;
  bar.place =
      blockOf(session.orchard(), session.orchard().plantings.at(task.key.planting)).name;
  return bar;
}

std::string blocksText(int count) {
  return say(Sentence{counted(count,
                              phrase("Calendar", "%1 block"),
                              phrase("Calendar", "%1 blocks")),
                      {std::int64_t{count}}})
      .toStdString();
}

std::string stageText(const Stage& stage, bool observed) {
  if (!observed) return stage.name.in(language());
  return say(Sentence{phrase("Calendar", "%1, seen"), {stage.name}}).toStdString();
}

void addStages(std::vector<MonthStage>& stages, const Outlook& outlook, DaySpan days) {
  for (const StageEstimate& estimate : outlook.stages) {
    const Stage* stage = stageByCode(estimate.bbch);
    if (stage == nullptr || !days.overlaps({estimate.early, estimate.late})) continue;
    const bool observed = estimate.kind == StageKind::observed;
    stages.push_back({estimate.bbch,
                      stageText(*stage, observed),
                      observed ? estimate.date : estimate.early,
                      estimate.date,
                      observed ? estimate.date : estimate.late,
                      observed,
                      {}});
  }
}

bool coversDay(const TaskView& view, Day day, Day today) {
  if (view.state == TaskState::done && view.progress.lastTick == day) return true;
  if (day < view.task->opens) return false;
  if (view.state == TaskState::setAside)
    return day <= view.task->cutOff.value_or(view.task->closes);
  return day
         <= (view.state == TaskState::late ? lastShown(view, today) : view.task->closes);
}

/// Tasks that had better wait on that day, with the reasons merged over plantings.
void addWaits(const Session& session, DayWork& work) {
  const CautionsByPlanting cautions = session.cautionsOn(work.day);
  CautionsByPlanting reasons;
  for (const DayGroup& group : work.groups) {
    const auto own = cautions.find(group.planting);
    if (own == cautions.end()) continue;
    for (const TaskView& view : group.views) {
      const Operation* operation = session.operationOf(*view.task);
      if (operation == nullptr || isSettled(view.state)) continue;
      const DayCaution* why = shouldWait(*operation, own->second);
      if (why == nullptr) continue;
      work.waits.emplace(view.task->key, *why);
      auto& listed = reasons[group.planting];
      if (std::ranges::find(listed, *why) == listed.end()) listed.push_back(*why);
    }
  }
  work.cautions = sharedAmong(session.orchard(), reasons);
}

void addTo(DayWork& work, const TaskView& view) {
  const auto group =
      std::ranges::find(work.groups, view.task->key.planting, &DayGroup::planting);
  if (group == work.groups.end())
    work.groups.push_back({view.task->key.planting, {view}});
  else
    group->views.push_back(view);
}

}  // namespace

bool WorkFilter::shows(const Orchard& orchard, const TaskView& view) const {
  return !hidden.contains(view.state)
         && (!block || orchard.plantings.at(view.task->key.planting).block == *block);
}

bool isSettled(TaskState state) {
  return state == TaskState::done || state == TaskState::lapsed
         || state == TaskState::setAside;
}

Day lastShown(const TaskView& view, Day today) {
  return lastShown(datesOf(view), today);
}

std::vector<TaskView> workIn(Session& session, DaySpan days, const WorkFilter& filter) {
  std::vector<TaskView> views = session.viewsFor(days);
  const Day today = session.today();
  std::erase_if(views, [&](const TaskView& view) {
    return !filter.shows(session.orchard(), view)
           || !days.overlaps({view.task->opens, lastShown(view, today)});
  });
  return views;
}

std::vector<MonthBar> barsOf(const Session& session, const std::vector<TaskView>& views) {
  std::vector<MonthBar> bars;
  bars.reserve(views.size());
  for (const TaskView& view : views) bars.push_back(barOf(session, view));
  return mergeAlike(std::move(bars), blocksText);
}

std::vector<MonthStage> stagesIn(const Session& session,
                                 DaySpan days,
                                 const WorkFilter& filter) {
  const Orchard& orchard = session.orchard();
  const SeasonSpan seasons = seasonsTouching(orchard, days);
  std::vector<MonthStage> stages;
  for (const auto& [id, planting] : orchard.plantings) {
    if (filter.block && planting.block != *filter.block) continue;
    for (Season season = seasons.first; season <= seasons.last; season = season.plus(1))
      if (leafOf(orchard, planting, season) >= 1)
        addStages(stages, session.outlook(planting, season), days);
  }
  return mergeStages(std::move(stages));
}

DayWork workOn(Session& session, Day day, const WorkFilter& filter) {
  const Orchard& orchard = session.orchard();
  std::set<BlockId> blocks;
  DayWork work;
  work.day = day;
  for (const TaskView& view : session.viewsFor({day, day})) {
    if (!filter.shows(orchard, view) || !coversDay(view, day, session.today())) continue;
    addTo(work, view);
    if (isSettled(view.state)) continue;
    ++work.jobs;
    work.hoursLeft += view.hoursLeft;
    blocks.insert(orchard.plantings.at(view.task->key.planting).block);
  }
  work.blocks = static_cast<int>(blocks.size());
  addWaits(session, work);
  return work;
}

std::optional<TaskView> findView(Session& session, const TaskKey& task) {
  if (const TaskView* view = session.view(task)) return *view;
  const Hemisphere hemisphere = session.orchard().settings.hemisphere();
  const DaySpan season{firstDayOf(task.season, hemisphere),
                       lastDayOf(task.season, hemisphere)};
  for (const TaskView& view : session.viewsFor(season))
    if (view.task->key == task) return view;
  return std::nullopt;
}

std::string usualWorker(const Orchard& orchard) {
  const Tick* last = nullptr;
  for (const Tick* tick : standingTicks(orchard))
    if (!tick->by.empty() && (last == nullptr || tick->day > last->day)) last = tick;
  if (last != nullptr) return last->by;
  return orchard.crews.empty() ? std::string{} : orchard.crews.begin()->second.name;
}

std::array<int, 7> countByState(const std::vector<TaskView>& views) {
  std::array<int, 7> counts{};
  for (const TaskView& view : views) ++counts[static_cast<std::size_t>(view.state)];
  return counts;
}

}  // namespace topwire
