#pragma once

#include "core/base/result.h"
#include "core/exchange/orchard_reader.h"
#include "core/planning/planner.h"

#include <string>
#include <string_view>

namespace topwire {

/// The task of the plan that `text` names; else a problem that tells the nearest one.
Result<Task> taskNamed(const Orchard& orchard, const Plan& plan, std::string_view text);

/// The described orchard with its ticks and pins performed and its tasks stored as
/// planned on `today`: what a new file holds. One that cannot be performed is told with
/// its line in `file`.
Checked<Orchard> settledOrchard(const DescribedOrchard& described,
                                const std::string& file,
                                const Trade& trade,
                                Day today,
                                IdSource& ids);

}  // namespace topwire
