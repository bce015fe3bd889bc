#include "tests/support/plan_text.h"

#include "core/phenology/stage.h"

#include <algorithm>
#include <array>
#include <iomanip>
#include <sstream>

namespace topwire::testing {

namespace {

std::string dayText(Day day) {
  static constexpr std::array names{"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"};
  return std::string{names.at(date::weekday{day}.c_encoding())} + " " + isoText(day);
}

std::string wordFor(Vigour vigour) {
  static constexpr std::array names{"weak", "moderate", "strong"};
  return names.at(static_cast<std::size_t>(vigour));
}

/// What an edge hangs on; the calendar's days need no more than their date.
struct PointText {
  const Programme& programme;

  std::string operator()(OnStage on) const { return stageByCode(on.bbch)->name.en; }

  std::string operator()(OnPlanting) const { return "planting"; }

  std::string operator()(const OnMonth&) const { return "calendar"; }

  std::string operator()(const OnCompletion& on) const {
    return "end of \"" + programme.find(on.operation)->name.en + "\"";
  }
};

std::string offsetText(int count, const char* unit) {
  if (count == 0) return {};
  return (count < 0 ? " - " : " + ") + std::to_string(std::abs(count)) + unit;
}

class PlanWriter {
public:
  PlanWriter(const Orchard& orchard, const Trade& trade, SeasonSpan seasons, Day today)
      : orchard_(orchard)
      , trade_(trade)
      , planting_(orchard.plantings.begin()->second)
      , programme_(trade.programmes.at(planting_.programme))
      , forecast_(trade.forecaster.over(orchard, today))
      , plan_(planTasks(orchard, trade, *forecast_, seasons)) {}

  std::string written(SeasonSpan seasons) {
    writeHead();
    for (const Sentence& note : plan_.notes) text_ << "Note: " << inEnglish(note) << '\n';
    for (Season season = seasons.first; season <= seasons.last; season = season.plus(1))
      writeSeason(season);
    return text_.str();
  }

private:
  Hemisphere hemisphere() const { return orchard_.settings.hemisphere(); }

  void writeHead() {
    const Settings& settings = orchard_.settings;
    const auto basis = vigourOf(trade_.tables, planting_);
    text_ << programme_.name.en << ", " << wordFor(basis.vigour) << " trees\n\n"
          << std::fixed << std::setprecision(1);
    text_ << "Planted  " << dayText(planting_.planted) << ", trees "
          << planting_.treeSpacing.inFeet() << " ft by "
          << orchard_.blocks.at(planting_.block).rowSpacing.inFeet() << " ft\n";
    text_ << "Class    " << planting_.cultivar << std::showpos << " ("
          << basis.fromCultivar << ") on " << planting_.rootstock << " ("
          << basis.fromRootstock << "): weak from -1, strong from +1\n"
          << std::noshowpos;
    text_ << "Place    latitude " << settings.latitude << ", "
          << settings.elevation.inMetres() << " m, monthly normals of "
          << settings.station << '\n';
    text_ << "New trees wake " << settings.firstLeafDelayDays
          << " days after established ones.\n"
          << "Each line: first day, last day, work, what the two days hang on.\n";
  }

  void writeSeason(Season season) {
    const int leaf = leafIn(season, planting_.planted, hemisphere());
    text_ << "\nLeaf " << leaf << ", season " << nameOf(season, hemisphere()) << '\n';
    if (leaf >= 1) writeStages(season);
    for (const Task& task : plan_.tasks)
      if (task.key.season == season && task.key.pass == 1) writeTask(task);
  }

  void writeStages(Season season) {
    const Outlook outlook = forecast_->outlook(planting_, season);
    text_ << "  (";
    for (const int bbch : {stages::greenTip,
                           stages::fullBloom,
                           stages::petalFall,
                           stages::terminalBud,
                           stages::harvest,
                           stages::leafFall})
      text_ << (bbch == stages::greenTip ? "" : ", ") << stageByCode(bbch)->name.en << ' '
            << isoText(outlook.find(bbch)->date);
    text_ << ")\n";
  }

  const Task& lastPassOf(const Task& first) const {
    const Task* last = &first;
    for (const Task& task : plan_.tasks)
      if (task.key.operation == first.key.operation && task.key.season == first.key.season
          && task.key.pass > last->key.pass)
        last = &task;
    return *last;
  }

  void writeTask(const Task& first) {
    const Task& last = lastPassOf(first);
    const Operation& operation = *programme_.find(first.key.operation);
    std::string what = operation.name.en;
    if (last.key.pass > 1)
      what += ", " + std::to_string(last.key.pass) + " times, every "
              + std::to_string(first.opensWhy.repeatEvery) + " days";
    text_ << "  " << dayText(first.opens) << "  " << dayText(last.closes) << "  "
          << std::left << std::setw(60) << what << ' ' << edgesText(operation);
    if (first.opensWhy.heldForPlanting) text_ << "; held for planting";
    if (last.cutOff && *last.cutOff > last.closes)
      text_ << "; no use after " << isoText(*last.cutOff);
    for (const std::string& need : operation.needs)
      text_ << "; waits for \"" << programme_.find(need)->name.en << '"';
    text_ << '\n';
  }

  /// The point is named once where both edges hang on it.
  std::string edgesText(const Operation& operation) const {
    const std::string from = pointText(operation.opens);
    const std::string to = pointText(operation.closes);
    if (from == "calendar" && to == from) return from;
    const std::string until = offsetsText(operation.closes);
    return from + offsetsText(operation.opens) + " .."
           + (from == to && !until.empty() ? until : " " + to + until);
  }

  std::string pointText(const Anchor& anchor) const {
    return std::visit(PointText{programme_}, anchor.point);
  }

  static std::string offsetsText(const Anchor& anchor) {
    return offsetText(anchor.months, " months") + offsetText(anchor.days, " d");
  }

  const Orchard& orchard_;
  const Trade& trade_;
  const Planting& planting_;
  const Programme& programme_;
  std::unique_ptr<StageForecast> forecast_;
  Plan plan_;
  std::ostringstream text_;
};

}  // namespace

std::string planText(const Orchard& orchard,
                     const Trade& trade,
                     SeasonSpan seasons,
                     Day today) {
  return PlanWriter{orchard, trade, seasons, today}.written(seasons);
}

}  // namespace topwire::testing
