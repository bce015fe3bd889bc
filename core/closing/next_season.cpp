#include "core/closing/next_season.h"

#include "core/base/contract.h"
#include "core/edit/deed_checks.h"

#include <algorithm>

namespace topwire {

namespace {

/// Far above what any apple tree of a narrow wall carries.
constexpr int mostFruit = 2000;

std::string seasonName(const Orchard& orchard, Season season) {
  return nameOf(season, orchard.settings.hemisphere());
}

bool saysNothing(const SeasonTarget& target) {
  return !target.vigour && !target.fruitFrom && !target.fruitTo && target.note.empty();
}

SeasonTarget targetOf(const Orchard& orchard, const NextLeaf& leaf, Season next) {
  SeasonTarget target;
  target.of = {leaf.planting, next};
  if (const SeasonTarget* held = lookUp(orchard.targets, target.of)) target = *held;
  if (leaf.vigour != leaf.held) target.vigour = leaf.vigour;
  if (leaf.fruitFrom) target.fruitFrom = leaf.fruitFrom;
  if (leaf.fruitTo) target.fruitTo = leaf.fruitTo;
  return target;
}

/// Builds the change edit by edit on a copy of the orchard, so that each replant is
/// checked and named with those before it in place.
class Closing {
public:
  Closing(const Orchard& orchard,
          const TradeTables& tables,
          const SeasonProposal& proposal,
          IdSource& ids)
      : orchard_(orchard), tables_(&tables), proposal_(&proposal), ids_(&ids) {}

  Checked<Change> make(const std::string& by, Day today) && {
    checkSeason(by, today);
    for (const SeasonTarget& target : proposal_->targets) settle(target);
    for (const ProposedReplant& replant : proposal_->replants)
      if (replant.trees != 0) plant(replant);
    edits_.emplace_back(
        Edit<SeasonClose>{std::nullopt, SeasonClose{proposal_->season, today, by}});
    return std::move(faults_).orElse({Sentence{phrase("Deed", "Season %1 closed"),
                                               {seasonName(orchard_, proposal_->season)}},
                                      std::move(edits_)});
  }

private:
  void checkSeason(const std::string& by, Day today) {
    const Hemisphere hemisphere = orchard_.settings.hemisphere();
    const Season season = proposal_->season;
    const std::string name = seasonName(orchard_, season);
    const Day from = closableFrom(season, hemisphere);
    checkText(faults_, "by", by);
    if (const SeasonClose* closed = lookUp(orchard_.closes, season))
      faults_.add("season",
                  phrase("Deed", "Season %1 was closed on %2 already."),
                  {name, closed->day});
    else if (today < from)
      faults_.add("season",
                  phrase("Deed",
                         "Season %1 can be closed from %2 on; until then its work goes "
                         "on."),
                  {name, from});
    else if (lastDayOf(season, hemisphere) < orchard_.settings.recordsFrom)
      faults_.add("season",
                  phrase("Deed",
                         "Season %1 was over before the records began on %2, so there "
                         "is nothing to close."),
                  {name, orchard_.settings.recordsFrom});
  }

  std::string place(const Planting& planting, const char* field) const {
    return planting.code + '.' + field;
  }

  void settle(const SeasonTarget& target) {
    TOPWIRE_REQUIRE(target.of.season == proposal_->season.plus(1));
    const Planting* planting = known(target.of.planting);
    if (planting == nullptr) return;
    checkNotes(faults_, place(*planting, "vigour"), target.vigourReason);
    checkNotes(faults_, place(*planting, "note"), target.note);
    checkFruit(*planting, target);
    const SeasonTarget* held = lookUp(orchard_.targets, target.of);
    if (held != nullptr ? *held == target : saysNothing(target)) return;
    edits_.emplace_back(Edit<SeasonTarget>{
        held != nullptr ? std::optional{*held} : std::nullopt, target});
  }

  void checkFruit(const Planting& planting, const SeasonTarget& target) {
    const int from = target.fruitFrom.value_or(0);
    const int to = target.fruitTo.value_or(from);
    if (from < 0 || to < 0 || from > mostFruit || to > mostFruit)
      faults_.add(place(planting, "fruit"),
                  phrase("Deed", "Fruit to keep on a tree lies between 0 and %1."),
                  {std::int64_t{mostFruit}});
    else if (to < from)
      faults_.add(place(planting, "fruit"),
                  phrase("Deed", "%1 fruit at least and %2 at most; swap them."),
                  {std::int64_t{from}, std::int64_t{to}});
  }

  void plant(const ProposedReplant& replant) {
    const Planting* host = known(replant.host);
    if (host == nullptr) return;
    if (!checkReplant(replant, *host)) return;
    if (host->kind == PlantingKind::replant) takeOff(*host, replant.trees);
    addReplant(replant, *host);
  }

  bool checkReplant(const ProposedReplant& replant, const Planting& host) {
    const int most = treesIn(orchard_, host) - (host.kind == PlantingKind::replant);
    Faults found;
    if (replant.trees < 0 || replant.trees > most)
      found.add(place(host, "trees"),
                phrase("Deed", "%1 trees can't be missing of %2; check the count."),
                {std::int64_t{replant.trees}, std::int64_t{treesIn(orchard_, host)}});
    if (replant.rows.empty() || !host.rows.contains(replant.rows))
      found.add(place(host, "rows"),
                phrase("Deed", "Replants stand in the planting's own rows: %1."),
                {rowsText(host.rows)});
    checkPlanted(found, replant, host);
    const bool sound = !found.any();
    for (Problem& problem : std::move(found).take()) faults_.add(std::move(problem));
    return sound;
  }

  void checkPlanted(Faults& found,
                    const ProposedReplant& replant,
                    const Planting& host) const {
    const Hemisphere hemisphere = orchard_.settings.hemisphere();
    const DaySpan days{growthEnds(proposal_->season, hemisphere),
                       plusDays(growthEnds(proposal_->season.plus(1), hemisphere), -1)};
    if (!days.contains(replant.planted))
      found.add(place(host, "planted"),
                phrase("Deed",
                       "Replants for season %1 are planted between %2 and %3; choose "
                       "another day."),
                {seasonName(orchard_, proposal_->season.plus(1)), days.first, days.last});
  }

  /// Trees missing of an earlier replant are no longer its own.
  void takeOff(const Planting& host, int trees) {
    Planting fewer = host;
    fewer.trees = treesIn(orchard_, host) - trees;
    perform({{}, {Edit<Planting>{host, fewer}}});
  }

  void addReplant(const ProposedReplant& replant, const Planting& host) {
    Planting made = host;
    made.id = ids_->next<PlantingId>();
    made.code = freshCode(orchard_, blockOf(orchard_, host).name, host.cultivar);
    made.kind = PlantingKind::replant;
    made.planted = replant.planted;
    made.rows = replant.rows;
    made.trees = replant.trees;
    made.treesPerRow.reset();
    made.vigour.reset();
    made.vigourReason.clear();
    const Checked<Change> added = addPlanting(orchard_, *tables_, made);
    if (added)
      perform(*added);
    else
      for (Problem problem : added.error()) {
        problem.place = place(host, problem.place.c_str());
        faults_.add(std::move(problem));
      }
  }

  void perform(const Change& change) {
    apply(orchard_, change);
    edits_.insert(edits_.end(), change.edits.begin(), change.edits.end());
  }

  const Planting* known(PlantingId id) {
    const Planting* planting = lookUp(orchard_.plantings, id);
    if (planting == nullptr)
      faults_.add({}, phrase("Deed", "That planting is no longer in the orchard."));
    return planting;
  }

  Orchard orchard_;
  const TradeTables* tables_;
  const SeasonProposal* proposal_;
  IdSource* ids_;
  Faults faults_;
  std::vector<AnyEdit> edits_;
};

}  // namespace

SeasonProposal proposalOf(const Orchard& orchard,
                          const SeasonReview& review,
                          const std::vector<NextLeaf>& leaves) {
  SeasonProposal proposal{review.season, {}, {}};
  for (const NextLeaf& leaf : leaves)
    proposal.targets.push_back(targetOf(orchard, leaf, review.season.plus(1)));
  const Day planted = replantingDay(review.season, orchard.settings.hemisphere());
  for (const PlantingReview& planting : review.plantings)
    if (planting.missingTrees.value_or(0) > 0)
      proposal.replants.push_back({planting.planting,
                                   orchard.plantings.at(planting.planting).rows,
                                   *planting.missingTrees,
                                   planted});
  return proposal;
}

Day replantingDay(Season closed, Hemisphere hemisphere) {
  return localSeasonDay(closed.plus(1), hemisphere, 4, 1);
}

Season seasonToClose(const Orchard& orchard, Day today) {
  const Hemisphere hemisphere = orchard.settings.hemisphere();
  const Season current = seasonOf(today, hemisphere);
  const Season before = current.plus(-1);
  const bool waits = !orchard.closes.contains(before)
                     && lastDayOf(before, hemisphere) >= orchard.settings.recordsFrom;
  return waits && today < closableFrom(current, hemisphere) ? before : current;
}

Day closableFrom(Season season, Hemisphere hemisphere) {
  return localSeasonDay(season, hemisphere, 10, 1);
}

Checked<Change> closeSeason(const Orchard& orchard,
                            const TradeTables& tables,
                            const SeasonProposal& proposal,
                            const std::string& by,
                            Day today,
                            IdSource& ids) {
  return Closing{orchard, tables, proposal, ids}.make(by, today);
}

}  // namespace topwire
