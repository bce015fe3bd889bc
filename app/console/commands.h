#pragma once

#include "app/console/arguments.h"
#include "app/console/output.h"
#include "core/base/record_id.h"
#include "core/edit/orchard_files.h"
#include "core/edit/workbench.h"
#include "core/planning/programmes_at_hand.h"

#include <iosfwd>
#include <span>
#include <string>
#include <vector>

namespace topwire {

/// What the commands reach outside themselves. The references must outlive them.
struct Surroundings {
  Trade trade;  ///< with the programmes below
  ProgrammesAtHand& programmes;
  OrchardFiles& files;
  Clock clock;
  IdSource ids;
  Day today;  ///< where no --today is given
};

/// One verb of the command line.
struct Command {
  const char* name;
  const char* help;
  const char* example;  ///< what follows the program's name
  void (*declare)(CLI::App& command, Arguments& arguments);
  Answer (*run)(Surroundings& surroundings, const Arguments& arguments);
};

/// By topic; together they are all there is.
std::span<const Command> commandsOfFiles();
std::span<const Command> commandsOfTasks();
std::span<const Command> commandsOfStages();
std::span<const Command> commandsOfTargets();
std::span<const Command> commandsOfWeather();
std::span<const Command> commandsOfCrews();
std::span<const Command> commandsOfTurnout();
std::span<const Command> commandsOfPaper();
std::span<const Command> commandsOfProgrammes();
std::span<const Command> commandsOfSeasons();
std::span<const Command> commandsOfDrawings();
std::vector<Command> allCommands();

/// Reads the arguments, runs the command and says what came of it: results on `out`,
/// problems as one sentence each on `err`. Answers the exit code.
int runConsole(const std::vector<std::string>& words,
               Surroundings& surroundings,
               std::ostream& out,
               std::ostream& err);

}  // namespace topwire
