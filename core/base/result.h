#pragma once

#include "core/base/phrase.h"

#include <tl/expected.hpp>

#include <string>
#include <utility>
#include <vector>

namespace topwire {

/// What went wrong in the world: bad input, a refused write, a missing file. The sentence
/// says what happened, where, and what to do; `place` points at file, line or field for
/// code that wants to show it there; `detail` is for the log.
struct Problem {
  Sentence sentence;
  std::string place;  ///< "orchard.toml:12", "rows", empty where there is none
  std::string detail;

  friend bool operator==(const Problem&, const Problem&) = default;
};

/// Several problems at once: a reader reports all it finds, not just the first.
using Problems = std::vector<Problem>;

template <class T>
using Result = tl::expected<T, Problem>;
template <class T>
using Checked = tl::expected<T, Problems>;
using Done = Result<void>;

inline tl::unexpected<Problem> refuse(Sentence sentence, std::string place = {}) {
  return tl::unexpected<Problem>{Problem{std::move(sentence), std::move(place), {}}};
}

inline std::string inEnglish(const Problem& problem) {
  return problem.place.empty() ? inEnglish(problem.sentence)
                               : problem.place + ": " + inEnglish(problem.sentence);
}

}  // namespace topwire
