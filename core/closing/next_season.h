#pragma once

#include "core/closing/season_review.h"
#include "core/edit/deeds.h"

#include <string>
#include <vector>

namespace topwire {

/// What is thought of for a planting's next leaf, and why.
struct NextLeaf {
  PlantingId planting;
  int leaf = 1;
  Vigour held = Vigour::moderate;  ///< what the next season has where nothing is settled
  Vigour vigour = Vigour::moderate;
  std::vector<Sentence> vigourReasons;
  std::optional<int> fruitFrom;  ///< to keep per tree
  std::optional<int> fruitTo;
  std::vector<Sentence> fruitReasons;

  friend bool operator==(const NextLeaf&, const NextLeaf&) = default;
};

/// For every planting that has a leaf in the season after `season`.
std::vector<NextLeaf> nextLeaves(const Orchard& orchard,
                                 const Trade& trade,
                                 Season season,
                                 Day today);

/// Trees to set where trees of a planting are missing.
struct ProposedReplant {
  PlantingId host;
  RowSet rows;
  int trees = 0;  ///< none, and nothing is planted, where 0
  Day planted{};

  friend bool operator==(const ProposedReplant&, const ProposedReplant&) = default;
};

/// What a person settles on when a season is closed; proposed, then changed in place.
struct SeasonProposal {
  Season season{};
  std::vector<SeasonTarget> targets;
  std::vector<ProposedReplant> replants;  ///< at most one for a replant's own gaps

  friend bool operator==(const SeasonProposal&, const SeasonProposal&) = default;
};

/// Classes and fruit as proposed, and a replant for every planting with missing trees:
/// in all of its rows, on the first day of the next season's spring (1 April, 1 October
/// in the south).
SeasonProposal proposalOf(const Orchard& orchard,
                          const SeasonReview& review,
                          const std::vector<NextLeaf>& leaves);
Day replantingDay(Season closed, Hemisphere hemisphere);

/// The season there is to close on `today`: the one before, where nobody closed it and it
/// is not yet time for this one; else this one. Nothing refuses it here.
Season seasonToClose(const Orchard& orchard, Day today);
/// 1 October (1 April in the south): work on trees in leaf is over, by and large.
Day closableFrom(Season season, Hemisphere hemisphere);

/// Targets for the next season, replants and the record that the season is closed, as one
/// change. Faults have "season", "by", or the planting's code with the field as their
/// place: "creek-1-gala.trees", ".fruit", ".rows", ".planted", ".vigour".
Checked<Change> closeSeason(const Orchard& orchard,
                            const TradeTables& tables,
                            const SeasonProposal& proposal,
                            const std::string& by,
                            Day today,
                            IdSource& ids);

}  // namespace topwire
