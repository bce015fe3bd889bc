#include "core/programme/check_needs.h"

#include <algorithm>
#include <set>

namespace topwire {

namespace {

/// What an operation waits for, by a need or by an anchor that counts from its end.
struct WaitsFor {
  std::string operation;
  bool isNeed;
};

void addAnchor(std::vector<WaitsFor>& waits, const Anchor& anchor) {
  if (const auto* after = std::get_if<OnCompletion>(&anchor.point))
    waits.push_back({after->operation, false});
}

std::vector<WaitsFor> waitsOf(const Operation& operation) {
  std::vector<WaitsFor> waits;
  for (const std::string& need : operation.needs) waits.push_back({need, true});
  addAnchor(waits, operation.opens);
  addAnchor(waits, operation.closes);
  if (operation.cutOff) addAnchor(waits, operation.cutOff->anchor);
  return waits;
}

class NeedsCheck {
public:
  NeedsCheck(const std::vector<ReadOperation>& operations, ProgrammeFaults& faults)
      : operations_(operations), faults_(faults) {
    for (const ReadOperation& read : operations)
      if (read.has("id")) byId_.emplace(read.operation.id, &read);
  }

  void run() {
    for (const ReadOperation& read : operations_) {
      for (const std::string& need : read.operation.needs) checkNeed(read, need);
      checkUntil(read);
    }
    for (const ReadOperation& read : operations_) follow(read, false);
  }

private:
  void checkNeed(const ReadOperation& read, const std::string& need) {
    const int line = read.lines.at("needs");
    if (need == read.operation.id)
      faults_.add(line,
                  Sentence{phrase("Programme",
                                  "In %1, needs names the operation itself; name the "
                                  "work that has to be done before it."),
                           {read.owner}});
    else if (!byId_.contains(need))
      noteUnknown(read, line, need);
  }

  void noteUnknown(const ReadOperation& read, int line, const std::string& need) {
    std::vector<std::string> ids;
    for (const auto& [id, known] : byId_) ids.push_back(id);
    const std::string meant = likeliestOf(ids, need);
    const Phrase said =
        meant.empty() ? phrase("Programme",
                               "In %1, needs names “%2”, which no operation has as its "
                               "id; name one that is there.")
                      : phrase("Programme",
                               "In %1, needs names “%2”, which no operation has as its "
                               "id; did you mean “%3”?");
    faults_.add(line, Sentence{said, {read.owner, need, meant}});
  }

  /// What has to hold before the work is asked for must not be what ends it.
  void checkUntil(const ReadOperation& read) {
    const auto& repeat = read.operation.repeat;
    if (!repeat || !repeat->until) return;
    if (std::ranges::find(read.operation.when, *repeat->until)
        == read.operation.when.end())
      return;
    faults_.add(read.lines.at("repeat"),
                Sentence{phrase("Programme",
                                "In %1, repeat.until ends the visits by what when asks "
                                "for, so none would be left; change one of the two."),
                         {read.owner}});
  }

  /// Walks along what is waited for; a step back into the walk closes a circle. Circles
  /// of anchors alone are noted elsewhere.
  void follow(const ReadOperation& read, bool byNeed) {
    const auto begun = std::ranges::find(walk_, &read, &Step::read);
    if (begun != walk_.end()) return noteCircle({begun, walk_.end()}, byNeed);
    if (!followed_.insert(&read).second) return;
    walk_.push_back({&read, byNeed});
    for (const WaitsFor& waits : waitsOf(read.operation)) {
      const auto next = byId_.find(waits.operation);
      if (next != byId_.end() && next->second != &read)
        follow(*next->second, waits.isNeed);
    }
    walk_.pop_back();
  }

  struct Step {
    const ReadOperation* read;
    bool byNeed;  ///< the step that led here
  };

  /// `closedByNeed` is the step from the last one back to the first, whose own step led
  /// into the circle and is no part of it.
  void noteCircle(std::vector<Step> circle, bool closedByNeed) {
    circle.front().byNeed = closedByNeed;
    if (std::ranges::none_of(circle, &Step::byNeed)) return;
    std::vector<std::string> ids;
    for (const Step& step : circle) ids.push_back(step.read->operation.id);
    ids.push_back(ids.front());
    const std::string round = joined(ids, " → ");
    if (!circles_.insert(round).second) return;
    const auto waiting = std::ranges::find_if(
        circle, [](const Step& step) { return !step.read->operation.needs.empty(); });
    faults_.add(waiting->read->lines.at("needs"),
                Sentence{phrase("Programme",
                                "In %1, the work waits in a circle (%2), so none of it "
                                "could begin; take a name out of needs."),
                         {waiting->read->owner, round}});
  }

  const std::vector<ReadOperation>& operations_;
  ProgrammeFaults& faults_;
  std::map<std::string, const ReadOperation*, std::less<>> byId_;
  std::vector<Step> walk_;
  std::set<const ReadOperation*> followed_;
  std::set<std::string> circles_;
};

}  // namespace

void checkNeeds(const std::vector<ReadOperation>& operations, ProgrammeFaults& faults) {
  NeedsCheck{operations, faults}.run();
}

}  // namespace topwire
