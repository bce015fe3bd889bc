#pragma once

#include "core/crews/crew_problem.h"
#include "core/crews/labour_flow.h"

#include <cstdint>
#include <vector>

namespace topwire {

/// How jobs are ranked each day.
struct DispatchRule {
  enum class By { price, slack, dueDate };  ///< dueDate: earliest first, to compare with
  By by = By::price;
  double slackDays = 12;  ///< how fast urgency falls off with days in hand
  double mix = 0.1;       ///< of slack, in a ranking by price
};

/// Goes through the days in order and gives each gang what is worth most to be done
/// there and then. `flow` is needed for its prices alone, so an older one serves. `bias`
/// raises jobs in the ranking; empty: none.
CrewSchedule dispatch(const CrewProblem& problem,
                      const LabourFlow& flow,
                      const DispatchRule& rule,
                      const std::vector<double>& bias = {});

struct SearchLimits {
  int evaluations = 1000;  ///< not a time, so that any machine finds the same plan
  std::uint64_t seed = 1;
};

/// The best of several rules, improved by a random search within limits; none where
/// `evaluations` is 0.
CrewSchedule findPlan(const CrewProblem& problem,
                      const LabourFlow& flow,
                      const SearchLimits& limits);

}  // namespace topwire
