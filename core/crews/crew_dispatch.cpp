#include "core/crews/crew_dispatch.h"

#include "core/crews/dispatcher.h"

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

/// A bias of 1 doubles a job's worth, one of -1 halves it.
int liftOf(double bias) {
  const double times = bias < 0 ? 1 / (1 - bias) : 1 + bias;
  return static_cast<int>(std::lround(std::min(times, 1000.0) * 1024));
}

}  // namespace

CrewSchedule dispatch(const CrewProblem& problem,
                      const LabourFlow& flow,
                      const DispatchRule& rule,
                      const std::vector<double>& bias) {
  const FlatProblem flat{problem};
  const JobValues values{flat, flow, rule};
  Dispatcher dispatcher{flat, values};
  std::vector<int> lifts;
  for (const double one : bias) lifts.push_back(liftOf(one));
  dispatcher.run(lifts);
  return dispatcher.schedule();
}

}  // namespace topwire
