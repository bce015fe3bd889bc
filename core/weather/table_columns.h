#pragma once

#include "core/base/result.h"
#include "core/weather/weather_collector.h"
#include "core/weather/weather_headings.h"

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace topwire {

/// Where a table's columns stand and what its headings say of them. Of two columns of a
/// kind the first counts.
struct TableColumns {
  struct Values {
    std::optional<std::size_t> column;
    std::optional<std::size_t> attributes;
    std::string heading;
  };

  char separator = ',';
  std::size_t headerLine = 0;
  std::string dateHeading;
  std::optional<std::size_t> date;
  std::array<Values, 3> values;  ///< by Element
  std::optional<std::size_t> forecast;
  std::optional<std::size_t> station;
  std::optional<std::size_t> name;
  std::vector<TemperatureUnit> temperatureUnits;  ///< as the headings name them
  std::optional<RainUnit> rainUnit;

  const Values& of(Element element) const { return values[indexOf(element)]; }

  bool complete() const {
    return date && of(Element::minimum).column && of(Element::maximum).column;
  }

  bool isDailySummaries() const;
};

/// The columns of the first line, among the text's first ones, that has headings for a
/// date, a minimum and a maximum. The problem, placed in `file`, says what is missing.
Result<TableColumns> findColumns(std::string_view text, const std::string& file);

}  // namespace topwire
