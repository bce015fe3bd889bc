#include "app/console/commands.h"

#include "app/words/say.h"
#include "core/exchange/nearest.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <memory>
#include <ostream>

namespace topwire {

namespace {

constexpr const char* program = "topwire-cli";

constexpr const char* about =
    "Dated field tasks for high-density apple plantings, without a window.";

constexpr const char* closing =
    "Exit codes:\n"
    "  0  done\n"
    "  1  findings: check-programme found faults\n"
    "  2  usage: an argument is missing or cannot be read\n"
    "  3  problem: a file or what it holds; nothing was changed\n"
    "With 2 and 3 standard output stays empty and standard error says, in one sentence\n"
    "each, what happened, where, and what to do. `topwire-cli VERB --help` tells a "
    "verb's\n"
    "arguments and shows an example.";

/// The command line as it is taken apart; remembers which command was chosen.
class Grammar {
public:
  explicit Grammar(Day today) : app_(about, program) {
    arguments_.today = today;
    app_.footer(closing);
    app_.set_version_flag("--version", std::string{program} + " " TOPWIRE_VERSION);
    app_.require_subcommand(1);
    app_.get_formatter()->label("SUBCOMMAND", "VERB");
    takeLanguage(app_, arguments_);
    for (const Command& command : allCommands()) add(command);
  }

  /// Throws what CLI11 throws.
  void parse(std::vector<std::string> words) {
    std::ranges::reverse(words);
    app_.parse(std::move(words));
  }

  /// Help or version to `out`, as CLI11 asked for.
  void tell(const CLI::ParseError& asked, std::ostream& out) {
    app_.exit(asked, out, out);
  }

  const Command& chosen() const { return chosen_; }

  const Arguments& arguments() const { return arguments_; }

private:
  void add(const Command& command) {
    CLI::App* verb = app_.add_subcommand(command.name, command.help);
    verb->group("Verbs");
    command.declare(*verb, arguments_);
    takeLanguage(*verb, arguments_);
    verb->footer(std::string{"Example:\n  "} + program + ' ' + command.example);
    verb->callback([this, command] { chosen_ = command; });
  }

  CLI::App app_;
  Arguments arguments_;
  Command chosen_{};
};

bool isCommand(const std::string& word) {
  const auto all = allCommands();
  return std::ranges::any_of(all, [&](const Command& one) { return word == one.name; });
}

/// A first word that is no verb; empty where that is not what is wrong.
std::string unknownVerb(const std::vector<std::string>& words) {
  const bool wrong =
      !words.empty() && !words.front().starts_with('-') && !isCommand(words.front());
  return wrong ? words.front() : std::string{};
}

std::string usageSentence(const std::vector<std::string>& words,
                          const CLI::ParseError& fault) {
  if (const std::string verb = unknownVerb(words); !verb.empty()) {
    std::vector<std::string> names;
    for (const Command& command : allCommands()) names.emplace_back(command.name);
    const std::string nearest = nearestName(verb, names);
    return "There is no verb \"" + verb + "\"; "
           + (nearest.empty() ? "topwire-cli --help lists them."
                              : "the nearest is \"" + nearest + "\".");
  }
  std::string what = fault.what();
  std::ranges::replace(what, '\n', ' ');
  if (const auto at = what.find("subcommand"); at != std::string::npos)
    what.replace(at, std::string{"subcommand"}.size(), "verb");
  while (what.ends_with('.') || what.ends_with(' ')) what.pop_back();
  const bool known = !words.empty() && isCommand(words.front());
  return what + "; see " + program + (known ? ' ' + words.front() : "") + " --help.";
}

int tellProblems(const Problems& problems, Language language, std::ostream& err) {
  for (const Problem& problem : problems) {
    // A field's name is for forms; only a place in a file helps here.
    const bool inFile = problem.place.find(':') != std::string::npos;
    err << (inFile ? problem.place + ": " : "") << spoken(problem.sentence, language)
        << '\n';
  }
  return static_cast<int>(ExitCode::problem);
}

/// A pipe that closed or a disk that filled up is a problem, too: the reader went short.
int tell(const Answer& answer, Language language, std::ostream& out, std::ostream& err) {
  if (!answer) return tellProblems(answer.error(), language, err);
  for (const Sentence& note : answer->notes) err << spoken(note, language) << '\n';
  out << answer->text << std::flush;
  if (out.good()) return static_cast<int>(answer->code);
  const Sentence said{phrase("Console",
                             "Standard output did not take the whole result; free some "
                             "space or send it elsewhere.")};
  return tellProblems({Problem{said, {}, {}}}, language, err);
}

}  // namespace

std::vector<Command> allCommands() {
  std::vector<Command> all;
  for (const auto some : {commandsOfFiles(),
                          commandsOfTasks(),
                          commandsOfStages(),
                          commandsOfTargets(),
                          commandsOfWeather(),
                          commandsOfCrews(),
                          commandsOfTurnout(),
                          commandsOfPaper(),
                          commandsOfProgrammes(),
                          commandsOfSeasons(),
                          commandsOfDrawings()})
    all.insert(all.end(), some.begin(), some.end());
  return all;
}

int runConsole(const std::vector<std::string>& words,
               Surroundings& surroundings,
               std::ostream& out,
               std::ostream& err) {
  Grammar grammar{surroundings.today};
  try {
    grammar.parse(words);
  } catch (const CLI::ParseError& fault) {
    if (fault.get_exit_code() == 0) {
      grammar.tell(fault, out);
      return static_cast<int>(ExitCode::done);
    }
    err << usageSentence(words, fault) << '\n';
    return static_cast<int>(ExitCode::usage);
  }
  const Language language = grammar.arguments().language;
  return tell(
      grammar.chosen().run(surroundings, grammar.arguments()), language, out, err);
}

}  // namespace topwire
