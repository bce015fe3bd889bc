#include "core/crews/crew_jobs.h"

#include "core/crews/crew_paces.h"
#include "core/orchard/skill_words.h"
#include "core/orchard/working_days.h"
#include "core/planning/explain.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace topwire {

namespace {

constexpr int lastYoungLeaf = 2;
constexpr int wholePercent = 100;
constexpr double thousandths = 1000;
/// No forecast reaches further.
constexpr int forecastDays = 16;

bool isToDo(TaskState state) {
  return state != TaskState::done && state != TaskState::setAside
         && state != TaskState::lapsed;
}

/// Days by which an edge moves in a spring that is supposed to come later.
int supposedShift(const DateReason& why, const Supposition& supposed) {
  const bool moves = why.stage && why.stage->kind != StageKind::observed;
  return moves ? supposed.springLaterBy : 0;
}

Seconds workIn(double trees, int seconds, int percentDone) {
  const double left = trees * seconds * (wholePercent - percentDone) / wholePercent;
  return std::max<Seconds>(1, std::llround(left));
}

std::vector<RowOfWork> rowsOfWork(const TaskView& view, double treesInRow, int seconds) {
  std::vector<RowOfWork> rows;
  for (const int row : view.rowsLeft().rows()) {
    const auto part = view.progress.percentByRow.find(row);
    const int done = part == view.progress.percentByRow.end() ? 0 : part->second;
    rows.push_back({row, workIn(treesInRow, seconds, done)});
  }
  return rows;
}

/// What the work would cost were it left until after the plan's last day.
Loss lossAtTheEnd(const CrewJob& job, Loss undone, int days) {
  if (job.last < days) return undone;
  return std::min(undone, job.perDayLate * std::max(0, days - 1 - job.closes));
}

class JobMaker {
public:
  JobMaker(CrewQuestion& question,
           const Orchard& orchard,
           const Trade& trade,
           const Outlooks& outlooks,
           const Supposition& supposed)
      : question_(&question)
      , orchard_(&orchard)
      , trade_(&trade)
      , outlooks_(&outlooks)
      , supposed_(&supposed)
      , paces_(orchard, trade, question.crews, supposed.workersMore > 0) {}

  void add(const TaskView& view) {
    const Task& task = *view.task;
    if (!isToDo(view.state)) return;
    const Planting& planting = orchard_->plantings.at(task.key.planting);
    const Operation* operation = operationOf(*orchard_, trade_->programmes, task.key);
    const JobPace pace = paceOf(task, planting, operation);
    CrewJob job = dated(task);
    if (job.opens >= question_->problem.days) return;
    const double trees = treesPerRow(*orchard_, planting);
    if (pace.seconds <= 0 || trees <= 0) {
      if (job.opens <= 0) question_->uncounted.push_back(task.key);
      return;
    }
    job.rows = rowsOfWork(view, trees, pace.seconds);
    job.pace = pace.byCrew;
    if (job.rows.empty() || !takeSkill(job, task, operation)) return;
    job.block = static_cast<int>(std::ranges::find(question_->blocks, planting.block)
                                 - question_->blocks.begin());
    job.young = task.leaf >= 1 && task.leaf <= lastYoungLeaf;
    weigh(job, operation);
    if (operation != nullptr)
      job.shut = daysToWait(*question_, *operation, cautionsFor(planting));
    question_->tasks.push_back(task.key);
    question_->cutOffs.push_back(question_->dayOf(job.last));
    question_->problem.jobs.push_back(std::move(job));
  }

private:
  JobPace paceOf(const Task& task, const Planting& planting, const Operation* operation) {
    if (operation == nullptr || !task.handTitle.empty()) return {task.secondsPerTree, {}};
    return paces_.of(planting.programme, *operation, task.leaf);
  }

  CrewJob dated(const Task& task) const {
    CrewJob job;
    const int later = supposedShift(task.closesWhy, *supposed_);
    job.opens = question_->indexOf(task.opens) + supposedShift(task.opensWhy, *supposed_);
    job.closes = question_->indexOf(task.closes) + later;
    const int cutOffLater =
        task.cutOffWhy ? supposedShift(*task.cutOffWhy, *supposed_) : 0;
    job.last = question_->indexOf(lapsesAfter(*orchard_, task)) + cutOffLater;
    job.last = std::max(job.last, job.closes);
    return job;
  }

  /// False, with a note, where no crew has it.
  bool takeSkill(CrewJob& job, const Task& task, const Operation* operation) {
    const std::string skill = operation == nullptr ? std::string{} : operation->skill;
    job.skill = static_cast<int>(std::ranges::find(question_->skills, skill)
                                 - question_->skills.begin());
    const bool known = supposed_->workersMore > 0
                       || std::ranges::any_of(question_->crews, [&](CrewId id) {
                            return canDo(orchard_->crews.at(id), skill);
                          });
    if (known || question_->crews.empty()) return true;
    if (job.opens <= 0 && told_.insert(skill + task.key.operation).second)
      question_->notes.push_back(
          {phrase("Crew plan",
                  "No crew is noted as able to do \"%1\" work, so %2 is in no plan; give "
                  "a crew that skill."),
           {skillInWords(skill), titleOf(task, operation)}});
    return false;
  }

  void weigh(CrewJob& job, const Operation* operation) const {
    const DelayWeight& weight = trade_->tables.delayWeight(
        operation == nullptr ? DelayCost::medium : operation->delayCost);
    job.perDayLate = std::llround(thousandths * weight.perDay);
    job.leftUndone = lossAtTheEnd(
        job, std::llround(thousandths * weight.undone), question_->problem.days);
  }

  const std::vector<std::vector<DayCaution>>& cautionsFor(const Planting& planting) {
    const auto [place, isNew] = cautions_.try_emplace(planting.id);
    const auto outlook = outlooks_->find(planting.id);
    if (!isNew || outlook == outlooks_->end()) return place->second;
    const int days = std::min(forecastDays, question_->problem.days);
    for (int day = 0; day < days; ++day)
      place->second.push_back(topwire::cautionsFor(
          *orchard_, trade_->tables, planting, outlook->second, question_->dayOf(day)));
    return place->second;
  }

  CrewQuestion* question_;
  const Orchard* orchard_;
  const Trade* trade_;
  const Outlooks* outlooks_;
  const Supposition* supposed_;
  CrewPaces paces_;
  std::map<PlantingId, std::vector<std::vector<DayCaution>>> cautions_;
  std::set<std::string> told_;
};

/// By block, then planting, so that the order hangs on no random id.
std::vector<const TaskView*> inOrder(const Orchard& orchard,
                                     const std::vector<TaskView>& views) {
  std::map<BlockId, int> places;
  for (const Block* block : blocksInOrder(orchard))
    places.emplace(block->id, static_cast<int>(places.size()));
  std::vector<const TaskView*> ordered;
  for (const TaskView& view : views) ordered.push_back(&view);
  std::ranges::stable_sort(ordered, {}, [&](const TaskView* view) {
    const Planting& planting = orchard.plantings.at(view->task->key.planting);
    return std::tuple{places.at(planting.block),
                      std::string_view{planting.code},
                      view->task->closes,
                      std::string_view{view->task->key.operation},
                      view->task->key.pass};
  });
  return ordered;
}

/// Rows wait for the same rows of other jobs. What waits for work that is not counted in
/// hours waits at least until tomorrow.
void addNeeds(CrewQuestion& question, const std::vector<TaskView>& views) {
  std::map<TaskKey, int> jobs;
  for (const TaskKey& key : question.tasks)
    jobs.emplace(key, static_cast<int>(jobs.size()));
  const std::set<TaskKey> uncounted{question.uncounted.begin(), question.uncounted.end()};
  for (const TaskView& view : views) {
    const auto own = jobs.find(view.task->key);
    if (own == jobs.end()) continue;
    CrewJob& job = question.problem.jobs[static_cast<std::size_t>(own->second)];
    for (const TaskKey& needed : view.task->waitsFor) {
      const auto first = jobs.find(needed);
      if (first != jobs.end()) job.needs.push_back(first->second);
      if (uncounted.contains(needed)) job.opens = std::max(job.opens, 1);
    }
  }
}

/// Ticks on rows that a task does not hold, as after a planting lost a row.
void noteStrayTicks(CrewQuestion& question,
                    const Orchard& orchard,
                    const Trade& trade,
                    const std::vector<TaskView>& views) {
  const ProgressByTask progress = progressOf(orchard);
  for (const TaskView& view : views) {
    const auto ticked = progress.find(view.task->key);
    if (!isToDo(view.state) || ticked == progress.end()) continue;
    const RowSet stray = ticked->second.wholeRows().without(view.task->rows);
    if (stray.empty()) continue;
    const Operation* operation = operationOf(orchard, trade.programmes, view.task->key);
    question.notes.push_back(
        {phrase("Crew plan",
                "%1 in %2 has ticks on rows that are not its own (%3); they are not "
                "counted."),
         {titleOf(*view.task, operation),
          blockOf(orchard, orchard.plantings.at(view.task->key.planting)).name,
          rowsText(stray)}});
  }
}

/// Windows that ended unfinished not longer than a week ago: older ones were told then.
void noteLapsed(CrewQuestion& question,
                const Orchard& orchard,
                const Trade& trade,
                const std::vector<TaskView>& views) {
  constexpr int daysTold = 7;
  for (const TaskView& view : views) {
    if (view.state != TaskState::lapsed) continue;
    const Day last = lapsesAfter(orchard, *view.task);
    if (daysBetween(last, question.first) > daysTold) continue;
    question.notes.push_back(
        {phrase("Crew plan",
                "%1 in %2 was of use until %3 and is not planned any more; set it aside "
                "with a reason, or tick what was done."),
         {titleOf(*view.task, operationOf(orchard, trade.programmes, view.task->key)),
          blockOf(orchard, orchard.plantings.at(view.task->key.planting)).name,
          last}});
  }
}

bool endsTheDay(const DayCaution& caution) {
  switch (caution.kind) {
    case CautionKind::frost:
    case CautionKind::freezing:
    case CautionKind::damp:
      return false;
    case CautionKind::heat:
      return caution.severity >= Severity::serious;
    default:
      return true;
  }
}

}  // namespace

std::vector<bool> daysToWait(const CrewQuestion& question,
                             const Operation& operation,
                             const std::vector<std::vector<DayCaution>>& cautions) {
  std::vector<bool> wait;
  for (std::size_t day = 0; day < cautions.size(); ++day) {
    std::vector<DayCaution> weighty;
    std::ranges::copy_if(cautions[day], std::back_inserter(weighty), endsTheDay);
    if (shouldWait(operation, weighty) == nullptr) continue;
    wait.resize(static_cast<std::size_t>(question.problem.days), false);
    wait[day] = true;
  }
  return wait;
}

void addJobs(CrewQuestion& question,
             const Orchard& orchard,
             const Trade& trade,
             const std::vector<TaskView>& views,
             const Outlooks& outlooks,
             const Supposition& supposed) {
  JobMaker maker{question, orchard, trade, outlooks, supposed};
  for (const TaskView* view : inOrder(orchard, views)) maker.add(*view);
  addNeeds(question, views);
  noteStrayTicks(question, orchard, trade, views);
  noteLapsed(question, orchard, trade, views);
}

}  // namespace topwire
