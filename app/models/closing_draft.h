#pragma once

#include "app/models/session.h"
#include "core/closing/labour_by_month.h"
#include "core/closing/next_season.h"

#include <map>

namespace topwire {

/// A season's close while a person goes through it: what was, what is proposed, and what
/// they changed of that, which stays while the orchard changes under it.
class ClosingDraft {
public:
  /// Looks at the orchard anew; of another season, or another orchard, nothing is kept.
  void take(Session& session, Season season);

  void forget() { *this = {}; }

  const SeasonReview& review() const { return review_; }

  const std::vector<NextLeaf>& leaves() const { return leaves_; }

  const NextLeaf* leafOf(PlantingId planting) const;

  /// One target for each of the leaves, one replant for each planting that may need one.
  const SeasonProposal& proposal() const { return proposal_; }

  void choose(const SeasonTarget& target);
  void choose(const ProposedReplant& replant);

  std::vector<MonthLabour> labour(Session& session) const;
  /// `ids` are those of the orchard where the change is to be performed.
  Checked<Change> change(const Session& session,
                         const std::string& by,
                         IdSource& ids) const;

  bool isClosed(const Session& session) const;

private:
  SeasonReview review_;
  std::vector<NextLeaf> leaves_;
  SeasonProposal proposal_;
  std::map<PlantingId, SeasonTarget> chosenTargets_;
  std::map<PlantingId, ProposedReplant> chosenReplants_;
};

}  // namespace topwire
