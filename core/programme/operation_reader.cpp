#include "core/programme/operation_reader.h"

#include "core/programme/anchor_reader.h"
#include "core/programme/condition_reader.h"
#include "core/programme/leaf_ranges.h"

#include <algorithm>
#include <array>

namespace topwire {

namespace {

constexpr int mostLinesOfHow = 3;
constexpr int mostSeconds = 24 * 3600;

const std::vector<std::string>& vigourNames() {
  static const std::vector<std::string> names{"weak", "moderate", "strong"};
  return names;
}

const std::vector<std::string>& kindNames() {
  static const std::vector<std::string> names{"main", "pollinizer", "replant"};
  return names;
}

const std::vector<std::string>& avoidNames() {
  static const std::vector<std::string> names{"wet", "frost", "heat", "wind", "spray"};
  return names;
}

const std::vector<std::string>& delayCostNames() {
  static const std::vector<std::string> names{"low", "medium", "high", "very high"};
  return names;
}

/// In the order of Per.
constexpr std::array<std::string_view, 5> perNames{
    "per-tree", "per-post", "per-row-end", "per-metre-of-row", "per-metre-of-wire"};

/// What a material is counted by, and how much of it.
void readAmount(ProgrammeFields& entry, Material& material) {
  std::vector<std::string_view> given;
  for (const std::string_view per : perNames)
    if (entry.node(per) != nullptr) given.push_back(per);
  if (given.empty()) return entry.missing(perNames.front(), "per-tree = 1");
  if (given.size() > 1)
    return entry.fault(given[1],
                       phrase("Programme",
                              "In %1, %2 stands beside %3; a material is counted by one "
                              "of them, so keep one."),
                       {std::string{given[0]}});
  const auto* per = std::ranges::find(perNames, given.front());
  material.per = static_cast<Per>(per - perNames.begin());
  material.amount = entry.positive(given.front()).value_or(0);
}

/// The chosen names as a set of an enumeration whose values follow `names`.
template <class Choice>
std::set<Choice> readChoices(ProgrammeFields& fields,
                             std::string_view key,
                             const std::vector<std::string>& names,
                             std::set<Choice> unsaid) {
  if (!fields.has(key)) {
    fields.node(key);
    return unsaid;
  }
  std::set<Choice> chosen;
  for (const std::string& name : fields.texts(key)) {
    const auto found = std::ranges::find(names, lowerCase(name));
    if (found == names.end())
      fields.notAmong(key, name, names);
    else
      chosen.insert(static_cast<Choice>(found - names.begin()));
  }
  return chosen;
}

Words ownerOf(const toml::table& table, int number) {
  const auto id = table["id"].value_exact<std::string>();
  const std::string name = id ? *id : std::to_string(number);
  return {"operation " + name, "la operación " + name};
}

bool isKebab(std::string_view id) {
  const bool lettersOnly = std::ranges::all_of(id, [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
  });
  return lettersOnly && !id.empty() && id.front() != '-' && id.back() != '-';
}

/// Words of small letters, in any script.
bool isSkill(std::string_view text) {
  const bool spaced = text.empty() || text.front() == ' ' || text.back() == ' ';
  return !spaced && std::ranges::none_of(text, [](char c) {
    return (c >= 'A' && c <= 'Z') || c == ',';
  });
}

class OperationReader {
public:
  OperationReader(const toml::table& table, int number, ProgrammeFaults& faults)
      : fields_(table, ownerOf(table, number), {}, faults) {
    read_.owner = fields_.owner();
    operation().line = fields_.line();
  }

  ReadOperation read() {
    readNames();
    readReach();
    readWindow();
    readConditionsOfDoing();
    readDelay();
    readSeconds();
    readInstructions();
    readMaterials();
    fields_.refuseOthers();
    return std::move(read_);
  }

private:
  Operation& operation() { return read_.operation; }

  void note(std::string_view key) {
    read_.lines.emplace(std::string{key}, fields_.lineOf(key));
  }

  std::string requiredText(std::string_view key, std::string_view example) {
    if (!fields_.has(key)) fields_.missing(key, example);
    return fields_.text(key).value_or("");
  }

  Words requiredWords(std::string_view key, std::string_view example) {
    if (!fields_.has(key)) fields_.missing(key, example);
    return fields_.words(key).value_or(Words{});
  }

  void readNames() {
    operation().id = requiredText("id", "id = \"leader-tie\"");
    if (!operation().id.empty()) note("id");
    if (!operation().id.empty() && !isKebab(operation().id))
      fields_.fault("id",
                    phrase("Programme",
                           "In %1, %2 may hold small letters a to z, digits and hyphens "
                           "only; write it like leader-tie."));
    operation().name = requiredWords("name", "name.en = \"Tie the leader\"");
    operation().shortName = fields_.words("short").value_or(operation().name);
    operation().drawing = fields_.text("drawing").value_or(operation().id);
    operation().source = requiredText("source", "source = \"common practice\"");
  }

  void readReach() {
    operation().leaves = readLeafRanges(fields_, "leaves");
    if (!operation().leaves.empty() || !fields_.has("leaves")) note("leaves");
    operation().vigours =
        readChoices<Vigour>(fields_,
                            "vigour",
                            vigourNames(),
                            {Vigour::weak, Vigour::moderate, Vigour::strong});
    operation().kinds = readChoices<PlantingKind>(
        fields_,
        "plantings",
        kindNames(),
        {PlantingKind::main, PlantingKind::pollinizer, PlantingKind::replant});
    operation().avoid = readChoices<Avoid>(fields_, "avoid", avoidNames(), {});
    operation().cuts = fields_.flag("cuts").value_or(false);
    readSkill();
  }

  /// Compared as it is written, so that one spelling is let through.
  void readSkill() {
    const auto skill = fields_.text("skill");
    operation().skill = skill.value_or("");
    if (skill && !isSkill(*skill))
      fields_.fault("skill",
                    phrase("Programme",
                           "In %1, %2 names a skill in small letters, such as pruning; "
                           "leave it out where anyone can do the work."));
  }

  std::optional<Anchor> readEdge(std::string_view key) {
    auto edge = fields_.table(key);
    if (!edge) {
      if (!fields_.has(key))
        fields_.missing(key, std::string{key} + " = { stage = \"green tip\" }");
      return std::nullopt;
    }
    auto anchor = readAnchor(*edge);
    edge->refuseOthers();
    if (anchor) note(key);
    return anchor;
  }

  void readWindow() {
    operation().opens = readEdge("opens").value_or(Anchor{});
    operation().closes = readEdge("closes").value_or(Anchor{});
    auto cutOff = fields_.table("cut-off");
    if (!cutOff) return;
    const auto anchor = readAnchor(*cutOff);
    if (!cutOff->has("reason"))
      cutOff->missing("reason", "cut-off.reason.en = \"Sprays begin\"");
    const Words reason = cutOff->words("reason").value_or(Words{});
    cutOff->refuseOthers();
    if (!anchor) return;
    note("cut-off");
    operation().cutOff = CutOff{*anchor, reason};
  }

  void readConditionsOfDoing() {
    if (fields_.has("needs")) note("needs");
    operation().needs = fields_.texts("needs");
    if (fields_.has("when")) note("when");
    operation().when = readConditions(fields_, "when");
    if (fields_.has("repeat")) note("repeat");
    operation().repeat = readRepeat(fields_);
  }

  void readDelay() {
    auto late = fields_.table("if-late");
    if (!late) return;
    if (!late->has("cost")) late->missing("cost", "if-late.cost = \"medium\"");
    const auto cost = late->text("cost");
    const auto found =
        std::ranges::find(delayCostNames(), lowerCase(cost.value_or("medium")));
    if (found == delayCostNames().end())
      late->notAmong("cost", *cost, delayCostNames());
    else
      operation().delayCost = static_cast<DelayCost>(found - delayCostNames().begin());
    operation().delayReason = late->ownWords();
    late->refuseOthers();
  }

  /// A number, or one from each leaf on. Zero alone says: not counted by the tree.
  void readSeconds() {
    constexpr std::string_view key = "seconds-per-tree";
    const toml::node* node = fields_.node(key);
    if (node == nullptr) return fields_.missing(key, "seconds-per-tree = 24");
    auto byLeaf = node->is_table() ? fields_.table(key) : std::nullopt;
    if (!byLeaf) {
      const auto seconds = fields_.whole(key, 0, mostSeconds);
      if (seconds) operation().secondsPerTree = {{1, *seconds}};
      return;
    }
    for (const std::string& leaf : byLeaf->keys()) {
      const auto number = readLeaf(leaf);
      const auto seconds = number ? byLeaf->whole(leaf, 1, mostSeconds) : std::nullopt;
      if (!number)
        byLeaf->fault(byLeaf->node(leaf) == nullptr ? "" : leaf,
                      phrase("Programme", "In %1, %2 names no leaf; write 1, 2, 3 ..."));
      if (seconds) operation().secondsPerTree[*number] = *seconds;
    }
  }

  void readInstructions() {
    if (!fields_.has("how"))
      fields_.missing("how", "how.en = [\"Tie the leader upright.\"]");
    operation().how = fields_.wordLists("how");
    if (operation().how.size() > mostLinesOfHow)
      fields_.fault("how",
                    phrase("Programme",
                           "In %1, %2 has %3 lines; the sheet has room for three, so "
                           "shorten it."),
                    {static_cast<std::int64_t>(operation().how.size())});
    operation().doneWhen =
        requiredWords("done-when", "done-when.en = \"Every leader is tied\"");
    operation().tools = fields_.wordLists("tools");
    operation().caution = fields_.words("caution").value_or(Words{});
  }

  void readMaterials() {
    for (ProgrammeFields& entry : fields_.tables("materials")) {
      for (const std::string_view key : {"item", "en", "es"})
        if (!entry.has(key)) entry.missing(key, "soft tie");
      Material material;
      material.item = entry.text("item").value_or("");
      material.name = {entry.text("en").value_or(""), entry.text("es").value_or("")};
      readAmount(entry, material);
      entry.refuseOthers();
      operation().materials.push_back(std::move(material));
    }
  }

  ProgrammeFields fields_;
  ReadOperation read_;
};

}  // namespace

ReadOperation readOperation(const toml::table& table,
                            int number,
                            ProgrammeFaults& faults) {
  return OperationReader{table, number, faults}.read();
}

}  // namespace topwire
