#pragma once

#include "core/programme/programme.h"
#include "core/programme/toml_text.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace topwire {

/// One field of an operation as a programme's file writes it; nothing where the file
/// leaves it out because it is empty or says what goes without saying.
struct OperationField {
  std::string key;
  std::optional<TomlValue> value;
};

/// All fields in the order a file gives them. The order of two operations' fields is the
/// same, so that they can be held against each other one by one.
std::vector<OperationField> fieldsOf(const Operation& operation);

/// Where a field stands in that order; behind all others where it is none of them.
std::size_t rankOf(std::string_view field);

/// Whether a file would write both in the same way; `line` is not part of that.
bool sameOperation(const Operation& one, const Operation& other);

TomlValue tomlWords(const Words& words);
std::string tomlOf(const Anchor& anchor);

}  // namespace topwire
