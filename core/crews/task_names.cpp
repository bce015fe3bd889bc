#include "core/crews/task_names.h"

#include <algorithm>
#include <utility>

namespace topwire {

namespace {

struct Named {
  Words title;
  std::vector<std::string> blocks;
};

std::vector<Named> byTitle(const Orchard& orchard,
                           const Trade& trade,
                           const std::vector<TaskKey>& tasks) {
  std::vector<Named> named;
  for (const TaskKey& task : tasks) {
    const Words title = titleOfTask(orchard, trade, task);
    const std::string& block = blockOf(orchard, orchard.plantings.at(task.planting)).name;
    auto known = std::ranges::find(named, title, &Named::title);
    if (known == named.end()) known = named.insert(known, {title, {}});
    if (std::ranges::find(known->blocks, block) == known->blocks.end())
      known->blocks.push_back(block);
  }
  return named;
}

/// "Creek 1, Creek 2 and Quarry".
std::string listed(const std::vector<std::string>& names, const std::string& lastJoin) {
  std::string text;
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (i > 0) text += i + 1 == names.size() ? lastJoin : ", ";
    text += names[i];
  }
  return text;
}

void append(std::string& text, const std::string& between, const std::string& more) {
  text += (text.empty() ? "" : between) + more;
}

}  // namespace

Words titleOfTask(const Orchard& orchard, const Trade& trade, const TaskKey& task) {
  const auto mark = orchard.marks.find(task);
  if (mark != orchard.marks.end() && !mark->second.handTitle.empty())
    return {mark->second.handTitle, mark->second.handTitle};
  const Operation* operation = operationOf(orchard, trade.programmes, task);
  return operation == nullptr ? Words{task.operation, task.operation} : operation->name;
}

Words nameWithBlock(const Orchard& orchard, const Trade& trade, const TaskKey& task) {
  return namesOf(orchard, trade, {task}, 1);
}

Words namesOf(const Orchard& orchard,
              const Trade& trade,
              const std::vector<TaskKey>& tasks,
              int most) {
  const std::vector<Named> named = byTitle(orchard, trade, tasks);
  Words names;
  const auto shown = std::min(named.size(), static_cast<std::size_t>(most));
  for (std::size_t i = 0; i < shown; ++i) {
    append(names.en, "; ", named[i].title.en + ", " + listed(named[i].blocks, " and "));
    append(names.es, "; ", named[i].title.es + ", " + listed(named[i].blocks, " y "));
  }
  if (const std::size_t more = named.size() - shown; more > 0) {
    append(names.en, "; ", std::to_string(more) + " more");
    append(names.es, "; ", std::to_string(more) + " más");
  }
  return names;
}

}  // namespace topwire
