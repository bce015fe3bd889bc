#include "app/windows/main_window.h"

#include "app/look/card.h"
#include "app/models/crew_planner.h"
#include "app/windows/block_words.h"
#include "app/windows/blocks_page.h"
#include "app/windows/calendar_page.h"
#include "app/windows/closing_page.h"
#include "app/windows/labour_page.h"
#include "app/windows/material_page.h"
#include "app/windows/notice_bar.h"
#include "app/windows/print_window.h"
#include "app/windows/programme_page.h"
#include "app/windows/rail.h"
#include "app/windows/settings_page.h"
#include "app/windows/today_page.h"
#include "app/windows/weather_page.h"
#include "app/words/say.h"

#include <QAction>
#include <QCloseEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QMenuBar>
#include <QVBoxLayout>

namespace topwire {

namespace {

QString joined(const std::vector<Sentence>& sentences,
               const QString& between = QStringLiteral(" ")) {
  QStringList texts;
  for (const Sentence& sentence : sentences) texts << say(sentence);
  return texts.join(between);
}

QWidget* lookOnlyBar() {
  auto* bar = new Card{QPalette::Midlight};
  bar->setObjectName(QStringLiteral("lookOnly"));
  auto* line = new QHBoxLayout{bar};
  line->setContentsMargins(measure::pageMargin, 8, measure::pageMargin, 8);
  line->addWidget(textLabel(
      MainWindow::tr("The file is open in another window. You can look, not change."),
      TypeSize::body,
      true));
  return bar;
}

}  // namespace

MainWindow::MainWindow(Session& session,
                       Questions& questions,
                       Preferences& preferences,
                       TodayFrom todayFrom)
    : session_(&session)
    , questions_(&questions)
    , preferences_(&preferences)
    , todayFrom_(todayFrom)
    , planner_(new CrewPlanner(session, this)) {
  setObjectName(QStringLiteral("mainWindow"));
  constexpr QSize usual{1280, 800};
  constexpr QSize least{900, 600};
  setMinimumSize(least);
  resize(usual);
  restoreGeometry(preferences_->geometry());
  build();
  listenToSession();
}

void MainWindow::build() {
  auto* all = new QWidget;
  rail_ = new Rail;
  pages_ = new QStackedWidget;
  pages_->setObjectName(QStringLiteral("pages"));
  notice_ = new NoticeBar;
  lookOnly_ = lookOnlyBar();
  buildPages(*pages_);
  auto* content = new QVBoxLayout;
  content->setSpacing(0);
  content->addWidget(lookOnly_);
  content->addWidget(pages_, 1);
  content->addWidget(notice_);
  auto* line = new QHBoxLayout{all};
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(0);
  line->addWidget(rail_);
  line->addLayout(content, 1);
  setCentralWidget(all);
  buildMenus();
  connect(rail_, &Rail::chosen, this, [this](int page) {
    showPage(static_cast<RailPage>(page));
  });
  showPage(RailPage::today);
  refresh();
}

void MainWindow::buildPages(QStackedWidget& pages) {
  today_ = new TodayPage{*session_, *planner_};
  calendar_ = new CalendarPage{*session_};
  blocks_ = new BlocksPage{*session_, *questions_};
  labour_ = new LabourPage{*session_};
  auto* weather = new WeatherPage{*session_, *questions_};
  auto* material = new MaterialPage{*session_};
  auto* programme = new ProgrammePage{*session_, *questions_};
  auto* settings = new SettingsPage{*session_, *questions_, *preferences_};
  auto* closing = new ClosingPage{*session_};
  for (QWidget* page : {static_cast<QWidget*>(today_),
                        static_cast<QWidget*>(calendar_),
                        static_cast<QWidget*>(labour_),
                        static_cast<QWidget*>(blocks_),
                        static_cast<QWidget*>(weather),
                        static_cast<QWidget*>(material),
                        static_cast<QWidget*>(programme),
                        static_cast<QWidget*>(settings),
                        static_cast<QWidget*>(closing)})
    pages.addWidget(page);
  addRailPages();
  listenToPages();
  connect(weather, &WeatherPage::blocksWanted, this, [this] {
    showPage(RailPage::blocks);
    blocks_->addBlock();
  });
  connect(weather, &WeatherPage::calendarWanted, this, [this] {
    showDay(session_->today());
  });
  connect(
      closing, &ClosingPage::blocksWanted, this, [this] { showPage(RailPage::blocks); });
  connect(closing, &ClosingPage::measureWanted, this, [this](PlantingId planting) {
    showPage(RailPage::blocks);
    blocks_->measure(planting);
  });
  connect(settings, &SettingsPage::themeChosen, this, &MainWindow::takeTheme);
  // The page that asks is built anew, so not from within its own signal.
  connect(settings,
          &SettingsPage::languageChosen,
          this,
          &MainWindow::takeLanguage,
          Qt::QueuedConnection);
}

void MainWindow::planAtOnce() {
  planner_->setRuns(CrewPlanner::Runs::atOnce);
  labour_->planner().setRuns(LabourPlanner::Runs::atOnce);
}

void MainWindow::addRailPages() {
  const auto add = [this](RailPage page, Icon icon, const QString& name) {
    rail_->addPage(static_cast<int>(page), icon, name);
  };
  add(RailPage::today, Icon::today, tr("Today"));
  add(RailPage::calendar, Icon::calendar, tr("Calendar"));
  add(RailPage::labour, Icon::labour, tr("Labour"));
  add(RailPage::blocks, Icon::blocks, tr("Blocks"));
  add(RailPage::weather, Icon::weather, tr("Weather"));
  add(RailPage::material, Icon::material, tr("Material"));
  add(RailPage::programme, Icon::programme, tr("Programme"));
  rail_->addPageBelow(
      static_cast<int>(RailPage::settings), Icon::settings, tr("Settings"));
}

void MainWindow::listenToPages() {
  connect(
      labour_, &LabourPage::crewsWanted, this, [this] { showPage(RailPage::settings); });
  connect(today_, &TodayPage::printWanted, this, &MainWindow::print);
  connect(
      today_, &TodayPage::crewsWanted, this, [this] { showPage(RailPage::settings); });
  connect(calendar_, &CalendarPage::printWanted, this, &MainWindow::print);
  connect(calendar_, &CalendarPage::blocksWanted, this, [this] {
    showPage(RailPage::blocks);
    blocks_->addBlock();
  });
  connect(blocks_, &BlocksPage::dayWanted, this, &MainWindow::showDay);
  connect(
      blocks_, &BlocksPage::closingWanted, this, [this] { showPage(RailPage::closing); });
}

void MainWindow::listenToSession() {
  connect(session_, &Session::changed, this, &MainWindow::refresh);
  connect(session_, &Session::reset, this, [this] {
    notice_->clear();
    refresh();
  });
  connect(session_, &Session::happened, this, &MainWindow::tellChange);
  connect(session_, &Session::shifted, this, &MainWindow::tellShift);
  connect(session_, &Session::troubled, this, &MainWindow::tellProblem);
  connect(session_, &Session::noted, this, [this](const std::vector<Sentence>& notes) {
    notice_->tell(joined(notes));
  });
}

void MainWindow::refresh() {
  const bool open = session_->isOpen();
  lookOnly_->setVisible(open && session_->isReadOnly());
  for (QAction* action : findChildren<QAction*>())
    if (action->property("needsOrchard").toBool()) action->setEnabled(open);
  const Sentence* undoName = session_->undoName();
  const Sentence* redoName = session_->redoName();
  undo_->setText(undoName ? tr("&Undo: %1").arg(say(*undoName)) : tr("&Undo"));
  redo_->setText(redoName ? tr("&Redo: %1").arg(say(*redoName)) : tr("&Redo"));
  undo_->setEnabled(undoName != nullptr && !session_->isReadOnly());
  redo_->setEnabled(redoName != nullptr && !session_->isReadOnly());
  setWindowTitle(
      open ? tr("%1 - Topwire").arg(QFileInfo(session_->path()).completeBaseName())
           : QStringLiteral("Topwire"));
  if (!open) return;
  const Orchard& orchard = session_->orchard();
  const QString blocks = sayCounted(static_cast<std::int64_t>(orchard.blocks.size()),
                                    phrase("Blocks", "%1 block"),
                                    phrase("Blocks", "%1 blocks"));
  const QString crews = sayCounted(static_cast<std::int64_t>(orchard.crews.size()),
                                   phrase("Blocks", "%1 crew"),
                                   phrase("Blocks", "%1 crews"));
  rail_->describe(QString::fromStdString(orchard.settings.name),
                  orchard.crews.empty() ? blocks : tr("%1 · %2").arg(blocks, crews),
                  todayFrom_ == TodayFrom::given
                      ? tr("Today is taken as %1").arg(dayText(session_->today()))
                      : QString{});
}

void MainWindow::tellChange(const Sentence& name) {
  const QString deed = capitalised(say(name));
  const QString text = shiftText_.isEmpty() ? deed : tr("%1. %2").arg(deed, shiftText_);
  shiftText_.clear();
  notice_->tell(text, {tr("&Undo"), [this] { undo(); }});
}

/// A shift is told before the change that made it; without one, by itself.
void MainWindow::tellShift(const std::vector<PlanDifference>& differences,
                           const std::vector<Sentence>& why) {
  shiftText_ = joined(summaryOf(differences), QStringLiteral(", "));
  if (!why.empty()) shiftText_ += QStringLiteral(". ") + joined(why);
  if (!shiftText_.isEmpty()) notice_->tell(shiftText_);
}

void MainWindow::tellProblem(const Problem& problem) {
  notice_->trouble(say(problem));
}

void MainWindow::tellDone(const Done& done, const QString& text) {
  if (done)
    notice_->tell(text);
  else
    tellProblem(done.error());
}

void MainWindow::undo() {
  const Sentence* name = session_->undoName();
  if (name == nullptr) return;
  const QString text = tr("Undone: %1").arg(say(*name));
  tellDone(session_->undo(), text);
  shiftText_.clear();
}

void MainWindow::redo() {
  const Sentence* name = session_->redoName();
  if (name == nullptr) return;
  const QString text = tr("Done again: %1").arg(say(*name));
  tellDone(session_->redo(), text);
  shiftText_.clear();
}

void MainWindow::showPage(RailPage page) {
  pages_->setCurrentIndex(static_cast<int>(page));
  // The season is closed from the blocks, and they stay its place in the rail.
  rail_->choose(static_cast<int>(page == RailPage::closing ? RailPage::blocks : page));
}

RailPage MainWindow::page() const {
  return static_cast<RailPage>(pages_->currentIndex());
}

void MainWindow::showDay(Day day) {
  showPage(RailPage::calendar);
  calendar_->showDay(day);
}

void MainWindow::printWeek() {
  if (session_->isOpen()) print(isoWeekOf(session_->today()));
}

void MainWindow::print(IsoWeek week) {
  auto* window = new PrintWindow{*session_, week, this};
  window->setAttribute(Qt::WA_DeleteOnClose);
  window->show();
}

void MainWindow::closeEvent(QCloseEvent* event) {
  preferences_->setGeometry(saveGeometry());
  QMainWindow::closeEvent(event);
}

}  // namespace topwire
