#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <functional>
#include <string>
#include <utility>
#include <vector>

namespace topwire {

/// The first faults of a text by line, and how many more there are: a file with a million
/// bad lines is told in twenty.
class FirstFaults {
public:
  static constexpr std::size_t kept = 20;

  /// `make` is only asked for its sentence where the fault is among the first.
  template <class MakeSentence>
  void add(std::size_t line, MakeSentence make) {
    if (found_.size() == kept && line >= found_.back().first) {
      ++further_;
      return;
    }
    insert(line, make());
  }

  bool none() const { return found_.empty(); }

  int further() const { return further_; }

  /// Each placed at "file:line".
  Problems placedIn(const std::string& file) const;

private:
  void insert(std::size_t line, Sentence sentence);

  std::vector<std::pair<std::size_t, Sentence>> found_;
  int further_ = 0;
};

}  // namespace topwire
