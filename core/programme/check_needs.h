#pragma once

#include "core/programme/operation_reader.h"

#include <vector>

namespace topwire {

/// Notes what is wrong with the work that operations wait for and with the conditions of
/// their visits, as far as several fields or operations have to be looked at together.
void checkNeeds(const std::vector<ReadOperation>& operations, ProgrammeFaults& faults);

}  // namespace topwire
