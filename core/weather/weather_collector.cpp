#include "core/weather/weather_collector.h"

#include "core/base/contract.h"
#include "core/weather/weather_units.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace topwire {

namespace {

const Day firstCovered = dayOf(1700, 1, 1);
const Day lastCovered = dayOf(2199, 12, 31);

/// With more than one impossible temperature in twenty the unit is wrong, not the
/// thermometer.
constexpr int temperaturesToAnImpossible = 20;
constexpr int fewImpossible = 3;

}  // namespace

WeatherCollector::WeatherCollector(std::string file, const WeatherReading& reading)
    : file_(std::move(file)), today_(reading.today), stations_(reading.station) {
  const auto days = static_cast<std::size_t>(daysBetween(firstCovered, lastCovered)) + 1;
  chunks_.resize((days + chunkDays - 1) / chunkDays);
}

bool WeatherCollector::covers(Day day) {
  return firstCovered <= day && day <= lastCovered;
}

WeatherCollector::Slot& WeatherCollector::slotOf(Day day) {
  TOPWIRE_REQUIRE(covers(day));
  const auto index = static_cast<std::size_t>(daysBetween(firstCovered, day));
  auto& chunk = chunks_[index / chunkDays];
  if (!chunk) chunk = std::make_unique<Chunk>();
  return (*chunk)[index % chunkDays];
}

void WeatherCollector::put(
    Day day, Element element, double value, WeatherSource source, std::size_t line) {
  Slot& slot = slotOf(day);
  const bool forecast = source == WeatherSource::forecast;
  if (!slot.empty() && slot.forecast != forecast) {
    slot.repeated = true;
    if (forecast) return;
    slot = Slot{.repeated = true};
  }
  const std::size_t index = indexOf(element);
  slot.forecast = forecast;
  slot.repeated = slot.repeated || slot.has(element);
  slot.value[index] = value;
  slot.line[index] = static_cast<std::uint32_t>(
      std::min<std::size_t>(line, std::numeric_limits<std::uint32_t>::max()));
}

void WeatherCollector::temperaturesAre(TemperatureUnit unit, UnitOrigin origin) {
  report_.unit = unit;
  report_.unitOrigin = origin;
  temperatureUnitKnown_ = true;
}

void WeatherCollector::rainIs(RainUnit unit, UnitOrigin origin) {
  report_.rainUnit = unit;
  report_.rainUnitOrigin = origin;
  rainUnitKnown_ = true;
}

std::vector<DayExtremes> WeatherCollector::wholeDaysAsWritten() const {
  std::vector<DayExtremes> days;
  for (const auto& chunk : chunks_) {
    if (!chunk) continue;
    for (const Slot& slot : *chunk)
      if (slot.has(Element::minimum) && slot.has(Element::maximum))
        days.push_back({slot.value[indexOf(Element::minimum)],
                        slot.value[indexOf(Element::maximum)]});
  }
  return days;
}

std::vector<double> WeatherCollector::rainAsWritten() const {
  std::vector<double> amounts;
  for (const auto& chunk : chunks_) {
    if (!chunk) continue;
    for (const Slot& slot : *chunk) {
      const double amount = slot.value[indexOf(Element::rain)];
      if (slot.has(Element::rain) && !isMissingCode(amount)) amounts.push_back(amount);
    }
  }
  return amounts;
}

void WeatherCollector::settleUnits() {
  if (!temperatureUnitKnown_) {
    const UnitGuess guess = likeliestUnit(wholeDaysAsWritten());
    report_.unit = guess.unit;
    report_.unitOrigin = UnitOrigin::inferred;
    unitGuessUnsure_ = !guess.sure;
  }
  if (rainUnitKnown_) return;
  report_.rainUnit = likeliestRainUnit(rainAsWritten(), report_.unit);
  report_.rainUnitOrigin = UnitOrigin::inferred;
}

void WeatherCollector::tellImpossible(std::size_t line, double written) {
  ++report_.impossible;
  faults_.add(line, [written] {
    return Sentence{phrase("Weather file",
                           "The value %1 is none that an instrument shows; it is left "
                           "out."),
                    {Figure{written, 2}}};
  });
}

std::optional<double> WeatherCollector::temperature(const Slot& slot, Element element) {
  if (!slot.has(element)) return std::nullopt;
  const double written = slot.value[indexOf(element)];
  const double celsius = inCelsius(written, report_.unit);
  if (isPossibleTemperature(celsius)) {
    ++temperatures_;
    return celsius;
  }
  if (isMissingCode(written)) return std::nullopt;
  ++temperatures_;
  ++impossibleTemperatures_;
  tellImpossible(slot.line[indexOf(element)], written);
  return std::nullopt;
}

std::optional<double> WeatherCollector::rain(const Slot& slot) {
  if (!slot.has(Element::rain)) return std::nullopt;
  const double written = slot.value[indexOf(Element::rain)];
  const double millimetres = inMillimetres(written, report_.rainUnit);
  if (isPossibleRain(millimetres)) return millimetres;
  if (!isMissingCode(written)) tellImpossible(slot.line[indexOf(Element::rain)], written);
  return std::nullopt;
}

void WeatherCollector::settleDay(Day day, const Slot& slot) {
  WeatherDay weather{temperature(slot, Element::minimum),
                     temperature(slot, Element::maximum),
                     rain(slot),
                     slot.forecast ? WeatherSource::forecast : WeatherSource::measured};
  if (!weather.minimum && !weather.maximum && !weather.rain) return;
  if (weather.whole() && *weather.minimum > *weather.maximum) {
    std::swap(weather.minimum, weather.maximum);
    report_.swapped.push_back(day);
  }
  if (weather.source != WeatherSource::forecast && day > today_) {
    weather.source = WeatherSource::forecast;
    ++report_.takenAsForecast;
  }
  report_.forecastDays += weather.source == WeatherSource::forecast ? 1 : 0;
  report_.repeatedDays += slot.repeated ? 1 : 0;
  report_.hasRain = report_.hasRain || weather.rain;
  ++(weather.whole() ? report_.wholeDays : report_.partDays);
  days_.push_back({day, weather});
}

void WeatherCollector::settleDays() {
  Day day = firstCovered;
  for (auto& chunk : chunks_) {
    if (!chunk) {
      day += Days{chunkDays};
      continue;
    }
    for (const Slot& slot : *chunk) {
      if (!slot.empty()) settleDay(day, slot);
      day += Days{1};
    }
    chunk.reset();
  }
}

void WeatherCollector::settlePeriod() {
  std::optional<Day> last;
  for (const auto& [day, weather] : days_) {
    if (!weather.whole()) continue;
    const auto [coldest, warmest] = std::minmax(*weather.minimum, *weather.maximum);
    report_.coldest = last ? std::min(report_.coldest, coldest) : coldest;
    report_.warmest = last ? std::max(report_.warmest, warmest) : warmest;
    if (!last) report_.period.first = day;
    report_.period.last = day;
    if (last && daysBetween(*last, day) > 1) {
      const DaySpan gap{plusDays(*last, 1), plusDays(day, -1)};
      ++report_.gaps;
      if (!report_.longestGap || gap.length() > report_.longestGap->length())
        report_.longestGap = gap;
    }
    last = day;
  }
}

void WeatherCollector::settleDoubt() {
  if (report_.unitOrigin == UnitOrigin::format) return;
  std::vector<DayExtremes> days;
  for (const auto& [day, weather] : days_)
    if (weather.whole()) days.push_back({*weather.minimum, *weather.maximum});
  report_.doubt = doubtOf(std::move(days), report_.unit);
  if (!report_.doubt && unitGuessUnsure_)
    report_.doubt = Sentence{phrase(
        "Weather file",
        "These few days could be degrees Fahrenheit of a cool month as well as degrees "
        "Celsius of a warm one; look at them, and say the unit if it is the other.")};
}

std::optional<Problem> WeatherCollector::refusal() const {
  const auto because = [this](Sentence sentence) {
    return Problem{std::move(sentence), file_, {}};
  };
  if (report_.unreadableLines * 2 > linesSeen_)
    return because({phrase("Weather file",
                           "Of %1 lines %2 cannot be read, so nothing was taken from the "
                           "file."),
                    {static_cast<std::int64_t>(linesSeen_),
                     static_cast<std::int64_t>(report_.unreadableLines)}});
  if (impossibleTemperatures_ >= fewImpossible
      && impossibleTemperatures_ > temperatures_ / temperaturesToAnImpossible)
    return because({phrase("Weather file",
                           "Taken as %1, %2 of %3 temperatures are none that a "
                           "thermometer shows; the unit must be another."),
                    {nameOf(report_.unit), impossibleTemperatures_, temperatures_}});
  if (report_.wholeDays == 0)
    return because({phrase("Weather file",
                           "The file holds no day with both a minimum and a maximum "
                           "temperature.")});
  return std::nullopt;
}

Checked<WeatherFile> WeatherCollector::finish() {
  if (auto problem = stations_.problem(file_))
    return tl::unexpected{Problems{std::move(*problem)}};
  settleUnits();
  settleDays();
  report_.stationId = stations_.id();
  report_.stationName = stations_.name();
  report_.faults = faults_.placedIn(file_);
  report_.furtherFaults = faults_.further();
  if (auto problem = refusal()) {
    Problems problems{std::move(*problem)};
    problems.insert(problems.end(), report_.faults.begin(), report_.faults.end());
    return tl::unexpected{std::move(problems)};
  }
  settlePeriod();
  settleDoubt();
  return WeatherFile{std::move(days_), std::move(report_)};
}

}  // namespace topwire
