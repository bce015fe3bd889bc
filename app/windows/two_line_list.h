#pragma once

#include <QListWidget>

namespace topwire {

/// A list whose entries have a name and a muted line under it, with headings between them
/// that the keyboard passes over.
class TwoLineList : public QListWidget {
  Q_OBJECT

public:
  explicit TwoLineList(QWidget* parent = nullptr);

  void addHeading(const QString& words);
  void addEntry(const QString& key, const QString& name, const QString& line);

  QString chosen() const;
  /// False where there is none of that key.
  bool choose(const QString& key);
  /// As high as its entries need.
  int contentHeight() const;
};

}  // namespace topwire
