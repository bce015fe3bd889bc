#include "core/material/material_list.h"

#include "core/material/material_counts.h"
#include "core/planning/explain.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <set>

namespace topwire {

namespace {

/// Orders, site and trees' holes begin as much as this before the first leaf.
constexpr int seasonsBeforeFirstLeaf = 4;
constexpr const char* treeItem = "tree";

bool stillAsks(TaskState state) {
  return state != TaskState::done && state != TaskState::setAside
         && state != TaskState::lapsed;
}

/// Sums may be a hair above a whole number they stand for.
double wholeAbove(double amount) {
  return std::ceil(amount - 1e-6);
}

class ListMaker {
public:
  ListMaker(const Orchard& orchard, const Trade& trade)
      : orchard_(&orchard), trade_(&trade) {}

  void add(const TaskView& view) {
    const Operation* operation =
        operationOf(*orchard_, trade_->programmes, view.task->key);
    if (operation == nullptr || !stillAsks(view.state)) return;
    for (const Material& material : operation->materials) add(view, *operation, material);
  }

  void add(const Material& material, MaterialUse use) {
    if (use.amount <= 0) return;
    MaterialLine& line = lineOf(material);
    line.needed += use.amount;
    line.uses.push_back(std::move(use));
  }

  bool has(const std::string& item) const { return lines_.contains(item); }

  MaterialList make() && {
    MaterialList list;
    for (const MaterialItem& known : trade_->tables.materials)
      if (const auto line = lines_.find(known.name); line != lines_.end())
        list.lines.push_back(settled(line->second, known));
    for (auto& [item, line] : lines_)
      if (trade_->tables.material(item) == nullptr)
        list.lines.push_back(settled(std::move(line)));
    list.notes = std::move(notes_);
    return list;
  }

private:
  void add(const TaskView& view, const Operation& operation, const Material& material) {
    const Task& task = *view.task;
    const Planting& planting = orchard_->plantings.at(task.key.planting);
    const double rows = task.rows.count() - view.progress.rowsDone();
    const double count = countIn(rows, material.per, *orchard_, trade_->tables, planting);
    if (count <= 0 && rows > 0) noteUncounted(planting);
    add(material, {task.key, titleOf(task, &operation), material.amount * count});
  }

  void noteUncounted(const Planting& planting) {
    const bool isReplant = planting.kind == PlantingKind::replant;
    if (isReplant || !uncounted_.insert(planting.id).second) return;
    notes_.emplace_back(
        phrase("Material",
               "Trees or row length of %1 are not said, so not all of its material is "
               "counted."),
        std::vector<Value>{planting.code});
  }

  MaterialLine& lineOf(const Material& material) {
    MaterialLine& line = lines_[material.item];
    if (line.item.empty()) {
      line.item = material.item;
      line.name = material.name;
    }
    return line;
  }

  static MaterialLine settled(MaterialLine line) {
    line.needed = line.toBuy = wholeAbove(line.needed);
    return line;
  }

  static MaterialLine settled(MaterialLine line, const MaterialItem& item) {
    line.name = item.label;
    line.unit = item.unit;
    line.share = item.share;
    line.sparePercent = item.sparePercent;
    line.pack = item.pack;
    line.toBuy = line.needed * item.share * (1 + item.sparePercent / 100);
    line.packs = static_cast<int>(wholeAbove(line.toBuy / item.packSize));
    if (item.unit != MaterialUnit::piece) return line;
    line.needed = wholeAbove(line.needed);
    line.toBuy = wholeAbove(line.toBuy);
    return line;
  }

  const Orchard* orchard_;
  const Trade* trade_;
  std::map<std::string, MaterialLine> lines_;
  std::set<PlantingId> uncounted_;
  std::vector<Sentence> notes_;
};

/// Trees of a planting whose programme has no work that asks for them.
MaterialUse treesThemselves(const Orchard& orchard, const Planting& planting) {
  const Season first = firstLeafSeason(planting.planted, orchard.settings.hemisphere());
  return {{planting.id, {}, first, 1},
          {"planting", "plantación"},
          static_cast<double>(treesIn(orchard, planting))};
}

struct Shown {
  double value;
  int decimals;
  Phrase phrase;
};

constexpr double gramsPerPound = 453.59237;
constexpr double millilitresPerGallon = 3785.411784;
constexpr double metresPerFoot = 0.3048;

Shown shownAs(double amount, MaterialUnit unit, UnitSystem units) {
  const bool metric = units == UnitSystem::metric;
  if (unit == MaterialUnit::gram)
    return metric ? Shown{amount / 1000, 1, phrase("Material", "%1 kg")}
                  : Shown{amount / gramsPerPound, 1, phrase("Material", "%1 lb")};
  if (unit == MaterialUnit::millilitre)
    return metric ? Shown{amount / 1000, 1, phrase("Material", "%1 L")}
                  : Shown{amount / millilitresPerGallon, 1, phrase("Material", "%1 gal")};
  return metric ? Shown{amount, 0, phrase("Material", "%1 m")}
                : Shown{amount / metresPerFoot, 0, phrase("Material", "%1 ft")};
}

}  // namespace

MaterialList materialOf(const Orchard& orchard,
                        const Trade& trade,
                        const std::vector<const TaskView*>& views) {
  ListMaker maker{orchard, trade};
  for (const TaskView* view : views) maker.add(*view);
  return std::move(maker).make();
}

MaterialList materialOfWeek(const Orchard& orchard,
                            const Trade& trade,
                            const Plan& plan,
                            IsoWeek week,
                            Day today) {
  const auto views = viewsOf(orchard, plan, today);
  std::vector<const TaskView*> due;
  for (const TaskView& view : views)
    if (isDueIn(view, daysOf(week))) due.push_back(&view);
  return materialOf(orchard, trade, due);
}

MaterialList materialOfSeason(const Orchard& orchard,
                              const Trade& trade,
                              const Plan& plan,
                              Season season,
                              Day today) {
  const auto views = viewsOf(orchard, plan, today);
  std::vector<const TaskView*> planned;
  for (const TaskView& view : views)
    if (view.task->key.season == season) planned.push_back(&view);
  return materialOf(orchard, trade, planned);
}

MaterialList materialOfPlanting(const Orchard& orchard,
                                const Trade& trade,
                                const Planting& planting,
                                Day today) {
  const Season first = firstLeafSeason(planting.planted, orchard.settings.hemisphere());
  Orchard alone = orchard;
  std::erase_if(alone.plantings, [&](const auto& entry) {
    return entry.second.kind != PlantingKind::replant && entry.first != planting.id;
  });
  const Plan plan = planTasks(
      alone, trade, SeasonSpan{first.plus(-seasonsBeforeFirstLeaf), first}, today);
  const auto views = viewsOf(orchard, plan, today);
  ListMaker maker{orchard, trade};
  for (const TaskView& view : views)
    if (view.task->key.planting == planting.id && view.task->leaf <= 1) maker.add(view);
  if (!maker.has(treeItem))
    maker.add({treeItem, {"tree", "árbol"}, 1, Per::tree},
              treesThemselves(orchard, planting));
  return std::move(maker).make();
}

std::vector<MaterialWork> workOf(const MaterialLine& line) {
  std::vector<MaterialWork> works;
  for (const MaterialUse& use : line.uses) {
    auto work = std::ranges::find(works, use.title, &MaterialWork::title);
    if (work == works.end()) work = works.insert(works.end(), {use.title, {}, 0});
    work->amount += use.amount;
    if (std::ranges::find(work->plantings, use.task.planting) == work->plantings.end())
      work->plantings.push_back(use.task.planting);
  }
  std::ranges::stable_sort(works, std::greater{}, &MaterialWork::amount);
  return works;
}

Sentence amountText(double amount, MaterialUnit unit, UnitSystem units) {
  if (unit == MaterialUnit::piece)
    return {phrase("Material", "%1"), {static_cast<std::int64_t>(std::llround(amount))}};
  const Shown shown = shownAs(amount, unit, units);
  return {shown.phrase, {Figure{shown.value, shown.decimals}}};
}

Sentence packsText(const MaterialLine& line) {
  return {phrase("Material", "%1 × %2"), {std::int64_t{line.packs}, line.pack}};
}

}  // namespace topwire
