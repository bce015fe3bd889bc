#include "app/windows/block_words.h"

#include "app/words/say.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include <cmath>

namespace topwire {

namespace {

class BlockWords {
  Q_DECLARE_TR_FUNCTIONS(BlockWords)
};

QString scoreText(double score) {
  const QString sign = score > 0 ? QStringLiteral("+") : QString{};
  return sign + QLocale().toString(score, 'g', 2);
}

QString perArea(UnitSystem units, Length rowSpacing, Length treeSpacing) {
  return units == UnitSystem::metric
             ? BlockWords::tr("%1 a hectare")
                   .arg(countText(std::lround(treesPerHectare(rowSpacing, treeSpacing))))
             : BlockWords::tr("%1 an acre")
                   .arg(countText(std::lround(treesPerAcre(rowSpacing, treeSpacing))));
}

QString treesPerAreaText(UnitSystem units, Length rowSpacing, Length treeSpacing) {
  return units == UnitSystem::metric
             ? BlockWords::tr("%1 trees a hectare")
                   .arg(countText(std::lround(treesPerHectare(rowSpacing, treeSpacing))))
             : BlockWords::tr("%1 trees an acre")
                   .arg(countText(std::lround(treesPerAcre(rowSpacing, treeSpacing))));
}

const QString& dot() {
  static const QString text = QStringLiteral(" · ");
  return text;
}

}  // namespace

Season currentSeason(const Session& session) {
  return session.season();
}

QString sayCounted(std::int64_t count, Phrase one, Phrase many) {
  return say(Sentence{counted(count, one, many), {count}});
}

QString capitalised(const QString& text) {
  return text.isEmpty() ? text : text.front().toUpper() + text.mid(1);
}

QString countText(std::int64_t count) {
  return QLocale().toString(static_cast<qlonglong>(count));
}

QString stockText(const Planting& planting) {
  const QString cultivar = QString::fromStdString(planting.cultivar);
  return planting.rootstock.empty()
             ? cultivar
             : BlockWords::tr("%1 on %2")
                   .arg(cultivar, QString::fromStdString(planting.rootstock));
}

QString ageText(const Session& session, const Planting& planting) {
  if (planting.planted > session.today())
    return BlockWords::tr("planting in %1").arg(yearOf(planting.planted));
  return leafText(leafOf(session.orchard(), planting, currentSeason(session)));
}

QString plantedText(const Session& session, const Planting& planting) {
  return planting.planted > session.today()
             ? BlockWords::tr("planned for %1").arg(dayText(planting.planted))
             : BlockWords::tr("planted %1").arg(dayText(planting.planted));
}

QString blockLine(const Session& session, const Block& block) {
  const auto plantings = plantingsOf(session.orchard(), block.id);
  if (plantings.empty()) return BlockWords::tr("nothing planted yet");
  const Planting& first = *plantings.front();
  const QString cultivar = QString::fromStdString(first.cultivar);
  return BlockWords::tr("%1, %2").arg(cultivar, ageText(session, first));
}

QString blockSubtitle(const Session& session, const Block& block) {
  QStringList parts;
  const auto plantings = plantingsOf(session.orchard(), block.id);
  if (!plantings.empty()) {
    const Planting& first = *plantings.front();
    parts << stockText(first) << ageText(session, first)
          << nameOf(vigourIn(session.season(), session.orchard(), session.tables(), first)
                        .vigour);
  }
  parts << sayCounted(
      block.rows.count(), phrase("Blocks", "%1 row"), phrase("Blocks", "%1 rows"));
  if (!plantings.empty())
    parts << treesPerAreaText(session.orchard().settings.units,
                              block.rowSpacing,
                              plantings.front()->treeSpacing);
  return parts.join(dot());
}

QString vigourText(const Session& session, const Planting& planting) {
  const VigourBasis basis =
      vigourIn(session.season(), session.orchard(), session.tables(), planting);
  const QString name = nameOf(basis.vigour);
  if (!basis.byGrower)
    return BlockWords::tr("%1: %2 %3, %4 %5")
        .arg(name,
             QString::fromStdString(planting.cultivar),
             scoreText(basis.fromCultivar),
             QString::fromStdString(planting.rootstock),
             scoreText(basis.fromRootstock));
  if (basis.reason.empty()) return BlockWords::tr("%1: your word").arg(name);
  return BlockWords::tr("%1: your word, %2")
      .arg(name, QString::fromStdString(basis.reason));
}

QString densityText(UnitSystem units, Length rowSpacing, Length treeSpacing) {
  if (rowSpacing <= Length{} || treeSpacing <= Length{}) return {};
  const UnitSystem other =
      units == UnitSystem::metric ? UnitSystem::usCustomary : UnitSystem::metric;
  return perArea(units, rowSpacing, treeSpacing) + dot()
         + perArea(other, rowSpacing, treeSpacing);
}

QString nameOf(PlantingKind kind) {
  switch (kind) {
    case PlantingKind::main:
      return BlockWords::tr("main planting");
    case PlantingKind::pollinizer:
      return BlockWords::tr("pollinizer");
    case PlantingKind::replant:
      return BlockWords::tr("replants");
  }
  return {};
}

QString stateText(const TaskView& view, Day today) {
  const Task& task = *view.task;
  switch (view.state) {
    case TaskState::waiting:
      return BlockWords::tr("opens %1").arg(shortDayText(task.opens));
    case TaskState::open:
      return BlockWords::tr("open to %1").arg(shortDayText(task.closes));
    case TaskState::closing:
      return BlockWords::tr("closes %1").arg(shortDayText(task.closes));
    case TaskState::late:
      return sayCounted(daysBetween(task.closes, today),
                        phrase("Blocks", "%1 day late"),
                        phrase("Blocks", "%1 days late"));
    default:
      return nameOf(view.state);
  }
}

}  // namespace topwire
