#pragma once

#include "core/base/result.h"

#include <optional>
#include <set>
#include <string>
#include <string_view>

namespace topwire {

/// Which of a file's stations is read: the one asked for, else the only one.
class StationChoice {
public:
  explicit StationChoice(std::optional<std::string> wanted)
      : wanted_(std::move(wanted)) {}

  /// Whether what stands under this station is wanted. `id` must outlive this.
  bool takes(std::string_view id, std::string_view name);

  const std::string& id() const { return id_; }

  const std::string& name() const { return name_; }

  /// Where the one asked for was not there, or several were and none was asked for.
  std::optional<Problem> problem(const std::string& file) const;

private:
  bool isWanted(std::string_view id, std::string_view name) const;
  void remember(std::string_view id);
  std::string listed() const;

  std::optional<std::string> wanted_;
  std::optional<std::string_view> last_;
  bool lastTaken_ = false;
  bool found_ = false;
  std::string id_;
  std::string name_;
  std::set<std::string, std::less<>> others_;
  bool furtherOthers_ = false;
};

}  // namespace topwire
