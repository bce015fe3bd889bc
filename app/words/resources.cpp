#include "app/words/resources.h"

#include "core/programme/programme_reader.h"

#include <QFile>

namespace topwire {

namespace {

template <class T>
using Reader = Checked<T> (*)(std::string_view, const std::string&);

/// Reads one shipped file; its problems are added to `problems`.
template <class T>
T readOne(const char* path, Reader<T> read, Problems& problems) {
  QFile file{QStringLiteral(":/") + QString::fromUtf8(path)};
  if (!file.open(QIODevice::ReadOnly)) {
    problems.push_back(
        refuse(
            Sentence{phrase("File", "%1 is missing from the program. Install it again."),
                     {std::string{path}}})
            .value());
    return {};
  }
  Checked<T> result = read(file.readAll().toStdString(), path);
  if (result) return std::move(*result);
  problems.insert(problems.end(), result.error().begin(), result.error().end());
  return {};
}

}  // namespace

Checked<Shipped> loadShipped() {
  Problems problems;
  Shipped shipped;
  shipped.tables.cultivars = readOne("tables/cultivars.toml", readCultivars, problems);
  shipped.tables.rootstocks = readOne("tables/rootstocks.toml", readRootstocks, problems);
  shipped.tables.stations = readOne("tables/stations.toml", readStations, problems);
  shipped.tables.frostKills = readOne("tables/frost_kill.toml", readFrostKills, problems);
  shipped.tables.stageHeat = readOne("tables/stage_heat.toml", readStageHeat, problems);
  TargetTables& targets = shipped.tables.targets;
  targets.cropLoads = readOne("tables/crop_load.toml", readCropLoads, problems);
  targets.fruitByLeaf = readOne("tables/fruit_by_leaf.toml", readFruitByLeaf, problems);
  targets.leaderHeights =
      readOne("tables/leader_height.toml", readLeaderHeights, problems);
  targets.shootGrowth = readOne("tables/shoot_growth.toml", readShootGrowth, problems);
  targets.nutrition = readOne("tables/nutrition.toml", readNutrition, problems);
  for (const char* path :
       {"programmes/tall-spindle-apple.toml", "programmes/planar-wall-apple.toml"}) {
    Programme programme = readOne(path, readProgramme, problems);
    const std::string id = programme.id;
    shipped.programmes.emplace(id, std::move(programme));
  }
  shipped.tables.materials = readOne("tables/materials.toml", readMaterials, problems);
  shipped.tables.trellises = readOne("tables/trellis.toml", readTrellises, problems);
  shipped.tables.delayWeights = readOne("tables/delay.toml", readDelayWeights, problems);
  if (!problems.empty()) return tl::unexpected{std::move(problems)};
  return shipped;
}

std::optional<std::string> shippedProgrammeText(const std::string& id) {
  QFile file{QStringLiteral(":/programmes/%1.toml").arg(QString::fromStdString(id))};
  if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
  return file.readAll().toStdString();
}

}  // namespace topwire
