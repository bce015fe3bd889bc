#pragma once

#include "app/windows/side_section.h"
#include "app/windows/today_words.h"

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

  void setPlan(const CrewPlan& plan, Day day);

Q_SIGNALS:
  void closeBlockWanted();
  void reopenWanted(topwire::ClosureId closure);
  /// What was held back may be planned again.
  void releaseWanted(topwire::PinId pin);
  void hoursWanted(topwire::Day day);

private:
  SideSection* addSection(const QString& title, const char* name, int most);
  QWidget* worthBox();
  void takePress(const QString& id);

  Session* session_;
  QVBoxLayout* lines_;
  SideSection* risk_;
  SideSection* closed_;
  SideSection* waiting_;
  SideSection* yesterday_;
  SideSection* whole_;
  SideSection* notes_;
  WorthStrip* worth_;
  QLabel* worthWords_;
  std::optional<Day> lastPlanned_;
};

}  // namespace topwire
