#include "app/console/on_file.h"
#include "core/closing/labour_by_month.h"
#include "core/closing/next_season.h"
#include "core/closing/review_words.h"
#include "core/material/material_table_text.h"
#include "core/orchard/measure_text.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <functional>

namespace topwire {

namespace {

void declareMaterial(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeMaterialSpan(command, arguments);
  takeToday(command, arguments);
  takeFormat(command, arguments);
}

Answer materialAskedFor(const Orchard& orchard,
                        const Trade& trade,
                        const Arguments& arguments,
                        const std::function<Answer(const MaterialList&)>& tell) {
  if (!arguments.planting.empty()) {
    const auto planting = findPlanting(orchard, arguments.planting);
    if (!planting) return problemsOf(planting);
    return tell(materialOfPlanting(orchard, trade, **planting, arguments.today));
  }
  if (arguments.materialWeek) {
    const SeasonSpan seasons = seasonsTouching(orchard, daysOf(*arguments.materialWeek));
    const Plan plan = planTasks(orchard, trade, seasons, arguments.today);
    return tell(
        materialOfWeek(orchard, trade, plan, *arguments.materialWeek, arguments.today));
  }
  const Season season =
      arguments.season.value_or(seasonOf(arguments.today, orchard.settings.hemisphere()));
  const Plan plan =
      planTasks(orchard, trade, SeasonSpan{season, season}, arguments.today);
  return tell(materialOfSeason(orchard, trade, plan, season, arguments.today));
}

/// In the orchard's units, for reading.
Table readableTable(const Orchard& orchard, const MaterialList& list, Language language) {
  Table table{{"item", "needed", "buy", "tasks"}, {}};
  for (const MaterialLine& line : list.lines) {
    const Sentence needed = amountText(line.needed, line.unit, orchard.settings.units);
    table.rows.push_back(
        {line.name.in(language),
         spoken(needed, language),
         line.packs > 0 ? Cell{spoken(packsText(line), language)} : Cell{},
         static_cast<std::int64_t>(line.uses.size())});
  }
  return table;
}

Answer runMaterial(Surroundings& surroundings, const Arguments& arguments) {
  return askFile(surroundings, arguments, [&](const OpenedOrchard& opened) -> Answer {
    const Orchard& orchard = opened.orchard;
    return materialAskedFor(
        orchard, surroundings.trade, arguments, [&](const MaterialList& list) -> Answer {
          const Table table = arguments.format == Format::text
                                  ? readableTable(orchard, list, arguments.language)
                                  : tableOf(list, orchard, arguments.language);
          return Outcome{tableIn(arguments.format, table), list.notes};
        });
  });
}

void declareClose(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeClosing(command, arguments);
  takeBy(command, arguments, false);
  takeToday(command, arguments);
  takeFormat(command, arguments);
}

/// What a person is shown before a season is closed, with what closing it would do.
struct Look {
  SeasonReview review;
  std::vector<NextLeaf> leaves;
  SeasonProposal proposal;
  std::vector<MonthLabour> labour;
};

std::string joined(const std::vector<Sentence>& sentences, Language language) {
  std::string text;
  for (const Sentence& sentence : sentences)
    text += (text.empty() ? "" : " ") + spoken(sentence, language);
  return text;
}

/// Why a class changes is kept with the target, in the words it was told in.
void keepReasons(Look& look, Language language) {
  for (SeasonTarget& target : look.proposal.targets) {
    const auto leaf =
        std::ranges::find(look.leaves, target.of.planting, &NextLeaf::planting);
    if (target.vigour && target.vigourReason.empty() && leaf != look.leaves.end())
      target.vigourReason = joined(leaf->vigourReasons, language);
  }
}

Look lookBack(const Orchard& orchard, const Trade& trade, const Arguments& arguments) {
  const Day today = arguments.today;
  const Season season = arguments.season.value_or(seasonToClose(orchard, today));
  const Plan plan = planTasks(orchard, trade, SeasonSpan{season, season}, today);
  Look look;
  look.review = reviewOf(orchard, plan, trade, season, today);
  look.leaves = nextLeaves(orchard, trade, season, today);
  look.proposal = proposalOf(orchard, look.review, look.leaves);
  keepReasons(look, arguments.language);
  look.labour = labourByMonth(orchard, plan, trade, look.proposal, today);
  return look;
}

const char* codeOf(TaskOutcome outcome) {
  switch (outcome) {
    case TaskOutcome::done:
      return "done";
    case TaskOutcome::partDone:
      return "part-done";
    case TaskOutcome::missed:
      return "missed";
    case TaskOutcome::setAside:
      return "set-aside";
    case TaskOutcome::ahead:
      break;
  }
  return "ahead";
}

/// One table for all of the look back; a line's section says which columns it fills.
class LookTable {
public:
  LookTable(const Orchard& orchard, Language language)
      : orchard_(&orchard), language_(language) {}

  Table make(const Look& look) && {
    for (const PlantingReview& planting : look.review.plantings) {
      for (const ReviewedTask& task : planting.tasks) add(task);
      for (const WantedMeasure& wanted : planting.measures) add(planting, wanted);
    }
    for (const NextLeaf& leaf : look.leaves) add(leaf);
    for (const ProposedReplant& replant : look.proposal.replants) add(replant);
    for (const MonthLabour& month : look.labour) add(month);
    return std::move(table_);
  }

private:
  using Row = std::vector<std::pair<const char*, Cell>>;

  void put(const Row& row) {
    std::vector<Cell> cells(table_.columns.size());
    for (const auto& [column, cell] : row) {
      const auto at = std::ranges::find(table_.columns, column);
      cells[static_cast<std::size_t>(at - table_.columns.begin())] = cell;
    }
    table_.rows.push_back(std::move(cells));
  }

  std::string code(PlantingId planting) const {
    return orchard_->plantings.at(planting).code;
  }

  void add(const ReviewedTask& task) {
    put({{"section", std::string{"work"}},
         {"planting", code(task.task.planting)},
         {"item", taskText(*orchard_, task.task)},
         {"name", task.title.in(language_)},
         {"state", std::string{codeOf(task.outcome)}},
         {"rows", rowsText(task.rowsLeft)},
         {"day", task.closes},
         {"planned", Figure{task.hoursPlanned, 1}},
         {"noted", Figure{task.hoursNoted, 1}},
         {"reason", task.reason}});
  }

  void add(const PlantingReview& planting, const WantedMeasure& wanted) {
    put({{"section", std::string{"measure"}},
         {"planting", code(planting.planting)},
         {"name", nameOf(wanted.measure).in(language_)},
         {"state", std::string{wanted.measured ? "measured" : "wanted"}},
         {"day", wanted.measured ? Cell{*wanted.measured} : Cell{}}});
  }

  void add(const NextLeaf& leaf) {
    std::vector<Sentence> reasons = leaf.vigourReasons;
    reasons.insert(reasons.end(), leaf.fruitReasons.begin(), leaf.fruitReasons.end());
    const auto count = [](std::optional<int> fruit) {
      return fruit ? Cell{std::int64_t{*fruit}} : Cell{};
    };
    put({{"section", std::string{"next-leaf"}},
         {"planting", code(leaf.planting)},
         {"item", "leaf " + std::to_string(leaf.leaf)},
         {"state", topwire::codeOf(leaf.vigour)},
         {"fruit_from", count(leaf.fruitFrom)},
         {"fruit_to", count(leaf.fruitTo)},
         {"reason", joined(reasons, language_)}});
  }

  void add(const ProposedReplant& replant) {
    put({{"section", std::string{"replant"}},
         {"planting", code(replant.host)},
         {"rows", rowsText(replant.rows)},
         {"day", replant.planted},
         {"trees", std::int64_t{replant.trees}}});
  }

  void add(const MonthLabour& month) {
    put({{"section", std::string{"labour"}},
         {"item", "month " + std::to_string(month.month)},
         {"planned", Figure{month.planned, 1}},
         {"noted", Figure{month.noted, 1}},
         {"coming", Figure{month.coming, 1}}});
  }

  const Orchard* orchard_;
  Language language_;
  Table table_{{"section",
                "planting",
                "item",
                "name",
                "state",
                "rows",
                "day",
                "trees",
                "fruit_from",
                "fruit_to",
                "planned",
                "noted",
                "coming",
                "reason"},
               {}};
};

class LookText {
public:
  LookText(const Orchard& orchard, Language language)
      : orchard_(&orchard), language_(language) {}

  std::string make(const Look& look) && {
    say({phrase("Console", "Season %1: %2"),
         {nameOf(look.review.season, orchard_->settings.hemisphere()),
          spoken(countsOf(look.review), language_)}});
    for (const PlantingReview& planting : look.review.plantings) tell(planting);
    tell(look.leaves);
    tell(look.labour);
    for (const Sentence& effect : effectsOf(*orchard_, look.proposal)) say(effect);
    return std::move(text_);
  }

private:
  void say(const Sentence& sentence) { text_ += spoken(sentence, language_) + '\n'; }

  void tell(const PlantingReview& review) {
    const Planting& planting = orchard_->plantings.at(review.planting);
    text_ += '\n';
    say({phrase("Console", "%1, leaf %2: %3"),
         {planting.code, std::int64_t{review.leaf}, spoken(hoursOf(review), language_)}});
    for (const ReviewedWork& work : byWork(review))
      if (work.last.outcome != TaskOutcome::done
          && work.last.outcome != TaskOutcome::ahead)
        tell(work);
    std::string wanted;
    for (const WantedMeasure& measure : review.measures)
      if (!measure.measured)
        wanted += (wanted.empty() ? "" : ", ") + nameOf(measure.measure).in(language_);
    if (!wanted.empty()) say({phrase("Console", "Still to measure: %1."), {wanted}});
  }

  void tell(const ReviewedWork& work) {
    const ReviewedTask& task = work.last;
    const Value outcome = spoken(nameOf(task.outcome), language_);
    if (task.outcome == TaskOutcome::setAside)
      say({phrase("Console", "  %1: %2 (%3)"), {outcome, task.title, task.reason}});
    else if (work.visits > 1)
      say({phrase("Console", "  %1: %2, %4 visits, rows %3"),
           {outcome, task.title, rowsText(task.rowsLeft), std::int64_t{work.visits}}});
    else
      say({phrase("Console", "  %1: %2, rows %3"),
           {outcome, task.title, rowsText(task.rowsLeft)}});
  }

  void tell(const std::vector<NextLeaf>& leaves) {
    Table table{{"planting", "leaf", "class", "fruit"}, {}};
    for (const NextLeaf& leaf : leaves)
      table.rows.push_back({orchard_->plantings.at(leaf.planting).code,
                            std::int64_t{leaf.leaf},
                            topwire::codeOf(leaf.vigour),
                            fruitText(leaf)});
    text_ += '\n' + toText(table) + '\n';
  }

  static Cell fruitText(const NextLeaf& leaf) {
    if (!leaf.fruitFrom || !leaf.fruitTo) return {};
    return std::to_string(*leaf.fruitFrom) + '-' + std::to_string(*leaf.fruitTo);
  }

  void tell(const std::vector<MonthLabour>& labour) {
    Table table{{"month", "planned_h", "noted_h", "next_h"}, {}};
    for (const MonthLabour& month : labour)
      table.rows.push_back({std::int64_t{month.month},
                            Figure{month.planned, 0},
                            Figure{month.noted, 0},
                            Figure{month.coming, 0}});
    text_ += toText(table) + '\n';
  }

  const Orchard* orchard_;
  Language language_;
  std::string text_;
};

Answer acceptClose(Surroundings& surroundings, const Arguments& arguments) {
  return changeFile(surroundings, arguments, [&](Workbench& bench) -> Checked<Sentence> {
    const Trade& trade = surroundings.trade;
    const Look look = lookBack(bench.orchard(), trade, arguments);
    return perform(bench,
                   closeSeason(bench.orchard(),
                               trade.tables,
                               look.proposal,
                               arguments.by,
                               arguments.today,
                               bench.ids()));
  });
}

Answer runClose(Surroundings& surroundings, const Arguments& arguments) {
  if (arguments.accept) return acceptClose(surroundings, arguments);
  return askFile(surroundings, arguments, [&](const OpenedOrchard& opened) -> Answer {
    const Orchard& orchard = opened.orchard;
    const Look look = lookBack(orchard, surroundings.trade, arguments);
    if (arguments.format == Format::text)
      return Outcome{LookText{orchard, arguments.language}.make(look), {}};
    return Outcome{
        tableIn(arguments.format, LookTable{orchard, arguments.language}.make(look)), {}};
  });
}

}  // namespace

std::span<const Command> commandsOfSeasons() {
  static constexpr Command commands[] = {
      {"material",
       "List what to pick up for a week, a season or a new planting",
       "material alder.topwire --week 2027-W15",
       declareMaterial,
       runMaterial},
      {"close",
       "Look back on a season and at the next one; with --accept, close it",
       "close alder.topwire --today 2027-11-05 --accept --by Ada",
       declareClose,
       runClose},
  };
  return commands;
}

}  // namespace topwire
