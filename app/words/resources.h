#pragma once

#include "core/orchard/trade_tables.h"
#include "core/planning/planner.h"

#include <optional>
#include <string>

namespace topwire {

/// What is built into the programs: the trade's tables and the programmes.
struct Shipped {
  TradeTables tables;
  Programmes programmes;
};

/// Reads them from the resources linked into the program; all faults found. They are
/// there in every program that links topwire_paper: CMake's qt_add_resources turns those
/// of a static library into object files that go along with it, so that nothing needs to
/// be started by hand.
Checked<Shipped> loadShipped();

/// A shipped programme as its file has it, for copying; nothing where none has that id.
std::optional<std::string> shippedProgrammeText(const std::string& id);

}  // namespace topwire
