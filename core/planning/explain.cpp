#include "core/planning/explain.h"

#include "core/labour/hours_figure.h"
#include "core/planning/explain_waiting.h"

#include <array>
#include <cmath>
#include <cstdlib>

namespace topwire {

namespace {

enum class EdgeOf { opening, closing, cutOff };

/// "3 days", "2 months and 3 days" in both languages; empty for no offset. Signs are told
/// by the sentence around it.
Words offsetWords(int months, int days) {
  const auto part = [](int count, const char* one, const char* many) {
    return count == 0 ? std::string{}
                      : std::to_string(count) + ' ' + (count == 1 ? one : many);
  };
  const auto join = [](const std::string& a, const std::string& b, const char* with) {
    return a.empty() || b.empty() ? a + b : a + with + b;
  };
  months = std::abs(months);
  days = std::abs(days);
  return {join(part(months, "month", "months"), part(days, "day", "days"), " and "),
          join(part(months, "mes", "meses"), part(days, "día", "días"), " y ")};
}

struct AnchorName {
  const Programme* programme;

  Words operator()(const OnStage& stage) const { return stageByCode(stage.bbch)->name; }

  Words operator()(const OnPlanting&) const {
    return {"the planting day", "el día de plantación"};
  }

  Words operator()(const OnMonth&) const {
    return {"a fixed day of the local season", "un día fijo de la temporada local"};
  }

  Words operator()(const OnCompletion& after) const {
    const Operation* operation = programme ? programme->find(after.operation) : nullptr;
    const Words name =
        operation ? operation->name : Words{after.operation, after.operation};
    return {"\u201c" + name.en + "\u201d", "\u00ab" + name.es + "\u00bb"};
  }
};

enum class Relation { on, after, before, aheadOf };

Relation relationOf(const DateReason& reason) {
  if (reason.earlyEdge != EarlyEdge::none) return Relation::aheadOf;
  const Anchor& anchor = reason.anchor;
  const int sign = anchor.months != 0 ? anchor.months : anchor.days;
  if (sign == 0) return Relation::on;
  return sign > 0 ? Relation::after : Relation::before;
}

Phrase edgePhrase(EdgeOf edge, Relation relation) {
  static constexpr std::array<std::array<Phrase, 4>, 3> phrases{{
      {phrase("Why", "Opens %1: at %2."),
       phrase("Why", "Opens %1: %3 after %2."),
       phrase("Why", "Opens %1: %3 before %2."),
       phrase("Why", "Opens %1: ahead of %2.")},
      {phrase("Why", "Closes %1: at %2."),
       phrase("Why", "Closes %1: %3 after %2."),
       phrase("Why", "Closes %1: %3 before %2."),
       phrase("Why", "Closes %1: ahead of %2.")},
      {phrase("Why", "No longer worth doing after %1: at %2."),
       phrase("Why", "No longer worth doing after %1: %3 after %2."),
       phrase("Why", "No longer worth doing after %1: %3 before %2."),
       phrase("Why", "No longer worth doing after %1: ahead of %2.")},
  }};
  return phrases[static_cast<std::size_t>(edge)][static_cast<std::size_t>(relation)];
}

Phrase handPhrase(EdgeOf edge) {
  return edge == EdgeOf::opening
             ? phrase("Why", "Opens %1: a person moved it there by hand.")
             : phrase("Why", "Closes %1: a person moved it there by hand.");
}

/// Where the stage's own date comes from.
Sentence aboutWeatherToCome(const HeatBasis& heat) {
  if (heat.pastSeasons == 0)
    return {phrase("Why", "What is still to come is taken from the monthly averages.")};
  return {phrase("Why", "What is still to come is taken from %1 past seasons in turn."),
          {std::int64_t{heat.pastSeasons}}};
}

/// The heat of late winter counts in part; by March, September in the south, nine tenths
/// of it do.
Sentence aboutHeat(const HeatBasis& heat, Hemisphere hemisphere) {
  std::vector<Value> values{
      Figure{heat.reached, 0}, Figure{heat.needed, 0}, Figure{heat.base, 0}, heat.from};
  const Season season = seasonOf(heat.from, hemisphere);
  if (heat.from >= localSeasonDay(season, hemisphere, 3, 1))
    return {
        phrase("Why",
               "Heat: %1 of %2 heat units are in since %4 (degree days above %3 °C)."),
        std::move(values)};
  values.emplace_back(hemisphere == Hemisphere::north ? Words{"March", "marzo"}
                                                      : Words{"September", "septiembre"});
  return {phrase("Why",
                 "Heat: %1 of %2 heat units are in since %4 (degree days above %3 °C, "
                 "before %5 in part)."),
          std::move(values)};
}

void tellHeat(const HeatBasis& heat, Hemisphere hemisphere, std::vector<Sentence>& told) {
  told.push_back(aboutHeat(heat, hemisphere));
  told.push_back(aboutWeatherToCome(heat));
  if (heat.ownSeasons > 0)
    told.emplace_back(
        counted(
            heat.ownSeasons,
            phrase("Why", "What is needed is corrected by your own dates of %1 season."),
            phrase("Why",
                   "What is needed is corrected by your own dates of %1 seasons.")),
        std::vector<Value>{std::int64_t{heat.ownSeasons}});
}

std::vector<Sentence> aboutStage(const StageEstimate& stage, Hemisphere hemisphere) {
  const Words name = stageByCode(stage.bbch)->name;
  if (stage.kind == StageKind::observed)
    return {{phrase("Why", "Seen on %2: %1."), {name, stage.date}}};
  std::vector<Sentence> told;
  told.emplace_back(
      phrase("Why", "Expected on %2: %1; eight years in ten between %3 and %4."),
      std::vector<Value>{name, stage.date, stage.early, stage.late});
  if (stage.heat) tellHeat(*stage.heat, hemisphere, told);
  if (stage.kind == StageKind::byOffset)
    told.emplace_back(
        phrase("Why",
               "It is counted in days from another stage or from the calendar; "
               "no heat sum is published for it."));
  if (stage.firstLeafDelayDays != 0)
    told.emplace_back(
        phrase("Why", "New trees wake late: %1 days are added in the first leaf."),
        std::vector<Value>{std::int64_t{stage.firstLeafDelayDays}});
  if (stage.pulledBy)
    told.emplace_back(phrase("Why", "It follows from %1, which was seen."),
                      std::vector<Value>{stageByCode(*stage.pulledBy)->name});
  if (std::abs(stage.degreesForElevation) >= 0.05)
    told.emplace_back(
        phrase("Why",
               "The block's elevation changes the station's temperatures by %1 °C."),
        std::vector<Value>{Figure{stage.degreesForElevation, 1}});
  if (std::abs(stage.degreesForBlock) >= 0.05)
    told.emplace_back(phrase("Why", "The block's own correction adds %1 °C."),
                      std::vector<Value>{Figure{stage.degreesForBlock, 1}});
  if (std::abs(stage.cultivarShiftDays) >= 0.5)
    told.emplace_back(
        stage.cultivarShiftDays > 0
            ? phrase("Why", "This cultivar comes %1 days after Golden Delicious.")
            : phrase("Why", "This cultivar comes %1 days before Golden Delicious."),
        std::vector<Value>{Figure{std::abs(stage.cultivarShiftDays), 1}});
  return told;
}

/// The span holds eight cases in ten, so that one in ten comes before its early edge.
Sentence aboutEarlyEdge(const DateReason& reason) {
  const StageEstimate& stage = *reason.stage;
  if (reason.earlyEdge == EarlyEdge::heldToMiddle)
    return {phrase("Why",
                   "Bloom may come early, but the early edge of the span from %1 to %2 "
                   "lies before the middle of the window, so it is held to the middle, "
                   "%3."),
            {stage.early, stage.late, reason.day}};
  if (stage.bbch == stages::firstBloom)
    return {phrase("Why",
                   "Bloom may come early: of the span from %1 to %2 the early edge is "
                   "taken, so that it is done before the first flowers open in nine "
                   "seasons of ten."),
            {stage.early, stage.late}};
  return {phrase("Why",
                 "Bloom may come early: of the span from %1 to %2 the early edge is "
                 "taken, so that it is done before %3 in nine seasons of ten."),
          {stage.early, stage.late, stageByCode(stage.bbch)->name}};
}

Sentence aboutCompletion(const CompletionBasis& basis) {
  return basis.done
             ? Sentence{phrase("Why", "That job was finished on %1."), {basis.day}}
             : Sentence{phrase("Why",
                               "That job is not finished; its closing, %1, is taken "
                               "until it is."),
                        {basis.day}};
}

class Explanation {
public:
  Explanation(const Orchard& orchard, const Trade& trade, const Task& task)
      : orchard_(&orchard)
      , trade_(&trade)
      , task_(&task)
      , operation_(operationOf(orchard, trade.programmes, task.key)) {
    const auto& planting = orchard.plantings.at(task.key.planting);
    const auto found = trade.programmes.find(planting.programme);
    programme_ = found == trade.programmes.end() ? nullptr : &found->second;
  }

  std::vector<Sentence> tell() && {
    if (task_->noLongerAsked)
      say(phrase("Why",
                 "The programme no longer asks for this job; it stays for its ticks "
                 "or for what a person said of it."));
    if (!task_->noLongerAsked) tellEdges();
    add(aboutConditions(*orchard_, *task_));
    add(aboutNeeds(*orchard_, programme_, *task_));
    if (operation_) add(aboutDelay(*operation_));
    tellBranch();
    tellLabour();
    return std::move(told_);
  }

private:
  void say(Phrase phrase, std::vector<Value> values = {}) {
    told_.emplace_back(phrase, std::move(values));
  }

  void add(std::vector<Sentence> sentences) {
    for (Sentence& sentence : sentences) told_.push_back(std::move(sentence));
  }

  bool isLastVisit() const { return task_->until && task_->until->holds() == true; }

  void tellEdges() {
    tellEdge(EdgeOf::opening, task_->opensWhy, nullptr);
    tellEdge(EdgeOf::closing, task_->closesWhy, &task_->opensWhy);
    if (!task_->cutOffWhy || !task_->cutOff) return;
    if (task_->cutOffWhy->repeatEvery > 0) {
      if (!isLastVisit())
        say(phrase("Why", "After %1 the next visit takes its place."), {*task_->cutOff});
      return;
    }
    tellEdge(EdgeOf::cutOff, *task_->cutOffWhy, &task_->closesWhy);
    if (operation_ && operation_->cutOff)
      say(phrase("Why", "%1"), {operation_->cutOff->reason});
  }

  void tellEdge(EdgeOf edge, const DateReason& reason, const DateReason* before) {
    if (reason.byHand) return say(handPhrase(edge), {reason.day});
    if (reason.repeatEvery > 0) return tellPass(edge, reason);
    const Words name = std::visit(AnchorName{programme_}, reason.anchor.point);
    say(edgePhrase(edge, relationOf(reason)),
        {reason.day, name, offsetWords(reason.anchor.months, reason.anchor.days)});
    if (reason.heldForPlanting)
      say(phrase("Why", "It waits for the planting day: before it there is no tree."));
    tellHold(reason);
    tellBasis(reason, before);
  }

  void tellPass(EdgeOf edge, const DateReason& reason) {
    if (edge == EdgeOf::opening)
      say(phrase("Why", "Visit %1 of one every %2 days."),
          {std::int64_t{task_->key.pass}, std::int64_t{reason.repeatEvery}});
    if (edge == EdgeOf::opening) tellGrowth(reason);
    say(edge == EdgeOf::opening ? phrase("Why", "Opens %1.")
                                : phrase("Why", "Closes %1, when the next visit is due."),
        {reason.day});
    if (edge != EdgeOf::opening) return;
    tellHold(reason);
    tellBasis(reason, nullptr);
  }

  void tellGrowth(const DateReason& reason) {
    const bool byGrowth = operation_ && operation_->repeat && reason.growth;
    if (byGrowth && operation_->repeat->everyGrowth)
      told_.push_back(aboutGrowth(*reason.growth,
                                  *operation_->repeat->everyGrowth,
                                  reason.repeatEvery,
                                  orchard_->settings.units));
  }

  void tellHold(const DateReason& reason) {
    if (!reason.heldForWork) return;
    const Words name =
        AnchorName{programme_}(OnCompletion{reason.heldForWork->operation});
    say(phrase("Why", "It is held to %1, since %2 opens no earlier."),
        {reason.day, name});
  }

  /// The stage or the job behind an edge, unless the edge before it told the same.
  void tellBasis(const DateReason& reason, const DateReason* before) {
    if (reason.completion) told_.push_back(aboutCompletion(*reason.completion));
    if (!reason.stage) return;
    const bool told = before && before->stage == reason.stage;
    if (!told)
      for (Sentence& sentence :
           aboutStage(*reason.stage, orchard_->settings.hemisphere()))
        told_.push_back(std::move(sentence));
    if (reason.earlyEdge != EarlyEdge::none
        && !(told && before->earlyEdge == reason.earlyEdge))
      told_.push_back(aboutEarlyEdge(reason));
  }

  void tellBranch() {
    const auto& planting = orchard_->plantings.at(task_->key.planting);
    const VigourBasis basis =
        vigourIn(task_->key.season, *orchard_, trade_->tables, planting);
    const Words vigour = wordsFor(basis.vigour);
    if (basis.byGrower)
      say(phrase("Why", "Vigour class: %1, by the grower's word."), {vigour});
    else
      say(phrase("Why", "Vigour class: %1, from %2 (%3) on %4 (%5)."),
          {vigour,
           planting.cultivar,
           Figure{basis.fromCultivar, 1},
           planting.rootstock,
           Figure{basis.fromRootstock, 1}});
  }

  void tellLabour() {
    const double hours = static_cast<double>(task_->trees) * task_->secondsPerTree / 3600;
    if (task_->secondsPerTree > 0)
      say(phrase("Why", "Labour: %1 trees at %2 seconds each, %3 worker-hours."),
          {std::int64_t{task_->trees},
           std::int64_t{task_->secondsPerTree},
           hoursFigure(hours)});
    if (task_->labour.hours > 0) tellOwnPace(task_->labour);
    if (operation_) say(phrase("Why", "Source: %1"), {operation_->source});
  }

  void tellOwnPace(const LabourRate& rate) {
    say(phrase("Why",
               "The programme says %1 seconds a tree, your %2 hours of ticks say %3; the "
               "ticks count for %4 % of the figure."),
        {std::int64_t{rate.programme},
         Figure{rate.hours, rate.hours < 10 ? 1 : 0},
         std::int64_t{std::lround(rate.own)},
         std::int64_t{std::lround(100 * rate.weight)}});
  }

  static Words wordsFor(Vigour vigour) {
    switch (vigour) {
      case Vigour::weak:
        return {"weak", "débil"};
      case Vigour::moderate:
        return {"moderate", "moderado"};
      case Vigour::strong:
        break;
    }
    return {"strong", "fuerte"};
  }

  const Orchard* orchard_;
  const Trade* trade_;
  const Task* task_;
  const Operation* operation_;
  const Programme* programme_ = nullptr;
  std::vector<Sentence> told_;
};

}  // namespace

std::vector<Sentence> explain(const Orchard& orchard,
                              const Trade& trade,
                              const Task& task) {
  return Explanation{orchard, trade, task}.tell();
}

Words titleOf(const Task& task, const Operation* operation) {
  if (!task.handTitle.empty()) return {task.handTitle, task.handTitle};
  return operation ? operation->name : Words{task.key.operation, task.key.operation};
}

}  // namespace topwire
