#pragma once

#include "core/crews/crew_problem.h"
#include "core/crews/labour_flow.h"

#include <cstdint>
#include <vector>

namespace topwire {

/// How jobs are ranked each day.
struct DispatchRule {
  enum class By { price, dueDate };  ///< dueDate: earliest first, to compare with
  By by = By::price;
  double slackDays = 4;  ///< how fast nearness falls off with days in hand
  double mix = 0.1;      ///< of nearness, in a ranking by price
};

/// Goes through the days in order and gives each gang what is worth most to be done
/// there and then. `flow` is needed for its prices alone, so an older one serves.
CrewSchedule dispatch(const CrewProblem& problem,
                      const LabourFlow& flow,
                      const DispatchRule& rule);

struct SearchLimits {
  int evaluations = 500'000;  ///< not a time, so that any machine finds the same plan
  std::uint64_t seed = 1;
};

/// In proportion to its jobs, within what takes a tenth of a second and about a second.
SearchLimits searchLimits(const CrewProblem& problem);

/// The best of several rules, improved by trades of rows between the gangs' days within
/// limits; none where `evaluations` is 0.
CrewSchedule findPlan(const CrewProblem& problem,
                      const LabourFlow& flow,
                      const SearchLimits& limits);

}  // namespace topwire
