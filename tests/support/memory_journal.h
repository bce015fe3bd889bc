#pragma once

#include "core/edit/journal.h"

#include <utility>

namespace topwire::testing {

/// A journal in memory that can be told to refuse.
class MemoryJournal final : public Journal {
public:
  Done write(const JournalEntry& entry) override {
    if (refuses) return refuse(Sentence{phrase("Test", "The disk is full.")});
    entries.push_back(entry);
    return {};
  }

  Done writeTasks(const std::map<TaskKey, StoredTask>& newTasks) override {
    if (refuses) return refuse(Sentence{phrase("Test", "The disk is full.")});
    tasks = newTasks;
    return {};
  }

  Result<std::vector<JournalEntry>> recent(int count) const override {
    const auto wanted = static_cast<std::size_t>(count);
    const auto skipped = entries.size() > wanted ? entries.size() - wanted : 0;
    return std::vector<JournalEntry>{
        entries.begin() + static_cast<std::ptrdiff_t>(skipped), entries.end()};
  }

  bool refuses = false;
  std::vector<JournalEntry> entries;
  std::map<TaskKey, StoredTask> tasks;
};

}  // namespace topwire::testing
