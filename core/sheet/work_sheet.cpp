#include "core/sheet/work_sheet.h"

#include "core/material/material_counts.h"
#include "core/planning/explain.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace topwire {

namespace {

/// Done work stays on the sheet of the week it was finished in.
bool finishedIn(const TaskView& view, DaySpan days) {
  return view.state == TaskState::done && view.progress.lastTick
         && days.contains(*view.progress.lastTick);
}

std::vector<SheetRow> rowsOf(const TaskView& view) {
  const RowSet whole = view.progress.wholeRows();
  const RowSet part = view.progress.partRows();
  std::vector<SheetRow> rows;
  for (const int row : view.task->rows.rows())
    rows.push_back({row,
                    whole.contains(row)  ? RowCell::done
                    : part.contains(row) ? RowCell::partly
                                         : RowCell::toDo});
  return rows;
}

class SheetMaker {
public:
  SheetMaker(const Orchard& orchard, const Trade& trade)
      : orchard_(&orchard), trade_(&trade) {}

  SheetJob job(const TaskView& view) const {
    const Task& task = *view.task;
    const Planting& planting = orchard_->plantings.at(task.key.planting);
    SheetJob job{};
    job.task = task.key;
    job.operation = task.key.operation;
    job.cultivar = planting.cultivar;
    job.kind = planting.kind;
    job.leaf = task.leaf;
    job.vigour = task.vigour;
    job.state = view.state;
    job.opens = task.opens;
    job.closes = task.closes;
    job.cutOff = task.cutOff;
    job.rows = rowsOf(view);
    job.hoursLeft = view.hoursLeft;
    job.treesLeft =
        (task.rows.count() - view.progress.rowsDone()) * treesPerRow(*orchard_, planting);
    const Operation* operation = operationOf(*orchard_, trade_->programmes, task.key);
    job.title = titleOf(task, operation);
    if (operation) {
      describe(job, *operation);
      for (const Material& material : operation->materials)
        job.materials.push_back(toTake(material, view, planting));
    }
    return job;
  }

  /// Jobs of a block: what others wait for first, as far as the programme says; then by
  /// closing, which is what a crew leader expects.
  void putInOrder(std::vector<SheetJob>& jobs) const {
    std::ranges::sort(jobs, {}, [](const SheetJob& job) {
      return std::tuple{job.state == TaskState::done, job.closes, job.task};
    });
    for (bool settled = false; !settled;) {
      settled = true;
      for (std::size_t i = 1; i < jobs.size(); ++i)
        for (std::size_t before = 0; before < i && settled; ++before)
          if (waitsFor(jobs[before], jobs[i])) {
            const auto at = [&jobs](std::size_t index) {
              return jobs.begin() + static_cast<std::ptrdiff_t>(index);
            };
            std::rotate(at(before), at(i), at(i + 1));
            settled = false;
          }
    }
  }

private:
  bool waitsFor(const SheetJob& job, const SheetJob& other) const {
    if (job.task.planting != other.task.planting) return false;
    const Operation* operation = operationOf(*orchard_, trade_->programmes, job.task);
    if (!operation) return false;
    const auto* after = std::get_if<OnCompletion>(&operation->opens.point);
    return after != nullptr && after->operation == other.operation;
  }

  SheetMaterial toTake(const Material& material,
                       const TaskView& view,
                       const Planting& planting) const {
    const double rows = view.task->rows.count() - view.progress.rowsDone();
    SheetMaterial made{
        material.name,
        material.amount
            * countIn(rows, material.per, *orchard_, trade_->tables, planting)};
    made.units = orchard_->settings.units;
    if (const MaterialItem* item = trade_->tables.material(material.item)) {
      made.name = item->label;
      made.unit = item->unit;
    }
    if (made.unit == MaterialUnit::piece) made.count = std::ceil(made.count - 1e-6);
    return made;
  }

  static void describe(SheetJob& job, const Operation& operation) {
    job.how = operation.how;
    job.doneWhen = operation.doneWhen;
    job.tools = operation.tools;
    job.avoid = operation.avoid;
    job.caution = operation.caution;
    job.drawing = operation.drawing;
    if (operation.cutOff) job.cutOffReason = operation.cutOff->reason;
  }

  const Orchard* orchard_;
  const Trade* trade_;
};

Day mostUrgent(const SheetBlock& block) {
  const auto closing = [](const SheetJob& job) {
    return job.state == TaskState::done ? Day::max() : job.closes;
  };
  return closing(*std::ranges::min_element(block.jobs, {}, closing));
}

/// Numbers the jobs through the sheet and points those that repeat an earlier one to it.
void number(WorkSheet& sheet) {
  int next = 1;
  std::map<std::string, int> firstOf;
  for (SheetBlock& block : sheet.blocks)
    for (SheetJob& job : block.jobs) {
      job.number = next++;
      const auto [first, isNew] = firstOf.try_emplace(job.operation, job.number);
      if (!isNew && !job.how.empty()) job.sameAs = first->second;
    }
}

/// Tells cautions that concern the sheet: those a job of it had better wait for, and
/// heat, which is everybody's.
class CautionTeller {
public:
  CautionTeller(const Orchard& orchard,
                const Trade& trade,
                const std::vector<TaskView>& views,
                WorkSheet& sheet)
      : orchard_(&orchard), trade_(&trade), sheet_(&sheet) {
    for (const TaskView& view : views) views_.emplace(view.task->key, &view);
  }

  void tell(Day day, const Outlooks& outlooks) {
    const auto cautions = cautionsOn(*orchard_, trade_->tables, outlooks, day);
    for (const SharedCaution& shared : sharedAmong(*orchard_, cautions)) {
      const DayCaution& caution = shared.caution;
      SheetCaution told{day, caution.sentence, waiting(caution, cautions)};
      if (!told.jobs.empty() || caution.kind == CautionKind::heat)
        sheet_->cautions.push_back(std::move(told));
    }
  }

private:
  RowSet waiting(const DayCaution& caution, const CautionsByPlanting& cautions) const {
    RowSet jobs;
    for (const SheetBlock& block : sheet_->blocks)
      for (const SheetJob& job : block.jobs) {
        const Operation* operation = operationOf(*orchard_, trade_->programmes, job.task);
        const auto own = cautions.find(job.task.planting);
        if (operation == nullptr || own == cautions.end()) continue;
        if (!isDueIn(*views_.at(job.task), {caution.day, caution.day})) continue;
        const DayCaution* why = shouldWait(*operation, own->second);
        if (why != nullptr && alike(*why, caution))
          jobs = jobs.with(RowSet::range(job.number, job.number));
      }
    return jobs;
  }

  const Orchard* orchard_;
  const Trade* trade_;
  WorkSheet* sheet_;
  std::map<TaskKey, const TaskView*> views_;
};

void tellCautions(const Orchard& orchard,
                  const Trade& trade,
                  const std::vector<TaskView>& views,
                  Day today,
                  WorkSheet& sheet) {
  if (orchard.weather.empty() || sheet.days.last < today) return;
  const Outlooks outlooks = outlooksOf(orchard, trade, today);
  CautionTeller teller{orchard, trade, views, sheet};
  for (Day day = std::max(today, sheet.days.first); day <= sheet.days.last;
       day = plusDays(day, 1))
    teller.tell(day, outlooks);
}

}  // namespace

WorkSheet workSheet(const Orchard& orchard,
                    const Trade& trade,
                    const Plan& plan,
                    IsoWeek week,
                    Day today) {
  WorkSheet sheet{orchard.settings.name, week, daysOf(week), today, {}, 0, {}};
  const SheetMaker maker{orchard, trade};
  std::map<BlockId, SheetBlock> byBlock;
  const auto views = viewsOf(orchard, plan, today);
  for (const TaskView& view : views) {
    if (!isDueIn(view, sheet.days) && !finishedIn(view, sheet.days)) continue;
    const Block& block = blockOf(orchard, orchard.plantings.at(view.task->key.planting));
    SheetBlock& onSheet = byBlock[block.id];
    onSheet.name = block.name;
    onSheet.jobs.push_back(maker.job(view));
    sheet.hoursLeft += view.hoursLeft;
  }
  for (auto& [id, block] : byBlock) {
    maker.putInOrder(block.jobs);
    sheet.blocks.push_back(std::move(block));
  }
  std::ranges::stable_sort(sheet.blocks, {}, [](const SheetBlock& block) {
    return std::pair{mostUrgent(block), block.name};
  });
  number(sheet);
  tellCautions(orchard, trade, views, today, sheet);
  return sheet;
}

std::vector<Sentence> sheetCautions(const WorkSheet&) {
  return {
      {phrase("Sheet",
              "Water, rest, shade. Eye protection near wires and with every cut.")},
      {phrase("Sheet",
              "Ladders and platforms by local rules. Labels, local rules and your "
              "supervisor come first.")},
  };
}

}  // namespace topwire
