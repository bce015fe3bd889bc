#include "core/exchange/table_text.h"

#include "core/base/contract.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstddef>

namespace topwire {

namespace {

template <class... Functions>
struct Overloaded : Functions... {
  using Functions::operator()...;
};
template <class... Functions>
Overloaded(Functions...) -> Overloaded<Functions...>;

std::string plainText(const Cell& cell) {
  return std::visit(Overloaded{[](std::monostate) { return std::string{}; },
                               [](const std::string& text) { return text; },
                               [](std::int64_t number) { return std::to_string(number); },
                               [](Figure figure) { return inEnglish(Value{figure}); },
                               [](Day day) { return isoText(day); }},
                    cell);
}

std::string csvField(const std::string& text) {
  if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
  std::string quoted = "\"";
  for (const char c : text) {
    if (c == '"') quoted += '"';
    quoted += c;
  }
  return quoted + '"';
}

std::string csvLine(const std::vector<std::string>& fields) {
  std::string line;
  for (std::size_t i = 0; i < fields.size(); ++i) {
    if (i > 0) line += ',';
    line += csvField(fields[i]);
  }
  return line + '\n';
}

std::vector<std::string> plainRow(const Table& table, const std::vector<Cell>& row) {
  TOPWIRE_REQUIRE(row.size() == table.columns.size());
  std::vector<std::string> texts;
  std::ranges::transform(row, std::back_inserter(texts), plainText);
  return texts;
}

nlohmann::ordered_json jsonValue(const Cell& cell) {
  if (std::holds_alternative<std::monostate>(cell)) return nullptr;
  if (const auto* number = std::get_if<std::int64_t>(&cell)) return *number;
  // Read back from its decimals, so that 0.1 + 0.2 is written as 0.3.
  if (std::holds_alternative<Figure>(cell))
    return nlohmann::ordered_json::parse(plainText(cell));
  return plainText(cell);
}

std::size_t widthOf(const std::string& utf8) {
  return static_cast<std::size_t>(std::ranges::count_if(
      utf8, [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

bool standsRight(const Table& table, std::size_t column) {
  bool numbers = false;
  for (const auto& row : table.rows) {
    const Cell& cell = row[column];
    if (std::holds_alternative<std::monostate>(cell)) continue;
    numbers = std::holds_alternative<std::int64_t>(cell)
              || std::holds_alternative<Figure>(cell);
    if (!numbers) return false;
  }
  return numbers;
}

std::string padded(const std::string& text, std::size_t width, bool right) {
  const std::string spaces(width - widthOf(text), ' ');
  return right ? spaces + text : text + spaces;
}

struct Column {
  std::size_t width = 0;
  bool right = false;
};

std::vector<Column> columnsFor(const Table& table,
                               const std::vector<std::vector<std::string>>& lines) {
  std::vector<Column> columns(table.columns.size());
  for (std::size_t i = 0; i < columns.size(); ++i) {
    columns[i].right = standsRight(table, i);
    for (const auto& line : lines)
      columns[i].width = std::max(columns[i].width, widthOf(line[i]));
  }
  return columns;
}

std::string textLine(const std::vector<Column>& columns,
                     const std::vector<std::string>& fields) {
  std::string line;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    if (i > 0) line += "  ";
    line += padded(fields[i], columns[i].width, columns[i].right);
  }
  line.erase(line.find_last_not_of(' ') + 1);
  return line + '\n';
}

}  // namespace

std::string toCsv(const Table& table) {
  std::string text = csvLine(table.columns);
  for (const auto& row : table.rows) text += csvLine(plainRow(table, row));
  return text;
}

std::string toJson(const Table& table) {
  auto all = nlohmann::ordered_json::array();
  for (const auto& row : table.rows) {
    TOPWIRE_REQUIRE(row.size() == table.columns.size());
    auto object = nlohmann::ordered_json::object();
    for (std::size_t i = 0; i < row.size(); ++i)
      object[table.columns[i]] = jsonValue(row[i]);
    all.push_back(std::move(object));
  }
  using Json = nlohmann::ordered_json;
  return all.dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
}

std::string toText(const Table& table) {
  std::vector<std::vector<std::string>> lines{table.columns};
  for (const auto& row : table.rows) lines.push_back(plainRow(table, row));
  const auto columns = columnsFor(table, lines);
  std::string text;
  for (const auto& line : lines) text += textLine(columns, line);
  return text;
}

}  // namespace topwire
