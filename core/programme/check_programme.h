#pragma once

#include "core/programme/operation_reader.h"

#include <vector>

namespace topwire {

/// Notes what is wrong between the operations of a programme and between the edges of one
/// window. Fields that could not be read are passed over.
void checkOperations(const std::vector<ReadOperation>& operations,
                     ProgrammeFaults& faults);

}  // namespace topwire
