#pragma once

#include "core/closing/next_season.h"

namespace topwire {

/// "missed"; as a word in a list.
Phrase nameOf(TaskOutcome outcome);

/// "12 done, 3 part done, 2 missed, 1 set aside, 4 still ahead."
Sentence countsOf(const PlantingReview& review);
Sentence countsOf(const SeasonReview& review);
/// "Planned 120.0 h; done of it 90.0 h; noted with ticks 97.5 h."
Sentence hoursOf(const PlantingReview& review);
/// What closing does, a sentence each: how many targets are settled for the next season,
/// which replants are planted and when.
std::vector<Sentence> effectsOf(const Orchard& orchard, const SeasonProposal& proposal);

}  // namespace topwire
