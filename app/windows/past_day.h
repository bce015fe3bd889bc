#pragma once

#include "app/models/past_day.h"
#include "app/windows/today_words.h"

#include <QGridLayout>
#include <QVBoxLayout>
#include <QWidget>

namespace topwire {

/// A day gone by: what its accepted plan gave each crew, beside what was ticked. To read
/// only.
class PastDayView : public QWidget {
  Q_OBJECT

public:
  explicit PastDayView(Session& session, QWidget* parent = nullptr);

  void setDay(Day day);

private:
  void addCrew(CrewId crew, const std::vector<PlanAndDone>& jobs);
  void addBesides(const std::vector<DoneBesides>& besides);
  QGridLayout* addTable(const QString& title, const QString& sum);
  void addJob(QGridLayout& table, const PlanAndDone& job);

  Session* session_;
  QVBoxLayout* lines_;
};

/// "All 9 rows planned were ticked." or "12 of 20 rows planned were ticked, hours are
/// missing for 1 job."
QString pastDayText(const std::vector<PlanAndDone>& jobs);

}  // namespace topwire
