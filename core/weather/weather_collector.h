#pragma once

#include "core/weather/degree_days.h"
#include "core/weather/station_choice.h"
#include "core/weather/weather_faults.h"
#include "core/weather/weather_file.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace topwire {

enum class Element { minimum, maximum, rain };
inline constexpr std::array allElements{
    Element::minimum, Element::maximum, Element::rain};

constexpr std::size_t indexOf(Element element) {
  return static_cast<std::size_t>(element);
}

/// Gathers what the readers of the formats find, value by value in any order, and settles
/// it at the end. Knows the days of five centuries from 1700 on, which is before anyone
/// measured.
class WeatherCollector {
public:
  WeatherCollector(std::string file, const WeatherReading& reading);

  bool takes(std::string_view stationId, std::string_view name = {}) {
    return stations_.takes(stationId, name);
  }

  static bool covers(Day day);

  /// A value as it stands in the file, neither flagged nor missing, of a day covered.
  void put(
      Day day, Element element, double value, WeatherSource source, std::size_t line);

  void dropFlagged(char flag) { ++report_.flagged[flag]; }

  void lineSeen() { ++linesSeen_; }

  template <class MakeSentence>
  void unreadableLine(std::size_t line, MakeSentence make) {
    ++report_.unreadableLines;
    faults_.add(line, make);
  }

  /// Of a single value, which is left out.
  template <class MakeSentence>
  void fault(std::size_t line, MakeSentence make) {
    faults_.add(line, make);
  }

  /// For what a format's reader knows of the whole file.
  WeatherReport& report() { return report_; }

  void temperaturesAre(TemperatureUnit unit, UnitOrigin origin);
  void rainIs(RainUnit unit, UnitOrigin origin);

  /// To be called once, last.
  Checked<WeatherFile> finish();

private:
  /// One day's values with the lines they stand in, 0 where there is none.
  struct Slot {
    std::array<double, 3> value{};
    std::array<std::uint32_t, 3> line{};
    bool forecast = false;
    bool repeated = false;

    bool has(Element element) const { return line[indexOf(element)] != 0; }

    bool empty() const { return line == std::array<std::uint32_t, 3>{}; }
  };

  static constexpr std::size_t chunkDays = 256;
  using Chunk = std::array<Slot, chunkDays>;

  Slot& slotOf(Day day);
  std::vector<DayExtremes> wholeDaysAsWritten() const;
  std::vector<double> rainAsWritten() const;
  void settleUnits();
  void settleDays();
  void settleDay(Day day, const Slot& slot);
  std::optional<double> temperature(const Slot& slot, Element element);
  std::optional<double> rain(const Slot& slot);
  void tellImpossible(std::size_t line, double written);
  void settlePeriod();
  void settleDoubt();
  std::optional<Problem> refusal() const;

  std::string file_;
  Day today_;
  StationChoice stations_;
  std::vector<std::unique_ptr<Chunk>> chunks_;
  FirstFaults faults_;
  WeatherReport report_;
  std::vector<DatedWeather> days_;
  std::size_t linesSeen_ = 0;
  int temperatures_ = 0;
  int impossibleTemperatures_ = 0;
  bool temperatureUnitKnown_ = false;
  bool rainUnitKnown_ = false;
  bool unitGuessUnsure_ = false;
};

}  // namespace topwire
