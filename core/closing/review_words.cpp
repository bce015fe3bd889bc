#include "core/closing/review_words.h"

#include <algorithm>

namespace topwire {

namespace {

template <class Review>
Sentence counts(const Review& review) {
  const auto count = [&review](TaskOutcome outcome) {
    return Value{std::int64_t{review.count(outcome)}};
  };
  return {
      phrase("Season", "%1 done, %2 part done, %3 missed, %4 set aside, %5 still ahead."),
      {count(TaskOutcome::done),
       count(TaskOutcome::partDone),
       count(TaskOutcome::missed),
       count(TaskOutcome::setAside),
       count(TaskOutcome::ahead)}};
}

bool changes(const Orchard& orchard, const SeasonTarget& target) {
  const auto held = orchard.targets.find(target.of);
  if (held != orchard.targets.end()) return held->second != target;
  return target.vigour || target.fruitFrom || target.fruitTo || !target.note.empty();
}

Sentence targetsSettled(const Orchard& orchard, const SeasonProposal& proposal) {
  const std::int64_t settled = std::ranges::count_if(
      proposal.targets,
      [&orchard](const SeasonTarget& target) { return changes(orchard, target); });
  const std::string next = nameOf(proposal.season.plus(1), orchard.settings.hemisphere());
  if (settled == 0)
    return {phrase("Season", "Classes and fruit for %1 stay as they are."), {next}};
  return {
      counted(settled,
              phrase("Season", "Class and fruit are settled for %1 in %2 planting."),
              phrase("Season", "Class and fruit are settled for %1 in %2 plantings.")),
      {next, settled}};
}

}  // namespace

Phrase nameOf(TaskOutcome outcome) {
  switch (outcome) {
    case TaskOutcome::done:
      return phrase("Season", "done");
    case TaskOutcome::partDone:
      return phrase("Season", "part done");
    case TaskOutcome::missed:
      return phrase("Season", "missed");
    case TaskOutcome::setAside:
      return phrase("Season", "set aside");
    case TaskOutcome::ahead:
      break;
  }
  return phrase("Season", "still ahead");
}

Sentence countsOf(const PlantingReview& review) {
  return counts(review);
}

Sentence countsOf(const SeasonReview& review) {
  return counts(review);
}

Sentence hoursOf(const PlantingReview& review) {
  return {phrase("Season", "Planned %1 h; done of it %2 h; noted with ticks %3 h."),
          {Figure{review.hoursPlanned(), 1},
           Figure{review.hoursDone(), 1},
           Figure{review.hoursNoted(), 1}}};
}

std::vector<Sentence> effectsOf(const Orchard& orchard, const SeasonProposal& proposal) {
  std::vector<Sentence> effects{targetsSettled(orchard, proposal)};
  for (const ProposedReplant& replant : proposal.replants) {
    const auto host = orchard.plantings.find(replant.host);
    if (replant.trees == 0 || host == orchard.plantings.end()) continue;
    effects.push_back(
        {counted(replant.trees,
                 phrase("Season", "%1 tree is replanted in %2 on %3."),
                 phrase("Season", "%1 trees are replanted in %2 on %3.")),
         {std::int64_t{replant.trees}, host->second.code, replant.planted}});
  }
  return effects;
}

}  // namespace topwire
