#include "core/weather/weather_faults.h"

#include <algorithm>

namespace topwire {

void FirstFaults::insert(std::size_t line, Sentence sentence) {
  const auto after = std::ranges::upper_bound(
      found_, line, {}, [](const auto& fault) { return fault.first; });
  found_.emplace(after, line, std::move(sentence));
  if (found_.size() <= kept) return;
  found_.pop_back();
  ++further_;
}

Problems FirstFaults::placedIn(const std::string& file) const {
  Problems problems;
  problems.reserve(found_.size());
  for (const auto& [line, sentence] : found_)
    problems.push_back({sentence, file + ':' + std::to_string(line), {}});
  return problems;
}

}  // namespace topwire
