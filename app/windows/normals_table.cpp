#include "app/windows/normals_table.h"

#include "core/units/conversions.h"

#include <QHeaderView>
#include <QLocale>
#include <QSignalBlocker>

namespace topwire {

namespace {

constexpr int months = 12;
constexpr int minimumRow = 0;
constexpr int maximumRow = 1;
constexpr int cellHeight = 32;
constexpr int headHeight = 28;

double toShown(double celsius, UnitSystem units) {
  return units == UnitSystem::metric ? celsius : toFahrenheit(celsius);
}

double fromShown(double shown, UnitSystem units) {
  return units == UnitSystem::metric ? shown : toCelsius(shown);
}

}  // namespace

NormalsTable::NormalsTable(QWidget* parent) : QTableWidget(2, months, parent) {
  setObjectName(QStringLiteral("normals"));
  setAccessibleName(tr("Monthly normals"));
  setTabKeyNavigation(false);
  QStringList names;
  for (int month = 1; month <= months; ++month)
    names << QLocale().standaloneMonthName(month, QLocale::ShortFormat);
  setHorizontalHeaderLabels(names);
  horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  horizontalHeader()->setMinimumSectionSize(36);
  verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  verticalHeader()->setDefaultSectionSize(cellHeight);
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  horizontalHeader()->setFixedHeight(headHeight);
  setFixedHeight(headHeight + 2 * cellHeight + 2 * frameWidth());
  connect(this, &QTableWidget::cellChanged, this, &NormalsTable::take);
}

QString NormalsTable::text(double celsius) const {
  return QLocale().toString(toShown(celsius, units_), 'f', 1);
}

void NormalsTable::fill(const MonthlyNormals& normals, UnitSystem units) {
  const QSignalBlocker quiet{this};
  normals_ = normals;
  units_ = units;
  unreadable_.clear();
  const bool celsius = units == UnitSystem::metric;
  setVerticalHeaderLabels({celsius ? tr("lowest, °C") : tr("lowest, °F"),
                           celsius ? tr("highest, °C") : tr("highest, °F")});
  for (int month = 0; month < months; ++month) {
    const auto index = static_cast<std::size_t>(month);
    for (const int row : {minimumRow, maximumRow}) {
      const double value =
          row == minimumRow ? normals.minimum[index] : normals.maximum[index];
      auto* item = new QTableWidgetItem{text(value)};
      item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
      setItem(row, month, item);
    }
  }
}

void NormalsTable::take(int row, int column) {
  const QString typed = item(row, column)->text().trimmed();
  bool read = false;
  double shown = QLocale().toDouble(typed, &read);
  if (!read) shown = QLocale::c().toDouble(typed, &read);
  if (!read) {
    unreadable_ = typed;
  } else {
    unreadable_.clear();
    auto& side = row == minimumRow ? normals_.minimum : normals_.maximum;
    side[static_cast<std::size_t>(column)] = fromShown(shown, units_);
  }
  Q_EMIT edited();
}

}  // namespace topwire
