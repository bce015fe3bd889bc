#include "app/console/argument_readers.h"

namespace topwire {

namespace {

TemperatureUnit readTemperatureUnit(const std::string& typed) {
  if (typed == "C") return TemperatureUnit::celsius;
  if (typed == "F") return TemperatureUnit::fahrenheit;
  if (typed == "tenths") return TemperatureUnit::tenthsOfCelsius;
  throw notUsable(
      phrase("Console", "\"%1\" is no unit of temperature; it is C, F or tenths"), typed);
}

RainUnit readRainUnit(const std::string& typed) {
  if (typed == "mm") return RainUnit::millimetres;
  if (typed == "in") return RainUnit::inches;
  if (typed == "tenths") return RainUnit::tenthsOfMillimetres;
  throw notUsable(phrase("Console", "\"%1\" is no unit of rain; it is mm, in or tenths"),
                  typed);
}

/// A file of weather, and what the file itself leaves open.
CLI::Option* takeImport(CLI::App& command, Arguments& arguments) {
  auto* import = command
                     .add_option("--import",
                                 arguments.weatherFile,
                                 "Daily weather to bring in: GHCN-Daily (.dly or by "
                                 "station), daily summaries, or a CSV with a date, a "
                                 "minimum and a maximum")
                     ->type_name("PATH");
  command
      .add_option(
          "--station", arguments.station, "Which one, where the file holds several")
      ->type_name("ID")
      ->needs(import);
  command.add_flag("--forecast", arguments.forecast, "The file is a forecast as a whole")
      ->needs(import);
  return import;
}

/// One day's figures.
CLI::Option* takeFigures(CLI::App& command, Arguments& arguments) {
  auto* day = takeRead(command,
                       "--day",
                       arguments.day,
                       readDay,
                       "The day to type in (YYYY-MM-DD); a day to come is a forecast")
                  ->type_name("DAY");
  takeRead(command, "--min", arguments.minimum, readFigure, "Its minimum")
      ->type_name("N")
      ->needs(day);
  takeRead(command, "--max", arguments.maximum, readFigure, "Its maximum")
      ->type_name("N")
      ->needs(day);
  takeRead(command, "--rain", arguments.rain, readFigure, "Its rain")
      ->type_name("N")
      ->needs(day);
  return day;
}

}  // namespace

void takeWeather(CLI::App& command, Arguments& arguments) {
  auto* import = takeImport(command, arguments);
  auto* day = takeFigures(command, arguments);
  auto* past = command
                   .add_option("--past",
                               arguments.pastFile,
                               "Dates of stages in past seasons to bring in: a CSV with "
                               "a cultivar, a stage and a date")
                   ->type_name("PATH");
  import->excludes(day)->excludes(past);
  day->excludes(past);
  takeRead(command,
           "--unit",
           arguments.temperatureUnit,
           readTemperatureUnit,
           "Unit of the temperatures: C, F or tenths (of C); else what a file says, for "
           "a day typed in the orchard's unit")
      ->type_name("UNIT");
  takeRead(command,
           "--rain-unit",
           arguments.rainUnit,
           readRainUnit,
           "Unit of rain: mm, in or tenths (of mm); else what a file says, for a day "
           "typed in the orchard's unit")
      ->type_name("UNIT");
}

}  // namespace topwire
