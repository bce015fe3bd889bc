#include "core/crews/row_trades.h"

#include "core/base/contract.h"
#include "core/crews/index.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace topwire {

namespace {

/// What an hour of labour counts at least, as a part of what work usually weighs, so that
/// also on slack days nobody goes about for nothing.
constexpr Loss leastPrice = 32;

/// What a day's delay counts, as a part of what work usually weighs.
constexpr Loss perDay = 1024;

/// What work on its closing day counts, in days of delay, since nothing may come between
/// then; a half of it the day before, a third two days before.
constexpr Loss lastDay = 16;
constexpr Loss fine = 64;  ///< parts of a day that this is reckoned in

}  // namespace

RowTrades::RowTrades(const FlatProblem& problem, const LabourFlow& flow)
    : problem_{problem}, days_{problem}, order_{problem} {
  Seconds work = 1;
  for (const FlatJob& job : problem.jobs) work += job.work;
  usual_ = std::max<Loss>(1, problem.asked().stake() / work);
  findPrices(flow);
}

void RowTrades::findPrices(const LabourFlow& flow) {
  Loss sum = 0;
  int gangDays = 0;
  for (int gang = 0; gang < static_cast<int>(problem_.gangs.size()); ++gang)
    for (int day = 0; day < problem_.days(); ++day) {
      Loss price = usual_ / leastPrice;
      for (int skill = 0; skill < problem_.asked().skills; ++skill)
        if ((problem_.gangs[at(gang)].skills >> skill & 1U) != 0)
          price = std::max(price, flow.priceOn(skill, day));
      price_.push_back(price * problem_.gangDay(gang, day).workers);
      sum += price_.back();
      if (price_.back() > 0) ++gangDays;
    }
  const double keep = std::clamp(problem_.asked().keepTogether, 0.0, 1.0);
  const auto share = static_cast<Loss>(std::llround(keep * 1024));
  apart_ = gangDays == 0 ? 0 : sum / gangDays * problem_.asked().move / 1024 * share;
}

void RowTrades::start(const CrewSchedule& plan) {
  rounds_ = roundsOf(problem_.asked(), plan);
  freeze(plan);
  gatherUndone();
  const std::size_t blocks = problem_.asked().blocks.size();
  inBlock_.assign(blocks * at(problem_.days()), 0);
  holders_.assign(blocks, {});
  shares_.assign(problem_.jobs.size() * problem_.gangs.size(), 0);
  order_.clear();
  free_.clear();
  mayChange_.clear();
  for (int which = 0; which < static_cast<int>(rounds_.size()); ++which) note(which);
}

void RowTrades::note(int which) {
  const Round& round = rounds_[at(which)];
  free_.push_back(days_.freeAfter(which, round));
  // Such a day knows more than is reckoned with here.
  if (free_.back() < 0) frozen_[at(which)] = 1;
  for (const Stretch& stretch : round) {
    order_.set(stretch, days_.dayOf(which));
    share({stretch, nowhere, which}, 1);
    holders_[at(problem_.job(stretch.job).block)].push_back(which);
  }
  crowd(which, round, 1);
  const GangDay& hours = days_.hoursOf(which);
  if (frozen_[at(which)] == 0 && hours.workers > 0 && hours.length > 0)
    mayChange_.push_back(which);
}

void RowTrades::freeze(const CrewSchedule& plan) {
  frozen_.assign(rounds_.size(), 0);
  const auto& agreed = problem_.asked().agreed;
  TOPWIRE_REQUIRE(agreed.size() <= problem_.gangs.size());
  if (problem_.days() == 0) return;
  for (std::size_t gang = 0; gang < agreed.size(); ++gang)
    if (!agreed[gang].empty()) frozen_[at(days_.of(static_cast<int>(gang), 0))] = 1;
  for (const Stint& stint : plan.stints) {
    const bool isPinnedDay = !problem_.pinsOf(stint.gang, stint.day).empty();
    if (isPinnedDay || !isWhole(problem_.asked(), stint))
      frozen_[at(days_.of(stint.gang, stint.day))] = 1;
  }
}

void RowTrades::gatherUndone() {
  std::vector<std::vector<char>> taken;
  for (const FlatJob& job : problem_.jobs) taken.emplace_back(at(job.rows), char{0});
  for (const Round& round : rounds_)
    for (const Stretch& stretch : round)
      std::fill_n(taken[at(stretch.job)].begin() + stretch.first, stretch.rows, 1);
  undone_.clear();
  for (const int number : problem_.byFirstDay) {
    const auto& rows = taken[at(number)];
    for (int row = 0; row < static_cast<int>(rows.size()); ++row) {
      if (rows[at(row)] != 0) continue;
      if (row > 0 && rows[at(row - 1)] == 0)
        ++undone_.back().rows;
      else
        undone_.push_back({number, row, 1});
    }
  }
}

bool RowTrades::mayHold(int which, int job) const {
  return frozen_[at(which)] == 0 && days_.mayHold(which, problem_.job(job));
}

Loss RowTrades::lossOf(const Step& step) const {
  const FlatJob& job = problem_.job(step.stretch.job);
  const auto perSecond = [&](int which) {
    if (which == nowhere) return job.leftUndone;
    const int day = days_.dayOf(which);
    return std::max(0, day - job.closes) * job.perDayLate;
  };
  return days_.workOf(step.stretch) * (perSecond(step.to) - perSecond(step.from));
}

/// Nothing between what is done and what is left undone, where only the loss counts.
Loss RowTrades::delayOf(const Step& step) const {
  if (step.from == nowhere || step.to == nowhere) return 0;
  const int closes = problem_.job(step.stretch.job).closes;
  const auto delay = [&](int which) {
    const int day = days_.dayOf(which);
    return day * fine + lastDay * fine / (1 + std::max(0, closes - day));
  };
  const Loss later = delay(step.to) - delay(step.from);
  return days_.workOf(step.stretch) * later * usual_ / (perDay * fine);
}

void RowTrades::share(const Step& step, int sign) {
  const int gangs = static_cast<int>(problem_.gangs.size());
  const auto add = [&](int which, int rows) {
    if (which != nowhere)
      shares_[at(step.stretch.job * gangs + days_.gangOf(which))] += rows;
  };
  add(step.from, -sign * step.stretch.rows);
  add(step.to, sign * step.stretch.rows);
}

/// By how many the trade adds to the gangs that share jobs.
int RowTrades::gangsMore() {
  const int gangs = static_cast<int>(problem_.gangs.size());
  const auto isAt = [&](int which, const Stretch& stretch) {
    return which != nowhere && shares_[at(stretch.job * gangs + days_.gangOf(which))] > 0;
  };
  int more = 0;
  for (const Step& step : steps_) {
    more -= isAt(step.from, step.stretch) + isAt(step.to, step.stretch);
    share(step, 1);
    more += isAt(step.from, step.stretch) + isAt(step.to, step.stretch);
  }
  for (const Step& step : steps_) share(step, -1);
  return more;
}

Loss RowTrades::worsening() {
  Loss more = 0;
  for (const Step& step : steps_) more += lossOf(step);
  if (mayNotLose_ && more > 0) return std::numeric_limits<Loss>::max();
  for (const Step& step : steps_) more += delayOf(step);
  for (std::size_t change = 0; change < changed_; ++change) {
    const auto& [which, round, free] = changes_[change];
    more -= price_[at(which)] * (free - free_[at(which)]);
  }
  if (apart_ > 0) more += apart_ * gangsMore();
  return more;
}

/// Counts a round's workers into its blocks; by how many more than there is room for.
int RowTrades::crowd(int which, const Round& round, int sign) {
  int crowding = 0;
  for (auto stretch = round.begin(); stretch != round.end(); ++stretch) {
    const FlatJob& job = problem_.job(stretch->job);
    const auto isSame = [&](const Stretch& other) {
      return problem_.job(other.job).block == job.block;
    };
    if (std::any_of(round.begin(), stretch, isSame)) continue;
    int& there = inBlock_[at(job.block * problem_.days() + days_.dayOf(which))];
    const int most = problem_.blockMost[at(job.block)];
    crowding -= std::max(0, there - most);
    there += sign * days_.workersAt(which, job);
    crowding += std::max(0, there - most);
  }
  return crowding;
}

int RowTrades::crowdChanges(bool back) {
  int crowding = 0;
  for (std::size_t change = 0; change < changed_; ++change) {
    const auto& [which, round, free] = changes_[change];
    const Round& before = rounds_[at(which)];
    crowding += crowd(which, back ? round : before, -1);
    crowding += crowd(which, back ? before : round, 1);
  }
  return crowding;
}

bool RowTrades::keepOrder() {
  for (const Step& step : steps_)
    order_.set(step.stretch, step.to == nowhere ? RowOrder::never : days_.dayOf(step.to));
  const bool kept = std::ranges::all_of(
      steps_, [this](const Step& step) { return order_.isKept(step.stretch); });
  if (kept) return true;
  for (const Step& step : steps_)
    order_.set(step.stretch,
               step.from == nowhere ? RowOrder::never : days_.dayOf(step.from));
  return false;
}

bool RowTrades::accept() {
  if (crowdChanges(false) > 0 || !keepOrder()) {
    crowdChanges(true);
    return false;
  }
  for (std::size_t change = 0; change < changed_; ++change) {
    auto& [which, round, free] = changes_[change];
    std::swap(rounds_[at(which)], round);
    free_[at(which)] = free;
  }
  for (const Step& step : steps_) {
    share(step, 1);
    if (step.to != nowhere)
      holders_[at(problem_.job(step.stretch.job).block)].push_back(step.to);
  }
  settleUndone();
  return true;
}

void RowTrades::settleUndone() {
  if (broughtIn_ >= 0) {
    Stretch& from = undone_[at(broughtIn_)];
    if (stillUndone_.rows > 0) {
      from = stillUndone_;
    } else {
      from = undone_.back();
      undone_.pop_back();
    }
  }
  for (const Step& step : steps_)
    if (step.to == nowhere) undone_.push_back(step.stretch);
}

void RowTrades::trade(int times, int heat, SearchNumbers& numbers) {
  if (mayChange_.empty()) return;
  const Loss most = usual_ * problem_.asked().move / 2 * heat / 1024 * heat / 1024;
  for (int time = 0; time < times; ++time) {
    changed_ = 0;
    steps_.clear();
    broughtIn_ = -1;
    if (!propose(numbers)) continue;
    const Loss allowed = most * numbers.below(1024) / 1024;
    if (worsening() <= allowed) accept();
  }
}

}  // namespace topwire
