#pragma once

#include "app/models/crew_planner.h"
#include "app/windows/crew_lanes.h"
#include "core/calendar/iso_week.h"

#include <QBoxLayout>
#include <QLabel>
#include <QPointer>
#include <QPushButton>
#include <QScrollArea>
#include <QWidget>

#include <optional>
#include <vector>

namespace topwire {

class CloseBlockForm;
class DayRibbon;
class HoursForm;
class JobBar;
class LostDayForm;
class PageHead;
class PastDayView;
class TickPanel;
class TodaySide;

/// Who goes where today, or on a working day to come: a lane a crew, what the day allows,
/// what will be missed; and at the foot what a person does about it. Of a day gone by:
/// what was planned beside what was ticked.
class TodayPage : public QWidget {
  Q_OBJECT

public:
  TodayPage(Session& session, CrewPlanner& planner, QWidget* parent = nullptr);

  Day day() const { return day_; }

  void showDay(Day day);

Q_SIGNALS:
  void printWanted(topwire::IsoWeek week);
  /// There is no crew yet, and the person wants to add one.
  void crewsWanted();

protected:
  void changeEvent(QEvent* event) override;
  void hideEvent(QHideEvent* event) override;
  /// Escape puts away what is open at the foot.
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;

private:
  enum class Foot { none, job, closeBlock, lostDay, hours };

  QWidget* content();
  QWidget* mainSide();
  QWidget* headLine();
  QWidget* foot();
  QWidget* emptyPage();
  void addHeadButtons();
  void listen();

  void startAnew();
  void refresh();
  void refreshHead();
  void refreshHeadline(const CrewPlan& plan);
  void refreshAcceptance();
  void refreshUndo();
  void refreshFoot(const CrewPlan& plan);
  void showPlan(const CrewPlan& plan);
  void showPast();
  void showParts(bool past, bool planned);
  bool isPast() const;
  std::optional<Day> dayBefore() const;
  std::optional<Day> dayAfter() const;
  void arrange();

  void take(const JobPlace& place, JobDeed deed);
  void openJob(const JobPlace& place, bool why);
  void openWaiting(const TaskKey& task);
  void moveBeside(const JobPlace& place, int steps);
  void pin(const JobPlace& place, CrewId crew);
  void unpin(const JobPlace& place);
  void notToday(const JobPlace& place);
  void setWorkers(CrewId crew, int workers);
  void reopen(ClosureId closure);
  void release(PinId pin);
  void enterHours(Day day);
  void accept();
  void undo();
  void openForm(Foot foot);
  void show(Foot foot);
  void closeFoot();
  void tell(const Problems& problems);
  RowSet rowsAt(const JobPlace& place) const;
  std::string skillOf(const TaskKey& task) const;

  Session* session_;
  CrewPlanner* planner_;
  Day day_{};
  Day today_{};  ///< as it was when the day was chosen
  std::vector<CrewLane> shown_;
  std::optional<JobPlace> chosen_;
  Foot footShown_ = Foot::none;
  bool ticking_ = false;        ///< the chosen job's rows are shown too
  QPointer<QWidget> cameFrom_;  ///< had the keyboard before the foot was opened

  PageHead* head_ = nullptr;
  QPushButton* earlier_ = nullptr;
  QPushButton* toToday_ = nullptr;
  QPushButton* later_ = nullptr;
  QPushButton* undo_ = nullptr;
  QPushButton* print_ = nullptr;
  QLabel* headline_ = nullptr;
  QLabel* acceptance_ = nullptr;
  QPushButton* accept_ = nullptr;
  QPushButton* enterHours_ = nullptr;
  QScrollArea* area_;
  QWidget* work_ = nullptr;
  QWidget* empty_ = nullptr;
  QBoxLayout* body_ = nullptr;
  QLabel* making_ = nullptr;
  QLabel* hint_ = nullptr;
  PastDayView* past_ = nullptr;
  DayRibbon* ribbon_ = nullptr;
  CrewLanes* lanes_ = nullptr;
  TodaySide* side_ = nullptr;
  QWidget* foot_ = nullptr;
  QLabel* problem_ = nullptr;
  JobBar* bar_ = nullptr;
  TickPanel* rows_ = nullptr;
  CloseBlockForm* closeBlock_ = nullptr;
  LostDayForm* lostDay_ = nullptr;
  HoursForm* hours_ = nullptr;
};

}  // namespace topwire
