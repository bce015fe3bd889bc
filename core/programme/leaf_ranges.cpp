#include "core/programme/leaf_ranges.h"

#include <charconv>

namespace topwire {

namespace {

constexpr int lowestLeaf = -9;

std::string_view trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(' ');
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(' ') - first + 1);
}

std::optional<LeafRange> rangeOf(std::optional<int> first, std::optional<int> last) {
  if (!first || !last) return std::nullopt;
  return LeafRange{*first, *last};
}

/// The hyphen of "1-3" is looked for behind a possible minus sign of the first leaf.
std::optional<LeafRange> readRange(std::string_view text) {
  text = trimmed(text);
  if (text.empty()) return std::nullopt;
  if (text.back() == '+')
    return rangeOf(readLeaf(text.substr(0, text.size() - 1)), LeafRange::open);
  if (const auto to = text.find(" to "); to != std::string_view::npos)
    return rangeOf(readLeaf(text.substr(0, to)), readLeaf(text.substr(to + 4)));
  if (const auto hyphen = text.find('-', 1); hyphen != std::string_view::npos)
    return rangeOf(readLeaf(text.substr(0, hyphen)), readLeaf(text.substr(hyphen + 1)));
  return rangeOf(readLeaf(text), readLeaf(text));
}

std::string writtenAs(const toml::node& node) {
  if (const auto number = node.value_exact<std::int64_t>())
    return std::to_string(*number);
  return node.value_exact<std::string>().value_or("");
}

void addRange(ProgrammeFields& fields,
              std::string_view key,
              const std::string& written,
              std::vector<LeafRange>& ranges) {
  const auto range = readRange(written);
  if (!range)
    fields.fault(key,
                 phrase("Programme",
                        "In %1, %2 holds “%3”, which names no leaves; write 2, \"1-3\", "
                        "\"-3 to -1\" or \"4+\"."),
                 {written});
  else if (range->first > range->last)
    fields.fault(key,
                 phrase("Programme",
                        "In %1, %2 holds “%3”, which runs backwards; put the lower leaf "
                        "first."),
                 {written});
  else
    ranges.push_back(*range);
}

}  // namespace

std::optional<int> readLeaf(std::string_view text) {
  text = trimmed(text);
  int leaf = 0;
  const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), leaf);
  if (fault != std::errc{} || end != text.data() + text.size()) return std::nullopt;
  if (leaf < lowestLeaf || leaf >= LeafRange::open) return std::nullopt;
  return leaf;
}

std::vector<LeafRange> readLeafRanges(ProgrammeFields& fields, std::string_view key) {
  const toml::node* node = fields.node(key);
  if (node == nullptr) return {};
  std::vector<LeafRange> ranges;
  const toml::array* list = node->as_array();
  if (list == nullptr) {
    addRange(fields, key, writtenAs(*node), ranges);
    return ranges;
  }
  for (const toml::node& entry : *list) addRange(fields, key, writtenAs(entry), ranges);
  if (list->empty()) addRange(fields, key, "", ranges);
  return ranges;
}

}  // namespace topwire
