#pragma once

#include "app/windows/side_section.h"
#include "app/windows/today_words.h"
#include "core/crews/labour_ahead.h"

#include <QBoxLayout>
#include <QLabel>
#include <QWidget>

namespace topwire {

class WorthStrip;

/// What stands beside the lanes: windows at risk, closed blocks, what waits, how
/// yesterday went, and what the whole plan can and cannot do.
class TodaySide : public QWidget {
  Q_OBJECT

public:
  explicit TodaySide(Session& session, QWidget* parent = nullptr);

  /// `missed`: what past years' weather would have made of the plan.
  void setPlan(const CrewPlan& plan, const std::vector<MissedWindow>& missed, Day day);

Q_SIGNALS:
  void closeBlockWanted();
  void reopenWanted(topwire::ClosureId closure);
  /// What was held back may be planned again.
  void releaseWanted(topwire::PinId pin);
  void hoursWanted(topwire::Day day);
  /// Why it waits, and what can be done about that.
  void whyWanted(const topwire::TaskKey& task);

private:
  SideSection* addSection(const QString& title, const char* name, int most);
  QWidget* worthBox();
  void fillWorth(const CrewPlan& plan);
  void takePress(const QString& id);

  Session* session_;
  QVBoxLayout* lines_;
  SideSection* risk_;
  SideSection* pastYears_;
  SideSection* closed_;
  SideSection* waiting_;
  SideSection* yesterday_;
  SideSection* whole_;
  SideSection* notes_;
  WorthStrip* worth_;
  QLabel* worthWords_;
  std::optional<Day> lastPlanned_;
  std::vector<TaskKey> waitingTasks_;  ///< by the number in a why's name
};

}  // namespace topwire
