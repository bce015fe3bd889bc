#pragma once

#include "app/models/season_chart.h"

#include <QDateEdit>
#include <QLabel>
#include <QPushButton>
#include <QWidget>

namespace topwire {

/// One stage of the season: its diamond, when it comes or came, and, while it is chosen,
/// the buttons that say it was seen. Enter is "seen today", D asks for another day.
class StageRow : public QWidget {
  Q_OBJECT

public:
  /// `writable`: offers to note that it was seen.
  StageRow(const StageLine& line, Day today, bool writable, QWidget* parent = nullptr);

  int bbch() const { return line_.bbch; }

  bool isChosen() const { return chosen_; }

  void setChosen(bool chosen);
  void showProblem(const QString& words);

Q_SIGNALS:
  void chosen(int bbch);
  void seen(int bbch, topwire::Day day);
  void stepWanted(int steps);

protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

private:
  QWidget* detailsLine();
  QWidget* dayEntry();
  void askDay();
  void seeToday();

  StageLine line_;
  Day today_;
  bool writable_;
  bool chosen_ = false;
  QPushButton* seenToday_ = nullptr;
  QPushButton* otherDay_ = nullptr;
  QWidget* entry_ = nullptr;
  QDateEdit* day_ = nullptr;
  QLabel* problem_ = nullptr;
};

}  // namespace topwire
