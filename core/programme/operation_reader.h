#pragma once

#include "core/programme/programme.h"
#include "core/programme/programme_fields.h"

#include <functional>
#include <map>
#include <string>

namespace topwire {

/// An operation as far as it could be read, with the lines of the fields that were: what
/// compares several operations looks only at those.
struct ReadOperation {
  Operation operation;
  Words owner;  ///< how faults call it
  std::map<std::string, int, std::less<>> lines;

  bool has(std::string_view field) const { return lines.contains(field); }
};

/// `number` names an operation that gives no id, counted from 1.
ReadOperation readOperation(const toml::table& table,
                            int number,
                            ProgrammeFaults& faults);

}  // namespace topwire
