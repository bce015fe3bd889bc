#pragma once

#include "core/orchard/orchard.h"

#include <QAbstractTableModel>

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace topwire {

/// A day a stage was reached in an earlier season: from the grower's book, or seen in a
/// planting that stands in `place`.
struct PastDate {
  Day day{};
  std::optional<PastStageId> past;  ///< of the book, where it can be taken away
  std::string place;

  friend bool operator==(const PastDate&, const PastDate&) = default;
};

/// One cultivar's earlier season.
struct PastSeason {
  Season season{};
  std::string cultivar;
  std::map<int, std::vector<PastDate>> dates;  ///< by stage; the earliest first

  friend bool operator==(const PastSeason&, const PastSeason&) = default;
};

/// Seasons before `current`, the latest first, then by cultivar.
std::vector<PastSeason> pastSeasons(const Orchard& orchard, Season current);

/// A row a cultivar's season, a column a stage: the usual ones, and those with a date.
class PastSeasonsModel : public QAbstractTableModel {
  Q_OBJECT

public:
  static constexpr int seasonColumn = 0;
  static constexpr int cultivarColumn = 1;
  static constexpr int firstStage = 2;

  using QAbstractTableModel::QAbstractTableModel;

  void setSeasons(std::vector<PastSeason> seasons, Hemisphere hemisphere);

  const PastSeason& at(int row) const { return seasons_[static_cast<std::size_t>(row)]; }

  /// Nothing for the first columns.
  std::optional<int> stageAt(int column) const;
  /// What stands in a cell; nullptr where nothing does.
  const PastDate* dateAt(const QModelIndex& index) const;
  QModelIndex indexOf(Season season, const std::string& cultivar, int bbch) const;

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
  QString text(const QModelIndex& index) const;
  QString sourceText(const QModelIndex& index) const;

  std::vector<PastSeason> seasons_;
  std::vector<int> stages_;
  Hemisphere hemisphere_ = Hemisphere::north;
};

}  // namespace topwire
