#include "core/crews/crew_plan.h"

#include "core/base/contract.h"
#include "core/calendar/iso_week.h"
#include "core/crews/crew_hands.h"
#include "core/crews/first_days.h"
#include "core/crews/hours.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace topwire {

namespace {

constexpr int secondsPerMinute = 60;

/// What a tick has dispatched anew at once; the rest follows with the whole plan.
constexpr int daysAnew = 7;

/// The last day on which a job closes in time. Work that is late already counts as work
/// to be done while it is of use, not as a window to be met.
int closingOf(const CrewJob& job) {
  return job.closes < 0 ? job.last : job.closes;
}

int lastUseOf(const CrewJob& job) {
  return job.last;
}

void findWarnings(CrewPlan& plan) {
  plan.late = findShortages(plan.question.problem, closingOf);
  plan.lost = findShortages(plan.question.problem, lastUseOf);
}

/// Prices by the names of skills, so that they serve a question that asks for others.
LabourFlow pricesFor(const CrewQuestion& question, const CrewPlan& earlier) {
  LabourFlow flow = earlier.flow;
  const auto& skills = earlier.question.skills;
  flow.price.clear();
  flow.done.clear();
  flow.undone.clear();
  for (const std::string& skill : question.skills) {
    const auto known = std::ranges::find(skills, skill);
    flow.price.push_back(
        known == skills.end()
            ? std::vector<Loss>(flow.ranges.size(), 0)
            : earlier.flow.price[static_cast<std::size_t>(known - skills.begin())]);
  }
  return flow;
}

/// Warnings of an earlier plan as far as their jobs are still asked for.
std::vector<Shortage> stillAsked(const CrewQuestion& question,
                                 const CrewQuestion& earlier,
                                 const std::vector<Shortage>& told) {
  std::map<TaskKey, int> jobs;
  for (const TaskKey& task : question.tasks)
    jobs.emplace(task, static_cast<int>(jobs.size()));
  std::vector<Shortage> still;
  for (Shortage shortage : told) {
    std::vector<int> found;
    for (const int job : shortage.jobs) {
      const auto now = jobs.find(earlier.tasks[static_cast<std::size_t>(job)]);
      if (now != jobs.end()) found.push_back(now->second);
    }
    shortage.jobs = std::move(found);
    if (!shortage.jobs.empty()) still.push_back(std::move(shortage));
  }
  return still;
}

/// By the earlier question's jobs: their number now; -1 where they are no longer asked
/// for, or not in that order.
std::vector<int> jobsNow(const CrewQuestion& question, const CrewQuestion& earlier) {
  std::vector<int> now;
  std::size_t next = 0;
  for (const TaskKey& task : earlier.tasks) {
    const bool same = next < question.tasks.size() && question.tasks[next] == task;
    now.push_back(same ? static_cast<int>(next++) : -1);
  }
  return now;
}

CrewSchedule scheduleAfter(const CrewQuestion& question,
                           const LabourFlow& flow,
                           const CrewPlan& earlier) {
  const EarlierPlan before{
      earlier.question.problem, earlier.schedule, jobsNow(question, earlier.question)};
  if (question.skills == earlier.question.skills)
    if (auto redone = redoFirstDays(question.problem, flow, before, daysAnew))
      return std::move(*redone);
  return dispatch(question.problem, flow, {});
}

/// The same plan made again with nobody on the way; never worse than with moves.
Loss lossWithoutMoves(const CrewPlan& plan) {
  CrewProblem still = plan.question.problem;
  still.move = 0;
  still.moveBetween.clear();
  const Loss loss = dispatch(still, plan.flow, {}).loss;
  return std::min(loss, plan.schedule.loss);
}

int minuteOfDay(const CrewQuestion& question, Seconds sinceStart) {
  return question.startMinute + static_cast<int>(sinceStart / secondsPerMinute);
}

RowSet rowsOf(const CrewJob& job, const Stint& stint) {
  RowSet rows;
  for (const int index : stint.rows) {
    const int row = job.rows[static_cast<std::size_t>(index)].row;
    rows = rows.with(RowSet::range(row, row));
  }
  return rows;
}

/// Rows of a job a gang does in two stints one after the other are one job to people.
bool continues(const LaneJob& earlier, const LaneJob& next) {
  return earlier.task == next.task && earlier.gang == next.gang
         && earlier.endMinute == next.startMinute && earlier.workers == next.workers;
}

class LaneMaker {
public:
  LaneMaker(const Orchard& orchard, const CrewPlan& plan, Day day)
      : orchard_(&orchard), plan_(&plan), day_(plan.question.indexOf(day)) {}

  std::vector<CrewLane> made() {
    const CrewQuestion& question = plan_->question;
    for (int crew = 0; crew < static_cast<int>(question.crews.size()); ++crew)
      addLane(crew);
    const Stint* before = nullptr;
    for (const Stint& stint : plan_->schedule.stints) {
      if (stint.day != day_) continue;
      if (before != nullptr && before->gang == stint.gang) takeMove(*before, stint);
      addJob(stint);
      before = &stint;
    }
    for (CrewLane& lane : lanes_) lane.idle = std::max(0.0, lane.idle);
    return std::move(lanes_);
  }

private:
  void addLane(int crew) {
    const CrewQuestion& question = plan_->question;
    CrewLane lane;
    lane.crew = question.crews[static_cast<std::size_t>(crew)];
    const auto record = orchard_->crews.find(lane.crew);
    if (record != orchard_->crews.end()) {
      lane.usual = record->second.workers;
      lane.workers = workersOn(*orchard_, record->second, question.dayOf(day_));
    }
    lane.gangs = 0;
    const auto& gangs = question.problem.gangs;
    for (std::size_t gang = 0; gang < gangs.size(); ++gang) {
      if (gangs[gang].crew != crew) continue;
      lanesByGang_[static_cast<int>(gang)] = {lanes_.size(), lane.gangs++};
      lane.hours += hoursOf(gangHours(gangs[gang]));
    }
    lane.idle = lane.hours;
    lanes_.push_back(std::move(lane));
  }

  Seconds gangHours(const Gang& gang) const {
    return gang.workersOn(day_) * plan_->question.problem.lengthOf(gang, day_);
  }

  /// The whole gang is on the way, however few of it the block has room for.
  void takeMove(const Stint& from, const Stint& to) {
    const CrewProblem& problem = plan_->question.problem;
    const auto place = lanesByGang_.find(to.gang);
    if (place == lanesByGang_.end()) return;
    const auto blockOf = [&problem](const Stint& stint) {
      return problem.jobs[static_cast<std::size_t>(stint.job)].block;
    };
    const Gang& gang = problem.gangs[static_cast<std::size_t>(to.gang)];
    lanes_[place->second.first].idle -=
        hoursOf(gang.workersOn(day_) * problem.moveFrom(blockOf(from), blockOf(to)));
  }

  void addJob(const Stint& stint) {
    const auto place = lanesByGang_.find(stint.gang);
    if (place == lanesByGang_.end()) return;  // people who are only supposed
    CrewLane& lane = lanes_[place->second.first];
    const CrewQuestion& question = plan_->question;
    const CrewJob& job = question.problem.jobs[static_cast<std::size_t>(stint.job)];
    LaneJob made;
    made.task = question.tasks[static_cast<std::size_t>(stint.job)];
    made.gang = place->second.second;
    made.startMinute = minuteOfDay(question, stint.begin);
    made.endMinute = minuteOfDay(question, stint.end);
    made.workers = stint.workers;
    made.rows = rowsOf(job, stint);
    made.hours = hoursOf((stint.end - stint.begin) * stint.workers);
    made.pinned = isPinned(question.problem, stint);
    lane.idle -= made.hours;
    if (!lane.jobs.empty() && continues(lane.jobs.back(), made))
      join(lane.jobs.back(), made);
    else
      lane.jobs.push_back(std::move(made));
  }

  static void join(LaneJob& earlier, const LaneJob& next) {
    earlier.endMinute = next.endMinute;
    earlier.rows = earlier.rows.with(next.rows);
    earlier.hours += next.hours;
  }

  const Orchard* orchard_;
  const CrewPlan* plan_;
  int day_;
  std::vector<CrewLane> lanes_;
  std::map<int, std::pair<std::size_t, int>> lanesByGang_;
};

Loss lossPerSecond(const CrewJob& job, bool lost) {
  return lost ? job.leftUndone : job.perDayLate;
}

WindowAtRisk riskOf(const CrewPlan& plan, const Shortage& shortage, bool lost) {
  const CrewQuestion& question = plan.question;
  std::vector<int> jobs = shortage.jobs;
  const auto job = [&](int index) -> const CrewJob& {
    return question.problem.jobs[static_cast<std::size_t>(index)];
  };
  std::ranges::stable_sort(jobs, [&](int one, int other) {
    return job(one).work() * lossPerSecond(job(one), lost)
           > job(other).work() * lossPerSecond(job(other), lost);
  });
  WindowAtRisk risk;
  int by = question.problem.days;
  for (const int index : jobs) {
    risk.tasks.push_back(question.tasks[static_cast<std::size_t>(index)]);
    by = std::min(by, lost ? lastUseOf(job(index)) : closingOf(job(index)));
  }
  risk.lost = lost;
  risk.by = question.dayOf(by);
  risk.hoursMissing = hoursOf(shortage.missing);
  risk.firstDay = question.dayOf(shortage.firstDay);
  risk.lastDay = question.dayOf(shortage.lastDay);
  risk.workingDays = shortage.workingDays;
  risk.workersMore = shortage.workersMore;
  risk.beyondHelp = hoursOf(shortage.beyondHelp);
  return risk;
}

/// Told already, with the same days and hours, as work that will be lost.
bool isAmong(const std::vector<WindowAtRisk>& risks, const WindowAtRisk& risk) {
  return std::ranges::any_of(risks, [&risk](const WindowAtRisk& other) {
    return other.tasks == risk.tasks && other.hoursMissing == risk.hoursMissing;
  });
}

}  // namespace

int crewPlanDays(Day first) {
  constexpr int weeks = 26;
  constexpr int daysOfWeek = 7;
  const Day monday = daysOf(isoWeekOf(first)).first;
  return daysBetween(first, plusDays(monday, weeks * daysOfWeek));
}

CrewPlan planCrews(CrewQuestion question, const SearchLimits& limits) {
  CrewPlan plan;
  plan.question = std::move(question);
  const CrewProblem& problem = plan.question.problem;
  plan.flow = solveLabourFlow(problem, dayRanges(problem.days, crewPlanDaily));
  plan.schedule = findPlan(problem, plan.flow, limits);
  plan.withoutMoves = lossWithoutMoves(plan);
  findWarnings(plan);
  return plan;
}

CrewPlan replanCrews(CrewQuestion question, const CrewPlan& earlier) {
  TOPWIRE_REQUIRE(question.first == earlier.question.first);
  CrewPlan plan;
  plan.flow = pricesFor(question, earlier);
  plan.late = stillAsked(question, earlier.question, earlier.late);
  plan.lost = stillAsked(question, earlier.question, earlier.lost);
  plan.question = std::move(question);
  plan.schedule = scheduleAfter(plan.question, plan.flow, earlier);
  plan.withoutMoves = std::min(earlier.withoutMoves, plan.schedule.loss);
  return plan;
}

std::vector<CrewLane> lanesOn(const Orchard& orchard, const CrewPlan& plan, Day day) {
  const int index = plan.question.indexOf(day);
  if (index < 0 || index >= plan.question.problem.days) return {};
  return LaneMaker{orchard, plan, day}.made();
}

std::vector<WindowAtRisk> windowsAtRisk(const CrewPlan& plan) {
  std::vector<WindowAtRisk> risks;
  for (const Shortage& shortage : plan.lost)
    risks.push_back(riskOf(plan, shortage, true));
  for (const Shortage& shortage : plan.late) {
    WindowAtRisk risk = riskOf(plan, shortage, false);
    if (!isAmong(risks, risk)) risks.push_back(std::move(risk));
  }
  std::ranges::stable_sort(risks, {}, [](const WindowAtRisk& risk) {
    return std::tuple{!risk.lost, risk.by, risk.firstDay};
  });
  return risks;
}

std::vector<DayWorth> worthOfDays(const CrewPlan& plan, int days) {
  std::vector<DayWorth> worth;
  const CrewProblem& problem = plan.question.problem;
  for (int day = 0; day < std::min(days, problem.days); ++day) {
    DayWorth one{plan.question.dayOf(day), hoursOf(problem.capacity(day)), 0};
    for (int skill = 0; skill < problem.skills; ++skill)
      one.saves = std::max(one.saves, wholeOf(plan.flow.priceOn(skill, day)));
    worth.push_back(one);
  }
  return worth;
}

}  // namespace topwire
