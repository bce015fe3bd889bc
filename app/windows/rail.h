#pragma once

#include "app/look/icons.h"

#include <QAbstractButton>
#include <QButtonGroup>
#include <QLabel>
#include <QVBoxLayout>
#include <QWidget>

namespace topwire {

/// The dark strip at the left: whose orchard this is, and the pages.
class Rail : public QWidget {
  Q_OBJECT

public:
  explicit Rail(QWidget* parent = nullptr);

  /// Pages stand in the order they are added; the last one, below, is set apart.
  void addPage(int page, Icon icon, const QString& name);
  void addPageBelow(int page, Icon icon, const QString& name);
  void choose(int page);
  /// Name, what it holds, and a line more where there is something to know.
  void describe(const QString& name, const QString& holds, const QString& note);

Q_SIGNALS:
  void chosen(int page);

protected:
  void changeEvent(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

private:
  void colourWords();
  QAbstractButton* makeButton(int page, Icon icon, const QString& name);

  QLabel* name_;
  QLabel* holds_;
  QLabel* note_;
  QVBoxLayout* pages_;
  QVBoxLayout* below_;
  QButtonGroup* group_;
};

}  // namespace topwire
