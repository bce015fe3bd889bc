#include "core/crews/crew_dispatch.h"

#include "core/crews/dispatcher.h"

namespace topwire {

CrewSchedule dispatch(const CrewProblem& problem,
                      const LabourFlow& flow,
                      const DispatchRule& rule) {
  const FlatProblem flat{problem};
  const JobValues values{flat, flow, rule};
  Dispatcher dispatcher{flat, values};
  dispatcher.run();
  return dispatcher.schedule();
}

}  // namespace topwire
