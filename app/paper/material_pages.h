#pragma once

#include "app/paper/sheet_layout.h"
#include "app/words/say.h"
#include "core/material/material_list.h"

namespace topwire {

/// As core's, with the thousands of a count set apart: "3,400".
QString amountText(double amount,
                   MaterialUnit unit,
                   UnitSystem units,
                   const Voice& voice);

/// "Leader tie (Creek 1, Creek 2); first tie (Hill)".
QString workText(const Orchard& orchard, const MaterialLine& line, const Voice& voice);

/// What to pick up, with a box to tick off each line, and what it is for.
struct MaterialSheet {
  std::string orchard;
  QString span;  ///< "Week 15, 12–18 April 2027"
  MaterialList list;
  Day madeOn{};
};

/// One page at least; a list without lines says so. `orchard` names the places.
std::vector<Page> layOut(const MaterialSheet& sheet,
                         const Orchard& orchard,
                         PageFormat format,
                         const Voice& voice);

}  // namespace topwire
