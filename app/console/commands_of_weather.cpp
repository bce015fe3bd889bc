#include "app/console/on_file.h"
#include "core/edit/weather_deeds.h"
#include "core/exchange/past_stages_reader.h"
#include "core/weather/read_weather.h"
#include "core/weather/weather_units.h"

#include <CLI/CLI.hpp>

#include <filesystem>
#include <utility>

namespace topwire {

namespace {

void declareWeather(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeWeather(command, arguments);
  takeBy(command, arguments, false);
  takeToday(command, arguments);
  takeFormat(command, arguments);
}

std::string nameAlone(const std::string& path) {
  return std::filesystem::path{path}.filename().string();
}

WeatherReading readingAsTold(const Arguments& arguments) {
  WeatherReading reading;
  reading.today = arguments.today;
  if (arguments.forecast) reading.source = WeatherSource::forecast;
  reading.temperatureUnit = arguments.temperatureUnit;
  reading.rainUnit = arguments.rainUnit;
  if (!arguments.station.empty()) reading.station = arguments.station;
  return reading;
}

/// What was read and what was left out, a line each.
std::string linesOf(const WeatherReport& report, Language language) {
  std::string lines;
  for (const Sentence& sentence : sentencesOf(report))
    lines += spoken(sentence, language) + '\n';
  for (const Problem& fault : report.faults)
    lines += fault.place + ": " + spoken(fault.sentence, language) + '\n';
  return lines;
}

/// The file is read before the orchard is opened, so that one that cannot be keeps
/// nobody from writing.
Answer runImport(Surroundings& surroundings, const Arguments& arguments) {
  const auto text = textOfFile(arguments.weatherFile);
  if (!text) return problemsOf(text);
  const std::string name = nameAlone(arguments.weatherFile);
  const auto read = readWeather(*text, name, readingAsTold(arguments));
  if (!read) return tl::unexpected{read.error()};
  const WeatherFile& weather = read->value();
  return changeFile(surroundings,
                    arguments,
                    [&](Workbench& bench) -> Checked<Sentence> {
                      return perform(bench,
                                     importWeather(bench.orchard(), weather.days, name));
                    })
      .map([&](Outcome&& outcome) {
        outcome.text = linesOf(weather.report, arguments.language) + outcome.text;
        return std::move(outcome);
      });
}

Answer runPast(Surroundings& surroundings, const Arguments& arguments) {
  const auto text = textOfFile(arguments.pastFile);
  if (!text) return problemsOf(text);
  const std::string name = nameAlone(arguments.pastFile);
  const auto dates = readPastStages(*text, name, surroundings.ids);
  if (!dates) return tl::unexpected{dates.error()};
  return changeFile(surroundings, arguments, [&](Workbench& bench) -> Checked<Sentence> {
    return perform(
        bench,
        importPastStages(
            bench.orchard(), surroundings.trade.tables, *dates, name, arguments.today));
  });
}

/// The day's figures, typed in the orchard's units unless others are named; a forecast
/// where the day is to come.
DatedWeather typedDay(const Arguments& arguments, UnitSystem units) {
  const bool metric = units == UnitSystem::metric;
  const auto unit = arguments.temperatureUnit.value_or(
      metric ? TemperatureUnit::celsius : TemperatureUnit::fahrenheit);
  const auto rainUnit =
      arguments.rainUnit.value_or(metric ? RainUnit::millimetres : RainUnit::inches);
  DatedWeather typed{*arguments.day, {}};
  typed.weather.source =
      typed.day > arguments.today ? WeatherSource::forecast : WeatherSource::typed;
  if (arguments.minimum) typed.weather.minimum = inCelsius(*arguments.minimum, unit);
  if (arguments.maximum) typed.weather.maximum = inCelsius(*arguments.maximum, unit);
  if (arguments.rain) typed.weather.rain = inMillimetres(*arguments.rain, rainUnit);
  return typed;
}

Answer runTyped(Surroundings& surroundings, const Arguments& arguments) {
  return changeFile(surroundings, arguments, [&](Workbench& bench) -> Checked<Sentence> {
    const Orchard& orchard = bench.orchard();
    return perform(
        bench,
        typeWeather(
            orchard, typedDay(arguments, orchard.settings.units), arguments.today));
  });
}

Cell cellOf(const std::optional<double>& figure) {
  return figure ? Cell{Figure{*figure, 2}} : Cell{};
}

/// This season's days as far as anything is known of them, the forecast's too.
Table weatherTable(const Orchard& orchard, Day today) {
  Table table{{"day", "minimum", "maximum", "rain", "source"}, {}};
  const Hemisphere hemisphere = orchard.settings.hemisphere();
  const Season season = seasonOf(today, hemisphere);
  const Day last = lastDayOf(season, hemisphere);
  for (Day day = firstDayOf(season, hemisphere); day <= last; day = plusDays(day, 1))
    if (const WeatherDay* weather = weatherOn(orchard, day))
      table.rows.push_back({day,
                            cellOf(weather->minimum),
                            cellOf(weather->maximum),
                            cellOf(weather->rain),
                            codeOf(weather->source)});
  return table;
}

Answer runList(Surroundings& surroundings, const Arguments& arguments) {
  return askFile(surroundings, arguments, [&](const OpenedOrchard& opened) -> Answer {
    const Table table = weatherTable(opened.orchard, arguments.today);
    return Outcome{tableIn(arguments.format, table), {}};
  });
}

Answer runWeather(Surroundings& surroundings, const Arguments& arguments) {
  if (!arguments.weatherFile.empty()) return runImport(surroundings, arguments);
  if (!arguments.pastFile.empty()) return runPast(surroundings, arguments);
  if (arguments.day) return runTyped(surroundings, arguments);
  return runList(surroundings, arguments);
}

}  // namespace

std::span<const Command> commandsOfWeather() {
  static constexpr Command commands[] = {
      {"weather",
       "Bring in daily weather or past seasons' dates from a file, type a day in, or "
       "list "
       "this season's days in degrees Celsius and millimetres",
       "weather alder.topwire --import demo/alder-bend-weather.csv --today 2027-04-06",
       declareWeather,
       runWeather},
  };
  return commands;
}

}  // namespace topwire
