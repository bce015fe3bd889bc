#include "app/models/past_seasons.h"

#include "app/look/look.h"
#include "app/words/say.h"
#include "core/phenology/stage.h"

#include <algorithm>
#include <set>
#include <utility>

namespace topwire {

namespace {

constexpr int usualStages[] = {stages::silverTip,
                               stages::greenTip,
                               stages::pink,
                               stages::firstBloom,
                               stages::fullBloom,
                               stages::petalFall};

QString placeText(const PastDate& date) {
  const QString day = dayText(date.day);
  return date.past ? PastSeasonsModel::tr("%1, from your book").arg(day)
                   : PastSeasonsModel::tr("%1, seen in %2")
                         .arg(day, QString::fromStdString(date.place));
}

}  // namespace

std::vector<PastSeason> pastSeasons(const Orchard& orchard, Season current) {
  const Hemisphere hemisphere = orchard.settings.hemisphere();
  std::map<std::pair<Season, std::string>, PastSeason> found;
  const auto add = [&](const std::string& cultivar, int bbch, PastDate date) {
    const Season season = seasonOf(date.day, hemisphere);
    if (season >= current) return;
    PastSeason& row = found[{season, cultivar}];
    row.season = season;
    row.cultivar = cultivar;
    row.dates[bbch].push_back(std::move(date));
  };
  for (const auto& [id, past] : orchard.pastStages)
    add(past.cultivar, past.bbch, {past.day, id, {}});
  for (const auto& [id, seen] : orchard.observations) {
    const Planting& planting = orchard.plantings.at(seen.planting);
    add(planting.cultivar,
        seen.bbch,
        {seen.day, std::nullopt, blockOf(orchard, planting).name});
  }
  std::vector<PastSeason> rows;
  for (auto& [key, row] : found) {
    for (auto& [bbch, dates] : row.dates)
      std::ranges::stable_sort(dates, {}, &PastDate::day);
    rows.push_back(std::move(row));
  }
  std::ranges::stable_sort(rows, std::ranges::greater{}, &PastSeason::season);
  return rows;
}

void PastSeasonsModel::setSeasons(std::vector<PastSeason> seasons,
                                  Hemisphere hemisphere) {
  std::set<int> dated{std::begin(usualStages), std::end(usualStages)};
  for (const PastSeason& season : seasons)
    for (const auto& [bbch, dates] : season.dates) dated.insert(bbch);
  beginResetModel();
  seasons_ = std::move(seasons);
  hemisphere_ = hemisphere;
  stages_.clear();
  for (const Stage& stage : allStages())
    if (dated.contains(stage.bbch)) stages_.push_back(stage.bbch);
  endResetModel();
}

std::optional<int> PastSeasonsModel::stageAt(int column) const {
  if (column < firstStage) return std::nullopt;
  return stages_[static_cast<std::size_t>(column - firstStage)];
}

const PastDate* PastSeasonsModel::dateAt(const QModelIndex& index) const {
  if (!index.isValid()) return nullptr;
  const auto stage = stageAt(index.column());
  if (!stage) return nullptr;
  const auto& dates = at(index.row()).dates;
  const auto found = dates.find(*stage);
  return found == dates.end() ? nullptr : &found->second.front();
}

QModelIndex PastSeasonsModel::indexOf(Season season,
                                      const std::string& cultivar,
                                      int bbch) const {
  const auto row = std::ranges::find_if(seasons_, [&](const PastSeason& past) {
    return past.season == season && past.cultivar == cultivar;
  });
  const auto column = std::ranges::find(stages_, bbch);
  if (row == seasons_.end() || column == stages_.end()) return {};
  return index(static_cast<int>(row - seasons_.begin()),
               firstStage + static_cast<int>(column - stages_.begin()));
}

int PastSeasonsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(seasons_.size());
}

int PastSeasonsModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : firstStage + static_cast<int>(stages_.size());
}

QString PastSeasonsModel::text(const QModelIndex& index) const {
  const PastSeason& row = at(index.row());
  if (index.column() == seasonColumn)
    return QString::fromStdString(nameOf(row.season, hemisphere_));
  if (index.column() == cultivarColumn) return QString::fromStdString(row.cultivar);
  const PastDate* date = dateAt(index);
  return date != nullptr ? voiceIn(language()).dayOfYear(date->day) : QString{};
}

QString PastSeasonsModel::sourceText(const QModelIndex& index) const {
  const auto stage = stageAt(index.column());
  if (!stage || dateAt(index) == nullptr) return {};
  QStringList lines;
  for (const PastDate& date : at(index.row()).dates.at(*stage)) lines << placeText(date);
  return lines.join(QLatin1Char('\n'));
}

QVariant PastSeasonsModel::data(const QModelIndex& index, int role) const {
  switch (role) {
    case Qt::DisplayRole:
      return text(index);
    case Qt::ToolTipRole:
    case Qt::AccessibleDescriptionRole:
      return sourceText(index);
    case Qt::ForegroundRole: {
      // What was seen in a planting is changed there, not here.
      const PastDate* date = dateAt(index);
      const BaseColours& base = baseColours(currentTheme());
      return date != nullptr && !date->past ? base.muted : base.text;
    }
    default:
      return {};
  }
}

QVariant PastSeasonsModel::headerData(int section,
                                      Qt::Orientation orientation,
                                      int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole) return QVariant{Qt::AlignLeft | Qt::AlignVCenter};
  if (role == Qt::FontRole) return fontOf(TypeSize::small);
  if (role != Qt::DisplayRole) return {};
  if (section == seasonColumn) return tr("Season");
  if (section == cultivarColumn) return tr("Cultivar");
  return say(stageByCode(*stageAt(section))->name);
}

}  // namespace topwire
