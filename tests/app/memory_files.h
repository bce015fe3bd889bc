#pragma once

#include "core/edit/orchard_files.h"
#include "tests/support/memory_journal.h"

#include <map>
#include <memory>
#include <string>

namespace topwire::testing {

/// Orchard files that are kept in a map. One path may be held by "another window".
class MemoryFiles final : public OrchardFiles {
public:
  Result<OpenedOrchard> open(const std::string& path, Access access) override {
    const auto found = orchards.find(path);
    if (found == orchards.end())
      return refuse(Sentence{phrase("Test", "%1 is not an orchard file."), {path}});
    if (access == Access::write && path == heldElsewhere)
      return refuse(Sentence{phrase("Test", "%1 is open in another window."), {path}});
    OpenedOrchard opened = handOut(found->second);
    opened.readOnly = access == Access::look;
    return opened;
  }

  Result<OpenedOrchard> create(const std::string& path, const Orchard& orchard) override {
    if (orchards.contains(path))
      return refuse(Sentence{phrase("Test", "%1 stands already."), {path}});
    orchards[path] = orchard;
    return handOut(orchard);
  }

  Done copyTo(const std::string& from, const std::string& to) override {
    orchards[to] = orchards.at(from);
    return {};
  }

  std::map<std::string, Orchard> orchards;
  std::string heldElsewhere;
  /// Of the orchard handed out last; belongs to whoever opened it.
  MemoryJournal* journal = nullptr;

private:
  OpenedOrchard handOut(const Orchard& orchard) {
    auto made = std::make_unique<MemoryJournal>();
    journal = made.get();
    OpenedOrchard opened;
    opened.orchard = orchard;
    opened.journal = std::move(made);
    return opened;
  }
};

}  // namespace topwire::testing
