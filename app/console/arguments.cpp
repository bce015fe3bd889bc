#include "app/console/argument_readers.h"
#include "core/exchange/delimited_text.h"

#include <array>
#include <utility>

namespace topwire {

namespace {

RowSet readRows(const std::string& typed) {
  const ParsedRows read = parseRows(typed);
  if (!read.fault && !read.rows.empty()) return read.rows;
  throw notUsable(
      phrase("Console", "\"%1\" is not rows, each named once, written like 1-4,7"),
      typed);
}

IsoWeek readWeek(const std::string& typed) {
  if (const auto week = parseIsoWeek(typed)) return *week;
  throw notUsable(phrase("Console", "\"%1\" is no ISO week, written like 2027-W14"),
                  typed);
}

Season readSeason(const std::string& typed) {
  const auto year = parseNumber(typed);
  if (year && typed.size() == 4 && *year >= 1900 && *year <= 2200)
    return Season{static_cast<int>(*year)};
  throw notUsable(
      phrase("Console", "\"%1\" is no season, written as the year it begins in: 2027"),
      typed);
}

constexpr std::array states{TaskState::waiting,
                            TaskState::open,
                            TaskState::closing,
                            TaskState::late,
                            TaskState::lapsed,
                            TaskState::done,
                            TaskState::setAside};

TaskState readState(const std::string& typed) {
  for (const TaskState state : states)
    if (codeOf(state) == typed) return state;
  throw notUsable(phrase("Console",
                         "\"%1\" is no state; it is waiting, open, closing, late, "
                         "lapsed, done or set-aside"),
                  typed);
}

}  // namespace

CLI::ValidationError notUsable(Phrase why, const std::string& typed) {
  return CLI::ValidationError{inEnglish(Sentence{why, {typed}})};
}

Day readDay(const std::string& typed) {
  if (const auto day = parseDay(typed)) return *day;
  throw notUsable(
      phrase("Console", "\"%1\" is no day of the calendar, written like 2027-04-06"),
      typed);
}

double readFigure(const std::string& typed) {
  if (const auto figure = parseNumber(typed)) return *figure;
  throw notUsable(phrase("Console", "\"%1\" is no number, written like -3.5"), typed);
}

void takeFile(CLI::App& command, Arguments& arguments) {
  command.add_option("FILE", arguments.file, "The orchard file")
      ->required()
      ->type_name("");
}

void takeTask(CLI::App& command, Arguments& arguments) {
  command
      .add_option("TASK",
                  arguments.task,
                  "A task as `tasks` prints it: planting:operation:season:pass")
      ->required()
      ->type_name("");
}

void takePlanting(CLI::App& command, Arguments& arguments) {
  command
      .add_option(
          "PLANTING", arguments.planting, "A planting's code, such as creek-1-gala")
      ->required()
      ->type_name("");
}

void takeStage(CLI::App& command, Arguments& arguments) {
  command
      .add_option("BBCH",
                  arguments.stage,
                  "The stage's BBCH code (53) or its English name (\"green tip\")")
      ->required()
      ->type_name("");
}

void takeTarget(CLI::App& command, Arguments& arguments, const char* help) {
  command.add_option("TO", arguments.target, help)->required()->type_name("");
}

void takeToday(CLI::App& command, Arguments& arguments) {
  takeRead(command,
           "--today",
           arguments.today,
           readDay,
           "The day taken for today (YYYY-MM-DD); else the system's")
      ->type_name("DAY");
}

void takeDay(CLI::App& command, Arguments& arguments) {
  takeRead(command, "--day", arguments.day, readDay, "The day it was done; else today")
      ->type_name("DAY");
}

void takeSeenDay(CLI::App& command, Arguments& arguments) {
  takeRead(command, "DAY", arguments.day, readDay, "The day it was seen (YYYY-MM-DD)")
      ->required()
      ->type_name("");
}

void takeDaySpan(CLI::App& command, Arguments& arguments) {
  auto* from = takeRead(command,
                        "--from",
                        arguments.from,
                        readDay,
                        "Only tasks with a window in the days from this one")
                   ->type_name("DAY");
  auto* to =
      takeRead(command, "--to", arguments.to, readDay, "... to this one, inclusive")
          ->type_name("DAY");
  from->needs(to);
  to->needs(from);
}

void takeBlock(CLI::App& command, Arguments& arguments) {
  command.add_option("--block", arguments.block, "Only this block, by its name")
      ->type_name("BLOCK");
}

void takeState(CLI::App& command, Arguments& arguments) {
  takeRead(command,
           "--state",
           arguments.state,
           readState,
           "Only tasks that are waiting, open, closing, late, lapsed, done or set-aside")
      ->type_name("STATE");
}

void takeRows(CLI::App& command, Arguments& arguments) {
  const auto read = [](const std::string& typed) {
    return typed == "all" ? std::nullopt : std::optional{readRows(typed)};
  };
  takeRead(command,
           "--rows",
           arguments.rows,
           read,
           "The rows, such as 1-4,7; \"all\" for all of the task's")
      ->required()
      ->type_name("ROWS");
}

void takeWork(CLI::App& command, Arguments& arguments) {
  command
      .add_option("--minutes",
                  arguments.minutes,
                  "Worker-minutes it took: two workers for an hour are 120")
      ->check(CLI::Range(0, 999'999))
      ->type_name("N");
  command
      .add_option("--percent", arguments.percent, "How much of each row is done by now")
      ->check(CLI::Range(1, 100))
      ->capture_default_str()
      ->type_name("N");
}

void takeBy(CLI::App& command, Arguments& arguments, bool required) {
  command.add_option("--by", arguments.by, "Who did it, saw it or says so")
      ->required(required)
      ->type_name("NAME");
}

void takeReason(CLI::App& command, Arguments& arguments, bool required) {
  command.add_option("--reason", arguments.reason, "Why, for whoever looks next")
      ->required(required)
      ->type_name("TEXT");
}

void takeDescription(CLI::App& command, Arguments& arguments) {
  command.add_option("--from", arguments.description, "The orchard described in TOML")
      ->required()
      ->type_name("TOML");
}

void takeLast(CLI::App& command, Arguments& arguments) {
  command.add_option("--last", arguments.last, "How many of the newest entries")
      ->check(CLI::Range(1, 1'000'000))
      ->capture_default_str()
      ->type_name("N");
}

void takeSheet(CLI::App& command, Arguments& arguments) {
  takeRead(command,
           "--week",
           arguments.week,
           readWeek,
           "The week of ISO 8601, such as 2027-W14")
      ->required()
      ->type_name("WEEK");
  command.add_option("--pdf", arguments.target, "The PDF to write")
      ->required()
      ->type_name("OUT");
  command.add_option("--paper", arguments.paper, "a4 or letter")
      ->check(CLI::IsMember({"a4", "letter"}))
      ->capture_default_str()
      ->type_name("PAPER");
}

void takeMaterialSpan(CLI::App& command, Arguments& arguments) {
  auto* week = takeRead(command,
                        "--week",
                        arguments.materialWeek,
                        readWeek,
                        "For the work due in this week of ISO 8601, such as 2027-W14")
                   ->type_name("WEEK");
  auto* season = takeRead(command,
                          "--season",
                          arguments.season,
                          readSeason,
                          "For the season that begins in this year; else today's")
                     ->type_name("YEAR");
  auto* planting =
      command
          .add_option("--planting",
                      arguments.planting,
                      "For a new planting, by its code: up to the end of its first leaf")
          ->type_name("CODE");
  week->excludes(season)->excludes(planting);
  season->excludes(planting);
}

void takeClosing(CLI::App& command, Arguments& arguments) {
  takeRead(command,
           "--season",
           arguments.season,
           readSeason,
           "The season that begins in this year; else the one there is to close")
      ->type_name("YEAR");
  command.add_flag(
      "--accept", arguments.accept, "Close the season with everything as it is proposed");
}

void takeProgramme(CLI::App& command, Arguments& arguments) {
  ProgrammeArguments& wanted = arguments.programme;
  CLI::Option_group* deed = command.add_option_group("Deeds", "One of these");
  deed->require_option(1);
  auto* copy = deed->add_option(
      "--copy", wanted.copy, "Make a programme of your own from this one");
  deed->add_option("--export", wanted.exported, "Print a programme's TOML");
  deed->add_option("--bring-in", wanted.broughtIn, "Take a programme from a TOML file");
  auto* use =
      deed->add_option("--use", wanted.use, "Have plantings go by this programme");
  deed->add_option("--try",
                   wanted.tried,
                   "Tell what a programme's TOML file would change in the plan");
  deed->add_option("--remove", wanted.removed, "Remove one of your own");
  command.add_option("--as", wanted.as, "The copy's id, such as my-spindle")->needs(copy);
  copy->needs(command.add_option("--name", wanted.name, "The copy's name"));
  command.add_option("--name-es", wanted.nameInSpanish, "Its name in Spanish")
      ->needs(copy);
  use->needs(command.add_option(
      "--planting", wanted.plantings, "A planting's code; may be given several times"));
}

void takeSupposition(CLI::App& command, Arguments& arguments) {
  CrewArguments& wanted = arguments.crews;
  command
      .add_option("--workers-more",
                  wanted.workersMore,
                  "Suppose so many more people, every working day, for any work")
      ->check(CLI::Range(0, 999));
  command
      .add_option("--spring-later",
                  wanted.springLaterBy,
                  "Suppose stages not seen yet come so many days later")
      ->check(CLI::Range(-60, 60));
  auto* from = takeRead(command,
                        "--from",
                        arguments.from,
                        readDay,
                        "Suppose nobody can work from this day")
                   ->type_name("DAY");
  auto* to =
      takeRead(command, "--to", arguments.to, readDay, "... to this one, inclusive")
          ->type_name("DAY");
  from->needs(to);
  to->needs(from);
}

void takeCrew(CLI::App& command, Arguments& arguments, bool required) {
  command.add_option("--crew", arguments.crews.crew, "The crew's name")
      ->required(required)
      ->type_name("NAME");
}

void takeFormat(CLI::App& command, Arguments& arguments) {
  auto* csv = command.add_flag_callback(
      "--csv",
      [&arguments] { arguments.format = Format::csv; },
      "RFC 4180 with a header row; lines end in a line feed");
  auto* json = command.add_flag_callback(
      "--json",
      [&arguments] { arguments.format = Format::json; },
      "An array of objects with the columns of --csv");
  csv->excludes(json);
}

void takeLanguage(CLI::App& command, Arguments& arguments) {
  const auto read = [](const std::string& typed) {
    if (typed == "en") return Language::english;
    if (typed == "es") return Language::spanish;
    throw notUsable(
        phrase("Console", "\"%1\" is no language spoken here; it is en or es"), typed);
  };
  takeRead(command,
           "--language",
           arguments.language,
           read,
           "Language of names and sentences: en (as is) or es")
      ->type_name("LANGUAGE");
}

}  // namespace topwire
