#pragma once

#include "app/models/session.h"
#include "app/windows/today_words.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace topwire {

/// The hours, as a line with figures.
class HourAxis : public QWidget {
  Q_OBJECT

public:
  explicit HourAxis(QWidget* parent = nullptr);

  void setAxis(const DayAxis& axis);

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  DayAxis axis_;
};

/// What the day allows: its weather, what that gives reason to think of, and whether it
/// is worked at all, over the hours the lanes stand on.
class DayRibbon : public QWidget {
  Q_OBJECT

public:
  explicit DayRibbon(Session& session, QWidget* parent = nullptr);

  void setDay(Day day, const DayAxis& axis, const CautionsByPlanting& cautions);

Q_SIGNALS:
  void lostWanted();

private:
  QWidget* words();
  void addLine(const QString& head, const QString& words, bool cautions);
  QString weatherLine(Day day) const;

  Session* session_;
  QLabel* title_ = nullptr;
  QLabel* source_ = nullptr;
  QPushButton* lost_ = nullptr;
  QVBoxLayout* lines_;
  HourAxis* axis_;
};

}  // namespace topwire
