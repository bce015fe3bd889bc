#pragma once

#include "core/orchard/records.h"
#include "core/units/length.h"

#include <QTableWidget>

namespace topwire {

/// Twelve months of mean daily minimum and maximum, in the orchard's units. Only a cell a
/// person changed is read back from its text, so that showing Fahrenheit loses nothing.
class NormalsTable : public QTableWidget {
  Q_OBJECT

public:
  explicit NormalsTable(QWidget* parent = nullptr);

  void fill(const MonthlyNormals& normals, UnitSystem units);

  const MonthlyNormals& normals() const { return normals_; }

  /// Nothing, or the month whose text is no temperature.
  QString unreadable() const { return unreadable_; }

Q_SIGNALS:
  void edited();

private:
  void take(int row, int column);
  QString text(double celsius) const;

  MonthlyNormals normals_;
  UnitSystem units_ = UnitSystem::metric;
  QString unreadable_;
};

}  // namespace topwire
