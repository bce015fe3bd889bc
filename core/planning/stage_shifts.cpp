#include "core/planning/stage_shifts.h"

#include "core/phenology/stage.h"

#include <algorithm>
#include <cstdlib>
#include <functional>
#include <tuple>

namespace topwire {

namespace {

/// A notice is read in passing.
constexpr std::size_t mostSentences = 3;
constexpr std::size_t mostBlocksNamed = 3;

/// As far as one job may wait for another that waits for a third, and so on.
constexpr int longestChain = 20;

/// The stage an edge hangs on, through the jobs it waits for; nothing where it hangs on a
/// fixed day or on work that is done.
const StageEstimate* stageBehind(const Plan& plan, const DateReason& edge) {
  const DateReason* reason = &edge;
  for (int link = 0; link < longestChain; ++link) {
    if (reason->byHand) return nullptr;
    if (reason->stage) return &*reason->stage;
    if (!reason->completion || reason->completion->done) return nullptr;
    const Task* task = plan.find(reason->completion->task);
    if (task == nullptr) return nullptr;
    reason = &task->closesWhy;
  }
  return nullptr;
}

/// How a stage moved in one planting; nothing where it stayed.
std::optional<StageShift> shiftOf(const Outlooks& before,
                                  const Outlooks& after,
                                  PlantingId planting,
                                  int bbch) {
  const auto find = [&](const Outlooks& outlooks) -> const StageEstimate* {
    const auto own = outlooks.find(planting);
    return own == outlooks.end() ? nullptr : own->second.find(bbch);
  };
  const StageEstimate* was = find(before);
  const StageEstimate* is = find(after);
  if (was == nullptr || is == nullptr || was->date == is->date) return std::nullopt;
  StageShift shift{bbch, daysBetween(was->date, is->date), {}, {planting}, 0};
  if (is->kind == StageKind::observed && was->kind != StageKind::observed)
    shift.seen = is->date;
  return shift;
}

bool sameWords(const StageShift& one, const StageShift& other) {
  return one.bbch == other.bbch && one.days == other.days && one.seen == other.seen;
}

Words counting(int count, const Words& one, const Words& many) {
  const Words& words = count == 1 ? one : many;
  const std::string number = std::to_string(count) + ' ';
  return {number + words.en, number + words.es};
}

Words capitalised(Words words) {
  for (std::string* text : {&words.en, &words.es})
    if (!text->empty() && text->front() >= 'a' && text->front() <= 'z')
      text->front() = static_cast<char>(text->front() - 'a' + 'A');
  return words;
}

Words placeOf(const Orchard& orchard, const std::vector<PlantingId>& plantings) {
  const auto names = placeNames(orchard, plantings);
  if (names.size() > mostBlocksNamed && plantings.size() == orchard.plantings.size())
    return {"in all blocks", "en todos los cuadros"};
  std::string named;
  const std::size_t count =
      names.size() > mostBlocksNamed ? mostBlocksNamed - 1 : names.size();
  for (std::size_t i = 0; i < count; ++i) named += (i == 0 ? "" : ", ") + names[i];
  if (count == names.size()) return {"at " + named, "en " + named};
  const std::string rest = std::to_string(names.size() - count);
  return {"at " + named + " and " + rest + " more",
          "en " + named + " y " + rest + " más"};
}

Sentence sentenceOf(const Orchard& orchard, const StageShift& shift) {
  const int days = std::abs(shift.days);
  const Words moved =
      shift.days < 0
          ? counting(days, {"day earlier", "día antes"}, {"days earlier", "días antes"})
          : counting(days, {"day later", "día después"}, {"days later", "días después"});
  const Words tasks = counting(shift.tasks,
                               {"task moved", "trabajo se movió"},
                               {"tasks moved", "trabajos se movieron"});
  std::vector<Value> values{capitalised(stageByCode(shift.bbch)->name),
                            placeOf(orchard, shift.plantings),
                            moved,
                            tasks};
  if (!shift.seen) return {phrase("Shift", "%1 %2 expected %3: %4."), std::move(values)};
  values.emplace_back(*shift.seen);
  return {phrase("Shift", "%1 %2 seen %5, %3 than expected: %4."), std::move(values)};
}

}  // namespace

std::vector<StageShift> stageShifts(const Outlooks& before,
                                    const Outlooks& after,
                                    Season season,
                                    const Plan& plan,
                                    const std::vector<PlanDifference>& differences) {
  std::vector<StageShift> shifts;
  for (const PlanDifference& difference : differences) {
    if (difference.kind != PlanDifference::Kind::moved) continue;
    const Task* task = plan.find(difference.task);
    if (task == nullptr || task->key.season != season) continue;
    const bool byClosing =
        std::abs(difference.closesShift) > std::abs(difference.opensShift);
    const StageEstimate* stage =
        stageBehind(plan, byClosing ? task->closesWhy : task->opensWhy);
    if (stage == nullptr) continue;
    auto shift = shiftOf(before, after, task->key.planting, stage->bbch);
    if (!shift) continue;
    auto same = std::ranges::find_if(
        shifts, [&](const StageShift& other) { return sameWords(*shift, other); });
    if (same == shifts.end()) same = shifts.insert(same, *shift);
    ++same->tasks;
    if (std::ranges::find(same->plantings, task->key.planting) == same->plantings.end())
      same->plantings.push_back(task->key.planting);
  }
  std::ranges::stable_sort(shifts, std::greater{}, [](const StageShift& shift) {
    return std::tuple{shift.seen.has_value(), shift.tasks, std::abs(shift.days)};
  });
  return shifts;
}

std::vector<Sentence> sentencesOf(const Orchard& orchard,
                                  const std::vector<StageShift>& shifts) {
  std::vector<Sentence> sentences;
  for (const StageShift& shift : shifts)
    if (sentences.size() < mostSentences) sentences.push_back(sentenceOf(orchard, shift));
  return sentences;
}

}  // namespace topwire
