#include "app/models/row_lanes.h"

#include <cmath>
#include <map>

namespace topwire {

namespace {

void addPlanting(std::map<int, RowLane>& lanes,
                 const Orchard& orchard,
                 const Planting& planting) {
  const double trees = treesPerRow(orchard, planting);
  for (const int row : planting.rows.rows()) {
    const auto lane = lanes.find(row);
    if (lane == lanes.end()) continue;
    if (planting.kind == PlantingKind::replant) {
      lane->second.replants += static_cast<int>(std::lround(trees));
    } else {
      lane->second.kind = planting.kind;
      lane->second.trees = trees;
    }
  }
}

void addTask(std::map<int, RowLane>& lanes, const TaskView& view) {
  for (const int row : view.task->rows.rows()) {
    const auto lane = lanes.find(row);
    if (lane == lanes.end()) continue;
    lane->second.inTask = true;
    const auto done = view.progress.percentByRow.find(row);
    if (done != view.progress.percentByRow.end()) lane->second.percent = done->second;
  }
}

}  // namespace

std::vector<RowLane> rowLanes(const Orchard& orchard,
                              BlockId block,
                              const TaskView* task) {
  std::map<int, RowLane> lanes;
  for (const int row : orchard.blocks.at(block).rows.rows()) lanes[row].row = row;
  for (const Planting* planting : plantingsOf(orchard, block))
    addPlanting(lanes, orchard, *planting);
  if (task != nullptr) addTask(lanes, *task);
  std::vector<RowLane> inOrder;
  for (const auto& [row, lane] : lanes) inOrder.push_back(lane);
  return inOrder;
}

}  // namespace topwire
