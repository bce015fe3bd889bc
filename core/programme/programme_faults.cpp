#include "core/programme/programme_faults.h"

#include <algorithm>
#include <numeric>

namespace topwire {

namespace {

/// Letters to add, leave out or change to get from one to the other (Levenshtein).
std::size_t lettersApart(std::string_view one, std::string_view other) {
  std::vector<std::size_t> row(other.size() + 1);
  std::iota(row.begin(), row.end(), std::size_t{0});
  for (std::size_t i = 1; i <= one.size(); ++i) {
    std::size_t diagonal = std::exchange(row[0], i);
    for (std::size_t j = 1; j <= other.size(); ++j) {
      const std::size_t changed = diagonal + (one[i - 1] == other[j - 1] ? 0 : 1);
      diagonal = std::exchange(row[j], std::min({row[j] + 1, row[j - 1] + 1, changed}));
    }
  }
  return row.back();
}

}  // namespace

Problems ProgrammeFaults::inOrder() const {
  auto sorted = found_;
  std::ranges::stable_sort(sorted, {}, [](const auto& fault) { return fault.first; });
  Problems problems;
  for (auto& [line, sentence] : sorted)
    problems.push_back({std::move(sentence), file_ + ':' + std::to_string(line), {}});
  return problems;
}

std::string likeliestOf(std::span<const std::string> known, std::string_view typed) {
  const std::string wanted = lowerCase(typed);
  std::size_t nearest = std::max<std::size_t>(2, wanted.size() / 3) + 1;
  std::string likeliest;
  for (const std::string& name : known) {
    const std::size_t apart = lettersApart(wanted, lowerCase(name));
    if (apart >= nearest) continue;
    nearest = apart;
    likeliest = name;
  }
  return likeliest;
}

std::string joined(std::span<const std::string> parts, std::string_view between) {
  std::string text;
  for (const std::string& part : parts) {
    if (!text.empty()) text += between;
    text += part;
  }
  return text;
}

std::string lowerCase(std::string_view text) {
  std::string lower{text};
  for (char& c : lower)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return lower;
}

}  // namespace topwire
