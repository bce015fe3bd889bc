#include "app/console/on_file.h"
#include "app/paper/sheet_layout.h"
#include "app/paper/sheet_painter.h"
#include "core/sheet/work_sheet.h"

#include <CLI/CLI.hpp>

namespace topwire {

namespace {

void declareSheet(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeSheet(command, arguments);
  takeToday(command, arguments);
}

std::int64_t jobsOn(const WorkSheet& sheet) {
  std::size_t count = 0;
  for (const SheetBlock& block : sheet.blocks) count += block.jobs.size();
  return static_cast<std::int64_t>(count);
}

Answer runSheet(Surroundings& surroundings, const Arguments& arguments) {
  return askFile(surroundings, arguments, [&](const OpenedOrchard& opened) -> Answer {
    const Orchard& orchard = opened.orchard;
    const Trade& trade = surroundings.trade;
    const SeasonSpan seasons = seasonsTouching(orchard, daysOf(arguments.week));
    const Plan plan = planTasks(orchard, trade, seasons, arguments.today);
    const WorkSheet sheet =
        workSheet(orchard, trade, plan, arguments.week, arguments.today);
    const PageFormat format{arguments.paper == "letter" ? Paper::letter : Paper::a4};
    const auto pages = layOut(sheet, format, arguments.language);
    const std::string title = orchard.settings.name + ' ' + isoText(arguments.week);
    const Done written = writePdf(
        QString::fromStdString(arguments.target), pages, QString::fromStdString(title));
    if (!written) return problemsOf(written);
    const Sentence said{
        phrase("Console", "\"%1\" holds the sheet of week %2: jobs %3, pages %4."),
        {arguments.target,
         isoText(arguments.week),
         jobsOn(sheet),
         static_cast<std::int64_t>(pages.size())}};
    return Outcome{spoken(said, arguments.language) + '\n', {}};
  });
}

}  // namespace

std::span<const Command> commandsOfPaper() {
  static constexpr Command commands[] = {
      {"sheet",
       "Write the week's work sheet as a PDF",
       "sheet alder.topwire --week 2027-W14 --pdf week.pdf --paper letter --language es",
       declareSheet,
       runSheet},
  };
  return commands;
}

}  // namespace topwire
