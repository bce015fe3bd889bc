#include "core/planning/task.h"

#include <algorithm>
#include <charconv>

namespace topwire {

namespace {

/// The text up to the next colon, taken off the front.
std::string_view takeField(std::string_view& text) {
  const auto colon = std::min(text.find(':'), text.size());
  const auto field = text.substr(0, colon);
  text.remove_prefix(std::min(colon + 1, text.size()));
  return field;
}

std::optional<int> wholeNumber(std::string_view text) {
  int value = 0;
  const auto [end, fault] =
      std::from_chars(text.data(), text.data() + text.size(), value);
  if (fault != std::errc{} || end != text.data() + text.size()) return std::nullopt;
  return value;
}

}  // namespace

const Task* Plan::find(const TaskKey& key) const {
  const auto found =
      std::ranges::find_if(tasks, [&key](const Task& task) { return task.key == key; });
  return found == tasks.end() ? nullptr : &*found;
}

std::string taskText(const Orchard& orchard, const TaskKey& key) {
  const auto planting = orchard.plantings.find(key.planting);
  const std::string code =
      planting == orchard.plantings.end() ? idText(key.planting) : planting->second.code;
  return code + ':' + key.operation + ':' + std::to_string(key.season.year) + ':'
         + std::to_string(key.pass);
}

std::optional<TaskKey> parseTask(const Orchard& orchard, std::string_view text) {
  const Planting* planting = plantingByCode(orchard, takeField(text));
  const std::string operation{takeField(text)};
  const auto season = wholeNumber(takeField(text));
  const auto pass = text.empty() ? 1 : wholeNumber(text);
  if (!planting || operation.empty() || !season || !pass) return std::nullopt;
  return TaskKey{planting->id, operation, Season{*season}, *pass};
}

}  // namespace topwire
