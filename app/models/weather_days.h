#pragma once

#include "core/orchard/orchard.h"

#include <QAbstractTableModel>

#include <optional>
#include <vector>

namespace topwire {

/// What is known of one day at the station.
struct DayFigures {
  Day day{};
  std::optional<WeatherDay> weather;
  bool isGap = false;  ///< gone by without both temperatures

  friend bool operator==(const DayFigures&, const DayFigures&) = default;
};

/// From the last day a forecast reaches, or today, back to `first`; the latest first.
std::vector<DayFigures> dayFigures(const Orchard& orchard, Day first, Day today);

/// The figure as it is written in these units, without the unit: 12.5.
QString temperatureText(double celsius, UnitSystem units);
QString rainAmountText(double millimetres, UnitSystem units);
QString temperatureUnit(UnitSystem units);
QString rainUnit(UnitSystem units);
QString nameOf(WeatherSource source);

/// Days with their figures. Gaps are hatched and say so.
class WeatherDaysModel : public QAbstractTableModel {
  Q_OBJECT

public:
  enum Column { day, minimum, maximum, rain, source, columns };

  using QAbstractTableModel::QAbstractTableModel;

  void setDays(std::vector<DayFigures> days, UnitSystem units, Day today);

  const DayFigures& at(int row) const { return days_[static_cast<std::size_t>(row)]; }

  /// The row of that day; -1 where it is not among them.
  int rowOf(Day day) const;

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
  QString text(const DayFigures& figures, int column) const;

  std::vector<DayFigures> days_;
  UnitSystem units_ = UnitSystem::metric;
  Day today_{};
};

}  // namespace topwire
