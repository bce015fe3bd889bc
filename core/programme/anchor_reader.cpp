#include "core/programme/anchor_reader.h"

#include "core/phenology/stage.h"

#include <algorithm>
#include <array>

namespace topwire {

namespace {

const std::vector<std::string>& monthNames() {
  static const std::vector<std::string> names{"january",
                                              "february",
                                              "march",
                                              "april",
                                              "may",
                                              "june",
                                              "july",
                                              "august",
                                              "september",
                                              "october",
                                              "november",
                                              "december"};
  return names;
}

constexpr std::array longestMonth{31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

std::vector<std::string> stageNames() {
  std::vector<std::string> names;
  for (const Stage& stage : allStages()) names.push_back(stage.name.en);
  return names;
}

std::optional<AnchorPoint> stageByNumber(ProgrammeFields& fields) {
  const auto code = fields.whole("stage", 0, 99);
  if (!code) return std::nullopt;
  if (stageByCode(*code) != nullptr) return OnStage{*code};
  fields.fault("stage",
               phrase("Programme",
                      "In %1, %2 is %3, a code Topwire does not date; use one of: %4."),
               {std::int64_t{*code}, joined(stageNames())});
  return std::nullopt;
}

std::optional<AnchorPoint> readStage(ProgrammeFields& fields) {
  if (fields.node("stage")->is_integer()) return stageByNumber(fields);
  const auto name = fields.text("stage");
  if (!name) return std::nullopt;
  for (const Stage& stage : allStages())
    if (lowerCase(stage.name.en) == lowerCase(*name)) return OnStage{stage.bbch};
  fields.notAmong("stage", *name, stageNames());
  return std::nullopt;
}

std::optional<AnchorPoint> readPlanting(ProgrammeFields& fields) {
  if (fields.node("planting")->value_exact<bool>() == true) return OnPlanting{};
  fields.fault("planting",
               phrase("Programme",
                      "In %1, %2 can only be true; to hang the day on something else, "
                      "name a stage, a month or another operation."));
  return std::nullopt;
}

std::optional<int> readDayOf(ProgrammeFields& fields, unsigned month) {
  if (fields.has("day")) return fields.whole("day", 1, longestMonth.at(month - 1));
  fields.missing("day", "day = 1");
  return std::nullopt;
}

std::optional<AnchorPoint> readMonth(ProgrammeFields& fields) {
  const auto name = fields.text("month");
  const bool seasonWritten = fields.node("season") != nullptr;
  const auto season =
      seasonWritten ? fields.whole("season", -5, 5) : std::optional<int>{0};
  if (!name) return std::nullopt;
  const auto found = std::ranges::find(monthNames(), lowerCase(*name));
  if (found == monthNames().end()) {
    fields.node("day");
    fields.notAmong("month", *name, monthNames());
    return std::nullopt;
  }
  const auto month = static_cast<unsigned>(found - monthNames().begin()) + 1;
  const auto day = readDayOf(fields, month);
  if (!day || !season) return std::nullopt;
  return OnMonth{month, static_cast<unsigned>(*day), *season};
}

std::optional<AnchorPoint> readAfter(ProgrammeFields& fields) {
  auto operation = fields.text("after");
  if (!operation) return std::nullopt;
  return OnCompletion{std::move(*operation)};
}

/// Asks for the field, so that it counts as known, and tells whether it is there.
bool named(ProgrammeFields& fields, std::string_view point) {
  return fields.node(point) != nullptr;
}

std::optional<AnchorPoint> readPoint(ProgrammeFields& fields) {
  std::vector<std::string> points;
  for (const std::string point : {"stage", "planting", "month", "after"})
    if (named(fields, point)) points.push_back(point);
  if (points.size() != 1) {
    const std::string all = points.empty() ? "-" : joined(points, " + ");
    fields.faults().add(
        fields.line(),
        Sentence{phrase("Programme",
                        "In %1, %2 has to hang on one of stage, planting, month or "
                        "after, and names %3; keep or add one."),
                 {fields.owner(), fields.path(), all}});
    return std::nullopt;
  }
  if (points.front() == "stage") return readStage(fields);
  if (points.front() == "planting") return readPlanting(fields);
  if (points.front() == "month") return readMonth(fields);
  return readAfter(fields);
}

}  // namespace

std::optional<Anchor> readAnchor(ProgrammeFields& fields) {
  const auto months = fields.whole("months", -60, 60);
  const auto weeks = fields.whole("weeks", -260, 260);
  const auto days = fields.whole("days", -1000, 1000);
  const auto point = readPoint(fields);
  if (!point) return std::nullopt;
  return Anchor{*point, months.value_or(0), weeks.value_or(0) * 7 + days.value_or(0)};
}

}  // namespace topwire
