#include "core/programme/check_programme.h"

#include "core/programme/window_order.h"

#include <algorithm>
#include <set>

namespace topwire {

namespace {

struct Edge {
  std::string_view field;
  const Anchor* anchor;
};

std::vector<Edge> edgesOf(const ReadOperation& read) {
  std::vector<Edge> edges;
  if (read.has("opens")) edges.push_back({"opens", &read.operation.opens});
  if (read.has("closes")) edges.push_back({"closes", &read.operation.closes});
  if (read.has("cut-off")) edges.push_back({"cut-off", &read.operation.cutOff->anchor});
  return edges;
}

const std::string* reference(const Edge& edge) {
  const auto* completion = std::get_if<OnCompletion>(&edge.anchor->point);
  return completion == nullptr ? nullptr : &completion->operation;
}

int firstLeaf(const Operation& operation) {
  return std::ranges::min_element(operation.leaves, {}, &LeafRange::first)->first;
}

Words wordFor(Vigour vigour) {
  switch (vigour) {
    case Vigour::weak:
      return {"weak trees", "árboles débiles"};
    case Vigour::moderate:
      return {"moderate trees", "árboles de vigor medio"};
    case Vigour::strong:
      break;
  }
  return {"strong trees", "árboles vigorosos"};
}

Words wordFor(PlantingKind kind) {
  switch (kind) {
    case PlantingKind::main:
      return {"main plantings", "plantaciones principales"};
    case PlantingKind::pollinizer:
      return {"pollinizers", "polinizadores"};
    case PlantingKind::replant:
      break;
  }
  return {"replants", "replantes"};
}

class ProgrammeCheck {
public:
  ProgrammeCheck(const std::vector<ReadOperation>& operations, ProgrammeFaults& faults)
      : operations_(operations), faults_(faults) {}

  void run() {
    noteDuplicates();
    for (const ReadOperation& read : operations_) {
      checkLeavesGiven(read);
      for (const Edge& edge : edgesOf(read)) checkReference(read, edge);
      checkOrder(read);
    }
    for (const ReadOperation& read : operations_) follow(read);
  }

private:
  void noteDuplicates() {
    for (const ReadOperation& read : operations_) {
      if (!read.has("id")) continue;
      const auto [first, isNew] = byId_.emplace(read.operation.id, &read);
      if (isNew) continue;
      faults_.add(read.lines.at("id"),
                  Sentence{phrase("Programme",
                                  "In %1, the id is the same as in line %2; give each "
                                  "operation an id of its own."),
                           {read.owner, std::int64_t{first->second->lines.at("id")}}});
    }
  }

  void checkLeavesGiven(const ReadOperation& read) {
    if (!read.has("opens") || !read.has("leaves") || !read.operation.leaves.empty())
      return;
    if (std::holds_alternative<OnPlanting>(read.operation.opens.point)) return;
    faults_.add(read.operation.line,
                Sentence{phrase("Programme",
                                "In %1, leaves is missing; only work that opens on the "
                                "planting day may leave it out, so add a line such as: "
                                "leaves = \"1-3\""),
                         {read.owner}});
  }

  void checkReference(const ReadOperation& read, const Edge& edge) {
    const std::string* wanted = reference(edge);
    if (wanted == nullptr) return;
    const int line = read.lines.find(edge.field)->second;
    const Value field{std::string{edge.field}};
    if (*wanted == read.operation.id) {
      faults_.add(line,
                  Sentence{phrase("Programme",
                                  "In %1, %2 hangs on the operation itself; name another "
                                  "one, a stage or a month."),
                           {read.owner, field}});
      return;
    }
    const auto found = byId_.find(*wanted);
    if (found == byId_.end())
      noteUnknown(read, line, field, *wanted);
    else
      checkDoneBefore(read, line, field, found->second->operation);
  }

  void noteUnknown(const ReadOperation& read,
                   int line,
                   const Value& field,
                   const std::string& wanted) {
    std::vector<std::string> ids;
    ids.reserve(byId_.size());
    for (const auto& [id, known] : byId_) ids.push_back(id);
    const std::string meant = likeliestOf(ids, wanted);
    const Phrase said =
        meant.empty()
            ? phrase("Programme",
                     "In %1, %2 hangs on “%3”, which no operation has as its id; name "
                     "one that is there.")
            : phrase("Programme",
                     "In %1, %2 hangs on “%3”, which no operation has as its id; did you "
                     "mean “%4”?");
    faults_.add(line, Sentence{said, {read.owner, field, wanted, meant}});
  }

  /// What it hangs on has to be done on the same trees, in the same leaf or an earlier
  /// one; else there would be no day to count from.
  void checkDoneBefore(const ReadOperation& read,
                       int line,
                       const Value& field,
                       const Operation& other) {
    const Operation& own = read.operation;
    std::vector<Words> lacking;
    for (const Vigour vigour : own.vigours)
      if (!other.vigours.contains(vigour)) lacking.push_back(wordFor(vigour));
    for (const PlantingKind kind : own.kinds)
      if (!other.kinds.contains(kind)) lacking.push_back(wordFor(kind));
    for (const Words& trees : lacking)
      faults_.add(line,
                  Sentence{phrase("Programme",
                                  "In %1, %2 hangs on %3, which is not done on %4; leave "
                                  "them out here or add them there."),
                           {read.owner, field, other.id, trees}});
    if (own.leaves.empty() || other.leaves.empty()) return;
    if (firstLeaf(other) <= firstLeaf(own)) return;
    faults_.add(line,
                Sentence{phrase("Programme",
                                "In %1, %2 hangs on %3, which is first done in leaf %4, "
                                "after leaf %5 of this one; change the leaves of one of "
                                "them."),
                         {read.owner,
                          field,
                          other.id,
                          std::int64_t{firstLeaf(other)},
                          std::int64_t{firstLeaf(own)}}});
  }

  void checkOrder(const ReadOperation& read) {
    const std::vector<Edge> edges = edgesOf(read);
    for (std::size_t i = 1; i < edges.size(); ++i) {
      const auto most = mostDaysBetween(*edges[i - 1].anchor, *edges[i].anchor);
      if (!most || *most >= 0) continue;
      faults_.add(
          read.lines.find(edges[i].field)->second,
          Sentence{phrase("Programme", "In %1, %2 comes before %3; move one of the two."),
                   {read.owner,
                    std::string{edges[i].field},
                    std::string{edges[i - 1].field}}});
    }
  }

  /// Walks along the anchors; a step back into the walk closes a circle.
  void follow(const ReadOperation& read) {
    const auto begun = std::ranges::find(walk_, &read);
    if (begun != walk_.end()) return noteCircle({begun, walk_.end()});
    if (!followed_.insert(&read).second) return;
    walk_.push_back(&read);
    for (const Edge& edge : edgesOf(read)) {
      const std::string* wanted = reference(edge);
      const auto next = wanted == nullptr ? byId_.end() : byId_.find(*wanted);
      if (next != byId_.end() && next->second != &read) follow(*next->second);
    }
    walk_.pop_back();
  }

  void noteCircle(std::vector<const ReadOperation*> circle) {
    circle.push_back(circle.front());
    std::vector<std::string> ids;
    ids.reserve(circle.size());
    for (const ReadOperation* read : circle) ids.push_back(read->operation.id);
    const std::string round = joined(ids, " → ");
    if (!circles_.insert(round).second) return;
    faults_.add(circle.front()->operation.line,
                Sentence{phrase("Programme",
                                "In %1, the anchors go round in a circle (%2); hang one "
                                "of these on a stage, a month or the planting day."),
                         {circle.front()->owner, round}});
  }

  const std::vector<ReadOperation>& operations_;
  ProgrammeFaults& faults_;
  std::map<std::string, const ReadOperation*, std::less<>> byId_;
  std::vector<const ReadOperation*> walk_;
  std::set<const ReadOperation*> followed_;
  std::set<std::string> circles_;
};

}  // namespace

void checkOperations(const std::vector<ReadOperation>& operations,
                     ProgrammeFaults& faults) {
  ProgrammeCheck{operations, faults}.run();
}

}  // namespace topwire
