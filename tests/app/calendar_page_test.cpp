#include "app/windows/calendar_page.h"

#include "app/look/row_strip.h"
#include "app/look/state_shape.h"
#include "app/windows/checklist.h"
#include "app/windows/month_view.h"
#include "app/windows/print_window.h"
#include "app/windows/tick_panel.h"
#include "tests/app/window_test.h"
#include "tests/support/weather.h"

#include <QComboBox>
#include <QDateEdit>
#include <QImage>
#include <QScrollBar>
#include <QSignalSpy>

#include <algorithm>

namespace topwire {

namespace {

using ::testing::Each;
using ::testing::HasSubstr;
using testing::northernSettings;
using ::testing::Not;
using testing::orchardOfOne;

/// One block of ten rows in third leaf, on 6 April 2027.
class CalendarPageTest : public testing::WindowTest {
protected:
  static Orchard creek() {
    Orchard orchard = orchardOfOne(northernSettings(), dayOf(2025, 4, 10));
    const Crew wren{CrewId{0, 9}, "Wren", 4, 8};
    orchard.crews[wren.id] = wren;
    return orchard;
  }

  void startOnCalendar(const Orchard& orchard) {
    start(orchard);
    window.showPage(RailPage::calendar);
    QCoreApplication::processEvents();
    find<MonthView>("monthView")->setFocus(Qt::TabFocusReason);
  }

  CalendarPage& page() { return *window.findChild<CalendarPage*>(); }

  std::vector<TaskRow*> taskRows() {
    const auto found = page().findChild<Checklist*>()->findChildren<TaskRow*>();
    return {found.begin(), found.end()};
  }

  /// The first listed task that is neither late nor settled.
  TaskRow& openTask() {
    for (TaskRow* row : taskRows()) {
      const TaskView* view = session.view(row->task());
      if (view->state == TaskState::open || view->state == TaskState::closing)
        return *row;
    }
    throw std::runtime_error{"no open task"};
  }

  TaskKey focusOpenTask() {
    openTask().setFocus(Qt::TabFocusReason);
    return openTask().task();
  }

  double rowsDone(const TaskKey& task) { return session.view(task)->progress.rowsDone(); }
};

TEST_F(CalendarPageTest, arrowsMoveAndSpaceChoosesTheDay) {
  startOnCalendar(creek());
  EXPECT_EQ(page().chosenDay(), session.today());
  press(Qt::Key_Right);
  press(Qt::Key_Down);
  EXPECT_EQ(page().chosenDay(), session.today()) << "moving is not choosing";
  press(Qt::Key_Space);
  EXPECT_EQ(isoText(page().chosenDay()), "2027-04-14");
  EXPECT_EQ(textOf("dayTitle"), "Wednesday 14 April");
}

TEST_F(CalendarPageTest, theKeyboardTurnsTheMonthAndComesBack) {
  startOnCalendar(creek());
  press(Qt::Key_PageDown);
  EXPECT_EQ(textOf("calendarTitle"), "May 2027");
  EXPECT_EQ(isoText(page().chosenDay()), "2027-05-06");
  press(Qt::Key_PageUp);
  press(Qt::Key_PageUp);
  EXPECT_EQ(textOf("calendarTitle"), "March 2027");
  press(Qt::Key_Home);
  EXPECT_EQ(textOf("calendarTitle"), "April 2027");
  EXPECT_EQ(page().chosenDay(), session.today());
}

TEST_F(CalendarPageTest, arrowsLeaveTheMonthAtItsLastWeek) {
  startOnCalendar(creek());
  for (int week = 0; week < 4; ++week) press(Qt::Key_Down);
  EXPECT_EQ(textOf("calendarTitle"), "May 2027");
  EXPECT_EQ(isoText(page().chosenDay()), "2027-05-04");
}

TEST_F(CalendarPageTest, enterOnABarOpensItsTask) {
  startOnCalendar(creek());
  press(Qt::Key_Right, Qt::ControlModifier);
  const auto* view = find<MonthView>("monthView");
  EXPECT_THAT(view->accessibleDescription().toStdString(), HasSubstr("Creek"))
      << "the reader hears the bar, its state and its days";
  press(Qt::Key_Return);
  const auto* row = qobject_cast<TaskRow*>(QApplication::focusWidget());
  ASSERT_NE(row, nullptr);
  EXPECT_TRUE(row->accessibleName().contains(QStringLiteral("Creek")));
}

TEST_F(CalendarPageTest, typedRowsAreTicked) {
  startOnCalendar(creek());
  const TaskKey task = focusOpenTask();
  press(Qt::Key_Return);
  ASSERT_EQ(QApplication::focusWidget(), find<QLineEdit>("tickRows"));
  type(QStringLiteral("1-4"));
  EXPECT_EQ(find<RowGrid>("cells")->chosen(), RowSet::range(1, 4));
  EXPECT_EQ(find<QPushButton>("tickDeed")->text(), QStringLiteral("Tick 4 rows"));
  find<QLineEdit>("tickHours")->setText(QLocale{}.toString(1.5, 'f', 1));
  press(Qt::Key_Return);

  EXPECT_DOUBLE_EQ(rowsDone(task), 4);
  const Tick& tick = session.orchard().ticks.begin()->second;
  EXPECT_EQ(tick.minutes, 90);
  EXPECT_EQ(tick.by, "Wren");
  EXPECT_EQ(tick.day, session.today());
  EXPECT_TRUE(find<TickPanel>("tickPanel")->isVisible()) << "six rows are left";
}

TEST_F(CalendarPageTest, rowsTheTaskLacksAreSaidBesideTheField) {
  startOnCalendar(creek());
  focusOpenTask();
  press(Qt::Key_Return);
  type(QStringLiteral("9-12"));
  EXPECT_EQ(textOf("tickProblem"), "Rows 11-12 are not in this task. It has rows 1-10.");
  EXPECT_FALSE(find<QPushButton>("tickDeed")->isEnabled());
  press(Qt::Key_Return);
  EXPECT_TRUE(session.orchard().ticks.empty());
}

TEST_F(CalendarPageTest, hoursThatAreNoFigureAreRefused) {
  startOnCalendar(creek());
  focusOpenTask();
  press(Qt::Key_Return);
  type(QStringLiteral("2"));
  find<QLineEdit>("tickHours")->setText(QStringLiteral("an hour"));
  press(Qt::Key_Return);
  EXPECT_THAT(textOf("tickProblem"), HasSubstr("an hour"));
  EXPECT_TRUE(session.orchard().ticks.empty());
  find<QLineEdit>("tickHours")->setText(QStringLiteral("2"));
  press(Qt::Key_Return);
  EXPECT_EQ(session.orchard().ticks.size(), 1U) << "mended, the same key ticks";
}

TEST_F(CalendarPageTest, cellsAndFieldFollowEachOther) {
  startOnCalendar(creek());
  focusOpenTask();
  press(Qt::Key_Return);
  auto* cells = find<RowGrid>("cells");
  cells->setFocus(Qt::TabFocusReason);
  press(Qt::Key_Space);
  press(Qt::Key_Right, Qt::ShiftModifier);
  press(Qt::Key_Right, Qt::ShiftModifier);
  EXPECT_EQ(find<QLineEdit>("tickRows")->text(), QStringLiteral("1-3"));
  QTest::mousePress(cells, Qt::LeftButton, {}, QPoint{48 * 4 + 20, 20});
  QTest::mouseMove(cells, QPoint{48 * 6 + 20, 20});
  QTest::mouseRelease(cells, Qt::LeftButton, {}, QPoint{48 * 6 + 20, 20});
  EXPECT_EQ(find<QLineEdit>("tickRows")->text(), QStringLiteral("1-3, 5-7"));
}

TEST_F(CalendarPageTest, halfOfARowIsHalfDone) {
  startOnCalendar(creek());
  const TaskKey task = focusOpenTask();
  press(Qt::Key_Return);
  type(QStringLiteral("1-4"));
  find<QCheckBox>("tickPartly")->setChecked(true);
  press(Qt::Key_Return);
  EXPECT_DOUBLE_EQ(rowsDone(task), 2);
  EXPECT_EQ(session.view(task)->rowsLeft().count(), 10) << "none is whole";
}

TEST_F(CalendarPageTest, doneRowsCanBeTakenBack) {
  startOnCalendar(creek());
  const TaskKey task = focusOpenTask();
  press(Qt::Key_Return);
  type(QStringLiteral("1-4"));
  press(Qt::Key_Return);
  type(QStringLiteral("2-3"));
  const auto* deed = find<QPushButton>("takeBackDeed");
  ASSERT_TRUE(deed->isVisible());
  EXPECT_EQ(deed->text(), QStringLiteral("Take back 2 rows"));
  click("takeBackDeed");
  EXPECT_DOUBLE_EQ(rowsDone(task), 2);
}

TEST_F(CalendarPageTest, spaceTicksTheWholeTaskAndUndoTakesItBack) {
  startOnCalendar(creek());
  const TaskKey task = focusOpenTask();
  press(Qt::Key_Space);
  EXPECT_EQ(session.view(task)->state, TaskState::done);
  const auto* row = qobject_cast<TaskRow*>(QApplication::focusWidget());
  ASSERT_NE(row, nullptr) << "the list was filled anew, the keyboard stays";
  EXPECT_EQ(row->task(), task);
  EXPECT_THAT(find<QPushButton>("undo")->toolTip().toStdString(),
              HasSubstr("10 rows ticked in Creek"));
  click("undo");
  EXPECT_DOUBLE_EQ(rowsDone(task), 0);
}

TEST_F(CalendarPageTest, spaceOnADoneTaskTakesItBack) {
  startOnCalendar(creek());
  const TaskKey task = focusOpenTask();
  press(Qt::Key_Space);
  press(Qt::Key_Space);
  EXPECT_DOUBLE_EQ(rowsDone(task), 0);
}

TEST_F(CalendarPageTest, withNobodyKnownTheWholeTaskAsksWhoDidIt) {
  Orchard orchard = creek();
  orchard.crews.clear();
  startOnCalendar(orchard);
  const TaskKey task = focusOpenTask();
  press(Qt::Key_Space);
  EXPECT_DOUBLE_EQ(rowsDone(task), 0);
  ASSERT_TRUE(find<QComboBox>("tickWho")->hasFocus());
  type(QStringLiteral("Robin"));
  press(Qt::Key_Return);
  EXPECT_EQ(session.view(task)->state, TaskState::done);
  const TaskKey next = focusOpenTask();
  press(Qt::Key_Space);
  EXPECT_EQ(session.view(next)->state, TaskState::done) << "known from now on";
}

TEST_F(CalendarPageTest, aTickOfAPastDayIsDatedThatDay) {
  startOnCalendar(creek());
  press(Qt::Key_Left);
  press(Qt::Key_Space);
  focusOpenTask();
  press(Qt::Key_Space);
  EXPECT_EQ(isoText(session.orchard().ticks.begin()->second.day), "2027-04-05");
}

TEST_F(CalendarPageTest, nothingIsDatedAhead) {
  startOnCalendar(creek());
  press(Qt::Key_Right);
  press(Qt::Key_Space);
  focusOpenTask();
  press(Qt::Key_Space);
  EXPECT_EQ(session.orchard().ticks.begin()->second.day, session.today());
}

TEST_F(CalendarPageTest, settingAsideNeedsAReason) {
  startOnCalendar(creek());
  const TaskKey task = focusOpenTask();
  Q_EMIT openTask().asideWanted(task);
  ASSERT_EQ(QApplication::focusWidget(), find<QLineEdit>("formText"));
  press(Qt::Key_Return);
  EXPECT_EQ(textOf("formProblem"), "Say why it is set aside, for whoever looks next.");
  type(QStringLiteral("Hail took the crop."));
  press(Qt::Key_Return);
  EXPECT_EQ(session.view(task)->state, TaskState::setAside);
  EXPECT_EQ(session.orchard().marks.at(task).setAsideReason, "Hail took the crop.");
  const auto rows = taskRows();
  const auto row = std::ranges::find(rows, task, &TaskRow::task);
  ASSERT_NE(row, rows.end()) << "it stays in sight";
  Q_EMIT(*row)->restoreWanted(task);
  EXPECT_NE(session.view(task)->state, TaskState::setAside);
}

TEST_F(CalendarPageTest, aWindowIsMoved) {
  startOnCalendar(creek());
  const TaskKey task = focusOpenTask();
  Q_EMIT openTask().moveWanted(task);
  find<QDateEdit>("formFrom")->setDate({2027, 4, 5});
  find<QDateEdit>("formTo")->setDate({2027, 4, 8});
  click("formDeed");
  EXPECT_EQ(isoText(session.view(task)->task->opens), "2027-04-05");
  EXPECT_EQ(isoText(session.view(task)->task->closes), "2027-04-08");
}

TEST_F(CalendarPageTest, workIsAddedByHand) {
  startOnCalendar(creek());
  click("addWork");
  type(QStringLiteral("Mend the deer fence"));
  press(Qt::Key_Return);
  ASSERT_EQ(session.orchard().marks.size(), 1U);
  const TaskMark& mark = session.orchard().marks.begin()->second;
  EXPECT_EQ(mark.handTitle, "Mend the deer fence");
  EXPECT_EQ(mark.moved->first, session.today());
  const auto rows = taskRows();
  EXPECT_TRUE(std::ranges::any_of(rows, [](const TaskRow* row) {
    return row->accessibleName().contains(QStringLiteral("Mend the deer fence"));
  }));
}

TEST_F(CalendarPageTest, wSaysWhyInPlace) {
  startOnCalendar(creek());
  focusOpenTask();
  press(Qt::Key_W);
  const auto* why = openTask().findChild<QLabel*>(QStringLiteral("whyText"));
  ASSERT_NE(why, nullptr);
  EXPECT_THAT(why->text().toStdString(), HasSubstr("2027"));
  press(Qt::Key_W);
  EXPECT_EQ(openTask().findChild<QLabel*>(QStringLiteral("whyText")), nullptr);
}

TEST_F(CalendarPageTest, upAndDownWalkTheList) {
  startOnCalendar(creek());
  ASSERT_GE(taskRows().size(), 2U);
  taskRows()[0]->setFocus(Qt::TabFocusReason);
  press(Qt::Key_Down);
  EXPECT_EQ(QApplication::focusWidget(), taskRows()[1]);
  press(Qt::Key_Up);
  EXPECT_EQ(QApplication::focusWidget(), taskRows()[0]);
}

TEST_F(CalendarPageTest, escapeClosesTheFootAndGoesBackToTheTask) {
  startOnCalendar(creek());
  const TaskKey task = focusOpenTask();
  press(Qt::Key_Return);
  press(Qt::Key_Escape);
  EXPECT_FALSE(find<TickPanel>("tickPanel")->isVisible());
  const auto* row = qobject_cast<TaskRow*>(QApplication::focusWidget());
  ASSERT_NE(row, nullptr);
  EXPECT_EQ(row->task(), task);
}

TEST_F(CalendarPageTest, readOnlyOrchardsAreLookedAtOnly) {
  const QString path = lay(QStringLiteral("held.topwire"), creek());
  ASSERT_TRUE(session.open(path, Access::look));
  window.show();
  window.showPage(RailPage::calendar);
  focusOpenTask();
  press(Qt::Key_Space);
  press(Qt::Key_Return);
  EXPECT_TRUE(session.orchard().ticks.empty());
  EXPECT_FALSE(find<TickPanel>("tickPanel")->isVisible());
  EXPECT_FALSE(find<QPushButton>("addWork")->isEnabled());
}

TEST_F(CalendarPageTest, aWeekShowsEveryBarOfIt) {
  startOnCalendar(creek());
  click("week");
  const MonthLayout& layout = find<MonthView>("monthView")->layoutShown();
  ASSERT_EQ(layout.weeks.size(), 1U);
  EXPECT_EQ(layout.weeks[0].week, (IsoWeek{2027, 14}));
  EXPECT_EQ(layout.weeks[0].hidden, 0);
}

TEST_F(CalendarPageTest, printingAsksForTheChosenDaysWeek) {
  startOnCalendar(creek());
  QSignalSpy spy{&page(), &CalendarPage::printWanted};
  page().disconnect(&window);
  page().showDay(dayOf(2027, 1, 3));
  click("print");
  ASSERT_EQ(spy.size(), 1);
  EXPECT_EQ(spy[0][0].value<IsoWeek>(), (IsoWeek{2026, 53}));
}

TEST_F(CalendarPageTest, withoutAPlantingItSaysWhatWillStandHere) {
  Orchard bare;
  bare.settings = northernSettings();
  startOnCalendar(bare);
  EXPECT_TRUE(find<QPushButton>("calendarAddBlock")->isVisible());
  EXPECT_FALSE(find<MonthView>("monthView")->isVisible());
}

TEST_F(CalendarPageTest, onANarrowWindowTheListGoesUnderTheMonth) {
  startOnCalendar(creek());
  window.resize(1024, 768);
  QTest::qWait(50);
  const auto* list = page().findChild<Checklist*>();
  const auto* view = find<MonthView>("monthView");
  EXPECT_GT(list->mapTo(&page(), QPoint{}).y(),
            view->mapTo(&page(), QPoint{0, view->height()}).y() - 1);
  EXPECT_LE(list->width(), page().width());
}

TEST_F(CalendarPageTest, theSheetIsPreviewedAndSaved) {
  start(creek());
  PrintWindow sheet{session, {2027, 14}};
  sheet.show();
  ASSERT_FALSE(sheet.pages().empty());
  EXPECT_THAT(sheet.findChild<QLabel*>(QStringLiteral("weekLabel"))->text().toStdString(),
              HasSubstr("Week 14"));
  const QSizeF before = sheet.pages().front().size;
  auto* paper = sheet.findChild<QComboBox*>(QStringLiteral("paper"));
  paper->setCurrentIndex(1 - paper->currentIndex());
  EXPECT_NE(sheet.pages().front().size, before);
  sheet.findChild<QPushButton*>(QStringLiteral("laterWeek"))->click();
  EXPECT_EQ(sheet.week(), (IsoWeek{2027, 15}));

  const QString path = folder.filePath(QStringLiteral("sheet.pdf"));
  ASSERT_TRUE(sheet.savePdf(path));
  QFile file{path};
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  EXPECT_EQ(file.read(5), QByteArray{"%PDF-"});
}

QImage cellImage(CellMark mark, QSize size) {
  QImage image{size, QImage::Format_RGB32};
  image.fill(Qt::white);
  QPainter painter{&image};
  paintRowCell(painter, QRectF{QPointF{}, size}, mark);
  painter.end();
  return image.convertToFormat(QImage::Format_Grayscale8);
}

QImage shapeImage(TaskState state) {
  QImage image{16, 16, QImage::Format_RGB32};
  image.fill(baseColours(currentTheme()).surface);
  QPainter painter{&image};
  paintShape(painter, {0, 0, 16, 16}, state);
  painter.end();
  QImage grey = image.convertToFormat(QImage::Format_Grayscale8);
  // Black and white, so that not even its lightness is left of a colour.
  for (int y = 0; y < grey.height(); ++y)
    for (int x = 0; x < grey.width(); ++x)
      grey.scanLine(y)[x] = grey.constScanLine(y)[x] < 190 ? 0 : 255;
  return grey;
}

int pixelsApart(const QImage& a, const QImage& b) {
  int apart = 0;
  for (int y = 0; y < a.height(); ++y)
    for (int x = 0; x < a.width(); ++x)
      if (std::abs(a.constScanLine(y)[x] - b.constScanLine(y)[x]) > 48) ++apart;
  return apart;
}

struct CellSize {
  int width;
  int height;
};

class RowCells : public ::testing::TestWithParam<CellSize> {};

TEST_P(RowCells, differWithoutColour) {
  const QSize size{GetParam().width, GetParam().height};
  constexpr std::array marks{
      CellMark::toDo, CellMark::partly, CellMark::done, CellMark::notInTask};
  for (const Theme theme : {Theme::light, Theme::dark}) {
    setCurrentTheme(theme);
    for (std::size_t i = 0; i < marks.size(); ++i)
      for (std::size_t j = i + 1; j < marks.size(); ++j)
        EXPECT_GE(pixelsApart(cellImage(marks[i], size), cellImage(marks[j], size)),
                  size.width() * size.height() / 12)
            << i << " and " << j;
  }
  setCurrentTheme(Theme::light);
}

INSTANTIATE_TEST_SUITE_P(Sizes,
                         RowCells,
                         ::testing::Values(CellSize{5, 15},
                                           CellSize{9, 18},
                                           CellSize{44, 44}));

TEST(StateShapes, differWithoutColour) {
  setCurrentTheme(Theme::light);
  constexpr std::array states{TaskState::waiting,
                              TaskState::open,
                              TaskState::closing,
                              TaskState::late,
                              TaskState::lapsed,
                              TaskState::done,
                              TaskState::setAside};
  constexpr int enough = 20;  // of 256 pixels
  for (std::size_t i = 0; i < states.size(); ++i)
    for (std::size_t j = i + 1; j < states.size(); ++j)
      EXPECT_GE(pixelsApart(shapeImage(states[i]), shapeImage(states[j])), enough)
          << i << " and " << j;
}

TEST_F(CalendarPageTest, marksWhatShouldWaitAndSaysWhyOnce) {
  Orchard orchard = creek();
  testing::put(orchard, dayOf(2027, 4, 6), {3, 11, 4.2, WeatherSource::forecast});
  startOnCalendar(orchard);
  EXPECT_EQ(textOf("dayWaits"),
            "Rain, 4.2 mm. Disease spreads in wet trees, and rungs slip.");
  int waiting = 0;
  for (TaskRow* row : taskRows()) {
    const Operation* operation = session.operationOf(*session.view(row->task())->task);
    const bool marked = row->findChild<QWidget*>(QStringLiteral("waitWord")) != nullptr;
    EXPECT_EQ(marked, operation->avoid.contains(Avoid::wet)) << operation->id;
    EXPECT_EQ(marked,
              row->accessibleName().contains(QStringLiteral("should wait: Rain")));
    waiting += marked ? 1 : 0;
  }
  EXPECT_GT(waiting, 0);
  page().showDay(dayOf(2027, 4, 8));
  settle();
  EXPECT_FALSE(isShown(*window.findChild<QLabel*>(QStringLiteral("dayWaits"))));
}

}  // namespace

}  // namespace topwire

Q_DECLARE_METATYPE(topwire::IsoWeek)
