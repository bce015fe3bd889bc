#pragma once

#include "app/models/session.h"
#include "app/windows/preferences.h"
#include "app/windows/questions.h"
#include "core/calendar/iso_week.h"

#include <QMainWindow>
#include <QStackedWidget>

#include <optional>

namespace topwire {

class BlocksPage;
class CalendarPage;
class CrewPlanner;
class LabourPage;
class NoticeBar;
class Rail;
class TodayPage;

/// Those without a place in the rail come last.
enum class RailPage {
  today,
  calendar,
  labour,
  blocks,
  weather,
  material,
  programme,
  settings,
  closing
};

/// The one window: the rail, the pages, the menus, and the line for what happened.
///
/// Everything it shows follows the session; what it keeps itself is which page stands
/// open. A change of language builds its contents anew.
class MainWindow : public QMainWindow {
  Q_OBJECT

public:
  /// Said in the rail where today is taken from the command line and not from the clock.
  enum class TodayFrom { clock, given };

  MainWindow(Session& session,
             Questions& questions,
             Preferences& preferences,
             TodayFrom todayFrom = TodayFrom::clock);

  /// Opens this file; the last one where empty; else the default orchard, which is made
  /// in `folder` where it is not there yet. False where none could be opened.
  bool openAtStart(const QString& file, const QString& folder);
  void showPage(RailPage page);
  RailPage page() const;

  CrewPlanner& planner() { return *planner_; }

  /// Whole plans stand before anything shown returns, for pictures.
  void planAtOnce();

  void showDay(Day day);

public Q_SLOTS:
  void newOrchard();
  void openOrchard();
  void openFile(const QString& path);
  void saveCopy();
  void undo();
  void redo();
  void printWeek();

protected:
  void closeEvent(QCloseEvent* event) override;

private:
  void build();
  void buildPages(QStackedWidget& pages);
  void addRailPages();
  void listenToPages();
  void buildMenus();
  void buildFileMenu();
  void buildEditMenu();
  void buildViewMenu();
  void buildHelpMenu();
  void fillRecent();
  void listenToSession();

  void refresh();
  void tellChange(const Sentence& name);
  void tellShift(const std::vector<PlanDifference>& differences,
                 const std::vector<Sentence>& why);
  void tellProblem(const Problem& problem);
  void tellDone(const Done& done, const QString& text);
  void print(IsoWeek week);
  bool open(const QString& path);
  bool openToLook(const QString& path, const Problem& refusal);
  Done create(const QString& path);
  void takeTheme();
  void takeLanguage();
  void showKeys();
  void showAbout();

  Session* session_;
  Questions* questions_;
  Preferences* preferences_;
  TodayFrom todayFrom_;
  CrewPlanner* planner_;  ///< outlives the pages, which a change of language replaces
  Rail* rail_ = nullptr;
  QStackedWidget* pages_ = nullptr;
  TodayPage* today_ = nullptr;
  CalendarPage* calendar_ = nullptr;
  LabourPage* labour_ = nullptr;
  BlocksPage* blocks_ = nullptr;
  QWidget* lookOnly_ = nullptr;
  NoticeBar* notice_ = nullptr;
  QMenu* recent_ = nullptr;
  QAction* undo_ = nullptr;
  QAction* redo_ = nullptr;
  QString shiftText_;
};

}  // namespace topwire
