#include "app/models/closing_draft.h"

#include "app/words/say.h"

#include <algorithm>

namespace topwire {

namespace {

DaySpan daysOf(Season season, const Session& session) {
  const Hemisphere hemisphere = session.orchard().settings.hemisphere();
  return {firstDayOf(season, hemisphere), lastDayOf(season, hemisphere)};
}

/// Why the class changes, kept with the target in the words the grower was shown.
void keepReason(SeasonTarget& target, const NextLeaf* leaf) {
  if (leaf == nullptr || !target.vigour || !target.vigourReason.empty()) return;
  QStringList reasons;
  for (const Sentence& reason : leaf->vigourReasons) reasons << say(reason);
  target.vigourReason = reasons.join(u' ').toStdString();
}

}  // namespace

void ClosingDraft::take(Session& session, Season season) {
  if (season != review_.season) forget();
  const Orchard& orchard = session.orchard();
  const Trade trade = session.trade();
  const Day today = session.today();
  review_ =
      reviewOf(orchard, session.planFor(daysOf(season, session)), trade, season, today);
  leaves_ = nextLeaves(orchard, trade, season, today);
  proposal_ = proposalOf(orchard, review_, leaves_);
  for (SeasonTarget& target : proposal_.targets)
    keepReason(target, leafOf(target.of.planting));
  const Day planted = replantingDay(season, orchard.settings.hemisphere());
  for (const PlantingReview& review : review_.plantings)
    if (review.leaf >= 1 && review.missingTrees.value_or(0) == 0)
      proposal_.replants.push_back(
          {review.planting, orchard.plantings.at(review.planting).rows, 0, planted});
  for (const auto& [planting, target] : chosenTargets_) choose(SeasonTarget{target});
  for (const auto& [planting, replant] : chosenReplants_)
    choose(ProposedReplant{replant});
}

const NextLeaf* ClosingDraft::leafOf(PlantingId planting) const {
  const auto found = std::ranges::find(leaves_, planting, &NextLeaf::planting);
  return found == leaves_.end() ? nullptr : &*found;
}

void ClosingDraft::choose(const SeasonTarget& target) {
  chosenTargets_[target.of.planting] = target;
  for (SeasonTarget& held : proposal_.targets)
    if (held.of == target.of) held = target;
}

void ClosingDraft::choose(const ProposedReplant& replant) {
  chosenReplants_[replant.host] = replant;
  for (ProposedReplant& held : proposal_.replants)
    if (held.host == replant.host) held = replant;
}

std::vector<MonthLabour> ClosingDraft::labour(Session& session) const {
  return labourByMonth(session.orchard(),
                       session.planFor(daysOf(review_.season, session)),
                       session.trade(),
                       proposal_,
                       session.today());
}

Checked<Change> ClosingDraft::change(const Session& session,
                                     const std::string& by,
                                     IdSource& ids) const {
  return closeSeason(
      session.orchard(), session.tables(), proposal_, by, session.today(), ids);
}

bool ClosingDraft::isClosed(const Session& session) const {
  return session.orchard().closes.contains(review_.season);
}

}  // namespace topwire
