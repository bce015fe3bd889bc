#pragma once

#include "core/exchange/table_text.h"
#include "core/material/material_list.h"

namespace topwire {

/// Every column, for other programs: amounts in the item's own unit, tasks as the command
/// line names them. Names and order of the columns are relied on.
Table tableOf(const MaterialList& list, const Orchard& orchard, Language language);

}  // namespace topwire
