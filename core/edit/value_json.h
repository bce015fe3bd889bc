#pragma once

#include "core/orchard/records.h"

#include <nlohmann/json.hpp>

#include <array>
#include <cstdint>
#include <stdexcept>
#include <string>
#include <vector>

namespace topwire {

/// What holds no such value. Thrown, beside what the library throws, between the files
/// that read changes, and caught there.
struct UnreadableJson : std::runtime_error {
  using std::runtime_error::runtime_error;
};

/// The values that records are made of: days as ISO 8601, lengths in whole micrometres,
/// rows and ids as text, what is chosen from a list as its word.
nlohmann::json toJson(Day day);
nlohmann::json toJson(Length length);
nlohmann::json toJson(const RowSet& rows);
nlohmann::json toJson(UnitSystem units);
nlohmann::json toJson(PlantingKind kind);
nlohmann::json toJson(Vigour vigour);
nlohmann::json toJson(Measure measure);
nlohmann::json toJson(const std::vector<std::int64_t>& numbers);
nlohmann::json toJson(const std::vector<Length>& lengths);
nlohmann::json toJson(const std::string& text);
nlohmann::json toJson(double number);
nlohmann::json toJson(const std::array<double, 12>& months);
nlohmann::json toJson(int number);
nlohmann::json toJson(const DaySpan& span);
nlohmann::json toJson(PinKind kind);
nlohmann::json toJson(const std::vector<std::string>& names);
nlohmann::json toJson(const std::vector<DaySpan>& spans);
nlohmann::json toJson(const std::array<bool, 7>& weekdays);
void read(const nlohmann::json& json, std::string& text);
void read(const nlohmann::json& json, int& number);
void read(const nlohmann::json& json, double& number);
void read(const nlohmann::json& json, Day& day);
void read(const nlohmann::json& json, Length& length);
void read(const nlohmann::json& json, RowSet& rows);
void read(const nlohmann::json& json, UnitSystem& units);
void read(const nlohmann::json& json, PlantingKind& kind);
void read(const nlohmann::json& json, Vigour& vigour);
void read(const nlohmann::json& json, Measure& measure);
void read(const nlohmann::json& json, std::vector<std::int64_t>& numbers);
void read(const nlohmann::json& json, std::vector<Length>& lengths);
void read(const nlohmann::json& json, DaySpan& span);
void read(const nlohmann::json& json, std::array<double, 12>& months);
void read(const nlohmann::json& json, PinKind& kind);
void read(const nlohmann::json& json, std::vector<std::string>& names);
void read(const nlohmann::json& json, std::vector<DaySpan>& spans);
void read(const nlohmann::json& json, std::array<bool, 7>& weekdays);

template <class Tag>
nlohmann::json toJson(RecordId<Tag> id) {
  return idText(id);
}

template <class Tag>
void read(const nlohmann::json& json, RecordId<Tag>& id) {
  const auto text = json.get<std::string>();
  const auto parsed = parseId<RecordId<Tag>>(text);
  if (!parsed) throw UnreadableJson{text};
  id = *parsed;
}

}  // namespace topwire
