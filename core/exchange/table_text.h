#pragma once

#include "core/base/phrase.h"

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

namespace topwire {

/// One value of a table for other programs; the first alternative is an empty cell. Days
/// are written as YYYY-MM-DD and figures with a point, whatever the reader's locale.
using Cell = std::variant<std::monostate, std::string, std::int64_t, Figure, Day>;

struct Table {
  std::vector<std::string> columns;
  std::vector<std::vector<Cell>> rows;  ///< each as long as `columns`
};

/// RFC 4180 with a header row, except that lines end in a single line feed: the tools
/// that read this on a command line take a carriage return for part of the last value.
std::string toCsv(const Table& table);
/// An array of objects keyed by column, in the columns' order; empty cells are null.
std::string toJson(const Table& table);
/// Columns padded to the widest value, counted in code points; numbers stand at the
/// right. For reading, not for parsing.
std::string toText(const Table& table);

}  // namespace topwire
