#pragma once

#include "app/console/output.h"
#include "core/calendar/iso_week.h"
#include "core/orchard/row_set.h"
#include "core/planning/progress.h"
#include "core/weather/weather_file.h"

#include <optional>
#include <string>
#include <vector>

// The library names it so.
namespace CLI {  // NOLINT(readability-identifier-naming)
class App;
}

namespace topwire {

/// Which deed on programmes is asked for; one of the first six is given.
struct ProgrammeArguments {
  std::string copy;
  std::string exported;
  std::string broughtIn;  ///< a file
  std::string use;
  std::string tried;  ///< a file
  std::string removed;
  std::string as;
  std::string name;
  std::string nameInSpanish;
  std::vector<std::string> plantings;
};

/// What is asked of crews, or told of them.
struct CrewArguments {
  std::string crew;
  int workers = 0;
  int workersMore = 0;
  int springLaterBy = 0;
  int percent = 0;
  std::string until;  ///< "2027-04-09 06:00"
  bool weeks = false;
  std::optional<int> evaluations;
};

/// What a person typed after the program's name, read and checked. Each command looks
/// only at what it has declared.
struct Arguments {
  std::string file;
  std::string task;
  std::string planting;
  std::string stage;
  std::string measure;
  std::vector<std::string> values;  ///< of sample trees, as typed
  std::string note;
  std::string target;       ///< a file to write
  std::string description;  ///< a file to read an orchard from
  std::string weatherFile;  ///< a file to read daily weather from
  std::string pastFile;     ///< a file to read past seasons' dates from
  std::string station;
  std::string block;
  std::string reason;
  std::string by;
  std::string paper = "a4";
  std::string drawnProgramme = "tall-spindle-apple";  ///< its id
  std::string folder;                                 ///< to write drawings into
  std::optional<RowSet> rows;                         ///< all of the task's where absent
  std::optional<TemperatureUnit> temperatureUnit;
  std::optional<RainUnit> rainUnit;
  std::optional<double> minimum;
  std::optional<double> maximum;
  std::optional<double> rain;
  bool forecast = false;
  bool remove = false;
  int percent = 100;
  int minutes = 0;
  int last = 50;
  Day today{};
  std::optional<int> leaf;
  std::optional<Day> day;
  std::optional<Day> from;
  std::optional<Day> to;
  std::optional<TaskState> state;
  IsoWeek week{};
  ProgrammeArguments programme;
  CrewArguments crews;
  std::optional<IsoWeek> materialWeek;
  std::optional<Season> season;
  bool accept = false;
  Format format = Format::text;
  Language language = Language::english;
};

/// Each adds one argument or option, with its help, to a command. The arguments must
/// outlive the parsing.
void takeFile(CLI::App& command, Arguments& arguments);
void takeTask(CLI::App& command, Arguments& arguments);
void takePlanting(CLI::App& command, Arguments& arguments);
void takeStage(CLI::App& command, Arguments& arguments);
void takeTarget(CLI::App& command, Arguments& arguments, const char* help);
void takeToday(CLI::App& command, Arguments& arguments);
void takeDay(CLI::App& command, Arguments& arguments);
void takeSeenDay(CLI::App& command, Arguments& arguments);
void takeDaySpan(CLI::App& command, Arguments& arguments);
void takeBlock(CLI::App& command, Arguments& arguments);
void takeState(CLI::App& command, Arguments& arguments);
void takeRows(CLI::App& command, Arguments& arguments);
void takeWork(CLI::App& command, Arguments& arguments);
void takeBy(CLI::App& command, Arguments& arguments, bool required);
void takeReason(CLI::App& command, Arguments& arguments, bool required);
void takeDescription(CLI::App& command, Arguments& arguments);
void takeLast(CLI::App& command, Arguments& arguments);
void takeSheet(CLI::App& command, Arguments& arguments);
/// A week, a season or a planting.
void takeMaterialSpan(CLI::App& command, Arguments& arguments);
void takeClosing(CLI::App& command, Arguments& arguments);
/// A file to bring in, or a day's figures.
void takeWeather(CLI::App& command, Arguments& arguments);
void takeProgramme(CLI::App& command, Arguments& arguments);
/// What is supposed of the days to come.
void takeSupposition(CLI::App& command, Arguments& arguments);
void takeCrew(CLI::App& command, Arguments& arguments, bool required);
void takeFormat(CLI::App& command, Arguments& arguments);
void takeLanguage(CLI::App& command, Arguments& arguments);

/// "set-aside", as options and tables write it.
std::string codeOf(TaskState state);
std::string codeOf(Vigour vigour);
std::string codeOf(PlantingKind kind);
std::string codeOf(StageKind kind);
std::string codeOf(WeatherSource source);

}  // namespace topwire
