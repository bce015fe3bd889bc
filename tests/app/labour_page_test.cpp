#include "app/windows/labour_page.h"

#include "app/windows/labour_strip.h"
#include "app/windows/plain_table.h"
#include "core/edit/crew_deeds.h"
#include "tests/app/window_test.h"

#include <QSignalSpy>
#include <QSpinBox>

namespace topwire {

namespace {

using ::testing::AnyOf;
using ::testing::HasSubstr;
using testing::northernSettings;
using ::testing::Not;
using testing::orchardOfOne;

class LabourPageTest : public testing::WindowTest {
protected:
  void begin(int workers) {
    Orchard orchard = orchardOfOne(northernSettings(), dayOf(2025, 4, 10));
    if (workers > 0) {
      Crew crew;
      crew.id = {0, 9};
      crew.name = "Heron";
      crew.workers = workers;
      orchard.crews[crew.id] = crew;
    }
    page()->planner().setMostTrades(2);
    page()->planner().setRuns(runs);
    start(orchard);
    window.showPage(RailPage::labour);
    if (runs == LabourPlanner::Runs::atOnce) settle();
  }

  void waitForPlans() {
    QSignalSpy spy{&page()->planner(), &LabourPlanner::changed};
    while (page()->planner().isPlanning()) ASSERT_TRUE(spy.wait(20'000));
    settle();
  }

  /// Every line, its cells with bars between.
  std::string rowsOf(const char* table) {
    const auto* shown = find<PlainTable>(table);
    QStringList lines;
    for (int row = 0; row < shown->rowCount(); ++row) {
      QStringList cells;
      for (int column = 0; column < shown->columnCount(); ++column)
        cells << shown->item(row, column)->text();
      lines << cells.join(QLatin1String(" | "));
    }
    return lines.join(QLatin1Char('\n')).toStdString();
  }

  std::string headWords() {
    QStringList words;
    for (const QLabel* label : page()->findChildren<QLabel*>())
      if (label->isVisible()) words << label->text();
    return words.join(QLatin1Char('\n')).toStdString();
  }

  Checked<Change> turnout(int workers) {
    return setTurnout(session.orchard(), {{{0, 9}, session.today()}, workers});
  }

  /// Ticks rows of the first job of the plan.
  void tickSome(int rows, int minutes) {
    const CrewPlan& plan = *page()->planner().known();
    const TaskView* view = session.view(plan.question.tasks.at(0));
    Tick tick;
    tick.id = {0, 77};
    tick.task = view->task->key;
    const int first = view->task->rows.rows().front();
    tick.rows = RowSet::range(first, first + rows - 1);
    tick.percent = 100;
    tick.minutes = minutes;
    tick.by = "Heron";
    tick.day = session.today();
    session.perform(tickRows(session.orchard(), *view->task, {"Work", "Trabajo"}, tick));
  }

  LabourPlanner::Runs runs = LabourPlanner::Runs::atOnce;

  LabourPage* page() { return window.findChild<LabourPage*>(); }

  bool shown(const char* name) {
    return window.findChild<QWidget*>(QLatin1String(name))->isVisible();
  }
};

TEST_F(LabourPageTest, weeksStandAheadWithTheirFigures) {
  begin(4);
  const auto* strip = find<LabourStrip>("labourStrip");
  EXPECT_THAT(strip->reading().toStdString(), HasSubstr("worker-hours there"));
  EXPECT_FALSE(shown("supposedStrip"));
}

TEST_F(LabourPageTest, aSuppositionStandsBesideWhatIsKnown) {
  begin(1);
  page()->suppose({5, {}, 0});
  settle();
  EXPECT_TRUE(shown("supposedStrip"));
  const QString known = find<LabourStrip>("labourStrip")->reading();
  const QString supposed = find<LabourStrip>("supposedStrip")->reading();
  EXPECT_NE(known, supposed);
}

TEST_F(LabourPageTest, aWeeksLittleWorkIsNotNone) {
  WeekOfLabour week;
  week.wanted = 0.2;
  EXPECT_THAT(wordsOf(week).toStdString(),
              HasSubstr("0 worker-hours there, under 1 wanted"));
}

TEST_F(LabourPageTest, anotherThemeKeepsTheJobsAndDrawsTheirShapesAnew) {
  begin(4);
  const auto shape = [&] {
    return find<PlainTable>("comingJobs")->item(0, 4)->icon().pixmap(15, 15).toImage();
  };
  const std::string rows = rowsOf("comingJobs");
  const QImage light = shape();
  applyLook(*qApp, Theme::dark);
  settle();
  EXPECT_EQ(rowsOf("comingJobs"), rows);
  EXPECT_NE(shape(), light);
}

TEST_F(LabourPageTest, arrowsGoFromWeekToWeek) {
  begin(4);
  auto* strip = find<LabourStrip>("labourStrip");
  strip->setFocus();
  const QString first = strip->reading();
  QTest::keyClick(strip, Qt::Key_Right);
  EXPECT_NE(strip->reading(), first);
  QTest::keyClick(strip, Qt::Key_Home);
  EXPECT_EQ(strip->reading(), first);
}

TEST_F(LabourPageTest, withoutCrewsItSaysSoAndLeadsToThem) {
  begin(0);
  EXPECT_TRUE(shown("noLabour"));
  EXPECT_FALSE(shown("labourStrip"));
  click("crewsFromLabour");
  EXPECT_EQ(window.page(), RailPage::settings);
}

TEST_F(LabourPageTest, theFiguresBeforeStandWhileItIsPlannedAnew) {
  runs = LabourPlanner::Runs::beside;
  begin(4);
  EXPECT_THAT(textOf("labourSummary"), HasSubstr("Planning the season"));
  waitForPlans();
  const std::string before = textOf("labourSummary");
  EXPECT_THAT(before, HasSubstr("weeks"));
  session.perform(turnout(0));
  EXPECT_TRUE(page()->planner().isPlanning());
  EXPECT_EQ(textOf("labourSummary"), before);
  EXPECT_THAT(headWords(), HasSubstr("weeks ahead · planning…"));
  waitForPlans();
  EXPECT_NE(textOf("labourSummary"), before) << "a day's hours fewer";
  EXPECT_THAT(headWords(), Not(HasSubstr("planning…")));
}

TEST_F(LabourPageTest, aSuppositionIsPlannedBesideAndStandsWhenItIsReady) {
  runs = LabourPlanner::Runs::beside;
  begin(1);
  waitForPlans();
  find<QPushButton>("twoMore")->click();
  EXPECT_EQ(find<QSpinBox>("workersMore")->value(), 2);
  EXPECT_FALSE(shown("supposedStrip"));
  EXPECT_EQ(textOf("nothingSupposed"), "Planning…");
  waitForPlans();
  EXPECT_TRUE(shown("supposedStrip"));
  click("asKnown");
  EXPECT_FALSE(shown("supposedStrip"));
  EXPECT_EQ(find<QSpinBox>("workersMore")->value(), 0);
}

TEST_F(LabourPageTest, aRainyFortnightAndALateSpringAreOneButtonEach) {
  begin(1);
  click("rainyFortnight");
  EXPECT_EQ(page()->planner().supposition(),
            (Supposition{0, {{session.today(), plusDays(session.today(), 13)}}, 0}));
  click("lateSpring");
  EXPECT_EQ(page()->planner().supposition(), (Supposition{0, {}, 10}));
  EXPECT_TRUE(shown("supposedStrip"));
}

TEST_F(LabourPageTest, eachComingJobHasItsSpanAndHowItEnds) {
  begin(4);
  EXPECT_THAT(rowsOf("comingJobs"), HasSubstr("April"));
  EXPECT_THAT(rowsOf("comingJobs"), HasSubstr("in time"));
  EXPECT_THAT(find<PlainTable>("comingJobs")
                  ->item(0, 0)
                  ->data(Qt::AccessibleTextRole)
                  .toString()
                  .toStdString(),
              HasSubstr("window closes"));
}

/// Nobody turns up for weeks.
TEST_F(LabourPageTest, whatWillBeLateStandsFirstInAWordAndAShape) {
  begin(1);
  Crew away = session.orchard().crews.begin()->second;
  away.daysOff = {{session.today(), plusDays(session.today(), 40)}};
  session.perform(editCrew(session.orchard(), away));
  settle();
  const std::string rows = rowsOf("comingJobs");
  EXPECT_THAT(rows.substr(0, rows.find('\n')),
              AnyOf(HasSubstr("late"), HasSubstr("of use to")));
  EXPECT_FALSE(find<PlainTable>("comingJobs")->item(0, 4)->icon().isNull());
  EXPECT_THAT(textOf("comingJobsSum"), HasSubstr("will"));
}

TEST_F(LabourPageTest, whatWasLearnedStandsBesideTheProgrammesFigure) {
  begin(4);
  EXPECT_THAT(textOf("pacesSum"), HasSubstr("Nothing is learned yet"));
  EXPECT_FALSE(shown("paces"));
  tickSome(2, 240);
  settle();
  EXPECT_THAT(textOf("pacesSum"), HasSubstr("has hours noted"));
  EXPECT_THAT(rowsOf("paces"), HasSubstr("| 4 h | Heron "));
  click("allPaces");
  EXPECT_THAT(rowsOf("paces"), HasSubstr("nothing yet"));
}

TEST(PlanBeside, TakesTheAnswerToTheLastQuestionAlone) {
  QThreadPool pool;
  PlanBeside beside{pool};
  CrewQuestion nothing;
  nothing.problem.days = 1;
  nothing.problem.dayLength = {0};
  beside.askAtOnce(nothing, {0, 1});
  const std::uint64_t first = beside.generation();
  CrewPlan other;
  other.withoutMoves = 7;
  beside.askAtOnce(nothing, {0, 1});
  beside.take(first, other);
  EXPECT_EQ(beside.plan()->withoutMoves, 0);
  beside.take(beside.generation(), other);
  EXPECT_EQ(beside.plan()->withoutMoves, 7);
  EXPECT_FALSE(beside.isPlanning());
  beside.take(beside.generation(), other, PlanBeside::Answer::beforeSearch);
  EXPECT_TRUE(beside.isPlanning()) << "the whole one follows";
  beside.forget();
  EXPECT_EQ(beside.plan(), nullptr);
}

}  // namespace

}  // namespace topwire
