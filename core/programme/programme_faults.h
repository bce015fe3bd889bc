#pragma once

#include "core/base/result.h"

#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace topwire {

/// Everything found wrong with one programme file.
class ProgrammeFaults {
public:
  explicit ProgrammeFaults(std::string file) : file_(std::move(file)) {}

  void add(int line, Sentence sentence) {
    found_.emplace_back(line, std::move(sentence));
  }

  bool none() const { return found_.empty(); }

  /// By line, each placed at "file:line".
  Problems inOrder() const;

private:
  std::string file_;
  std::vector<std::pair<int, Sentence>> found_;
};

/// The one of `known` that a person most likely meant by `typed`, capitals aside; empty
/// where none is near.
std::string likeliestOf(std::span<const std::string> known, std::string_view typed);

std::string joined(std::span<const std::string> parts, std::string_view between = ", ");
std::string lowerCase(std::string_view text);

}  // namespace topwire
