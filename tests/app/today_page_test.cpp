#include "app/windows/job_bar.h"
#include "app/windows/tick_panel.h"
#include "app/windows/today_side.h"
#include "app/words/say.h"
#include "core/edit/crew_deeds.h"
#include "tests/app/today_test.h"

#include <QMenu>
#include <QSignalSpy>

namespace topwire {

namespace {

using ::testing::HasSubstr;
using testing::kestrel;
using testing::orchardOfTwoCrews;
using testing::TodayPageTest;
using testing::wren;

TEST_F(TodayPageTest, itIsThePageOneOpensOn) {
  start(orchardOfTwoCrews());
  EXPECT_EQ(window.page(), RailPage::today);
  EXPECT_EQ(textOf("pageTitle"), "Tuesday 6 April");
  EXPECT_THAT(textOf("pageSubtitle"), HasSubstr("week 14"));
  EXPECT_THAT(textOf("headline"), HasSubstr("56 worker-hours"));
}

TEST_F(TodayPageTest, eachCrewHasALaneWithItsJobs) {
  startOn(orchardOfTwoCrews());
  ASSERT_EQ(lanes().findChildren<CrewHead*>().size(), 2);
  for (const CrewId crew : {kestrel, wren}) {
    ASSERT_FALSE(cardsOf(crew).empty());
    const std::string name = cardsOf(crew).front()->accessibleName().toStdString();
    EXPECT_THAT(name, ::testing::AnyOf(HasSubstr("Creek"), HasSubstr("Quarry")));
    EXPECT_THAT(name, HasSubstr("06:30"));
  }
}

TEST_F(TodayPageTest, wSaysWhyTheJobStandsThere) {
  startOn(orchardOfTwoCrews());
  focusCardOf(kestrel);
  press(Qt::Key_W);
  EXPECT_TRUE(find<QLabel>("jobReasons")->isVisible());
  EXPECT_FALSE(textOf("jobReasons").empty());
  EXPECT_NE(focusedCard(), nullptr) << "the keyboard stays on the card";
}

TEST_F(TodayPageTest, aJobThatWaitsSaysWhyAndCanBeGivenToACrew) {
  startOn(orchardOfTwoCrews());
  BlockClosure closure;
  closure.id = session.ids().next<ClosureId>();
  closure.block = BlockId{0, 11};
  closure.from = session.today();
  closure.until = plusDays(session.today(), 2);
  closure.untilMinute = 360;
  ASSERT_TRUE(session.perform(closeBlock(session.orchard(), closure)).empty());
  settle();
  auto* why = find<QPushButton>("why:0");
  why->setFocus(Qt::TabFocusReason);
  press(Qt::Key_Space);
  EXPECT_TRUE(find<JobBar>("jobBar")->isVisible());
  EXPECT_FALSE(textOf("jobReasons").empty());
  EXPECT_TRUE(find<QPushButton>("giveJob")->isVisible());
  EXPECT_EQ(find<QPushButton>("giveJob")->menu()->actions().size(), 2);
  EXPECT_FALSE(find<QPushButton>("notToday")->isVisible()) << "it is not today's";
  press(Qt::Key_Escape);
  EXPECT_FALSE(find<JobBar>("jobBar")->isVisible());
  EXPECT_EQ(QApplication::focusWidget(), why);
}

TEST_F(TodayPageTest, saysHowManyPastYearsWouldMissAWindow) {
  startOn(orchardOfTwoCrews());
  const TaskKey task = cardsOf(kestrel).front()->place().task;
  auto* side = find<TodaySide>("todaySide");
  const auto pastYears = [&] {
    std::string words;
    for (const QLabel* label : find<QWidget>("pastYears")->findChildren<QLabel*>())
      if (label->isVisible()) words += label->text().toStdString() + '\n';
    return words;
  };
  side->setPlan(*window.planner().plan(), {{task, 7, 30}}, session.today());
  settle();
  EXPECT_THAT(pastYears(), HasSubstr("Missed in 7 of 30 past years' weather."));
  side->setPlan(*window.planner().plan(), {{task, 30, 30}}, session.today());
  settle();
  EXPECT_THAT(pastYears(), HasSubstr("Missed in all 30 past years' weather"));
  side->setPlan(*window.planner().plan(), {}, session.today());
  EXPECT_FALSE(find<QWidget>("pastYears")->isVisible());
}

TEST_F(TodayPageTest, tabGoesFromACrewsStepsToOneOfItsCards) {
  startOn(orchardOfTwoCrews());
  headOf(0)
      .findChild<QPushButton*>(QStringLiteral("turnoutMore"))
      ->setFocus(Qt::TabFocusReason);
  press(Qt::Key_Tab);
  ASSERT_NE(focusedCard(), nullptr);
  EXPECT_EQ(focusedCard()->place().crew, kestrel);
  press(Qt::Key_Right);
  ASSERT_NE(focusedCard(), nullptr);
  const TaskKey second = focusedCard()->place().task;
  press(Qt::Key_Tab);
  EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("turnoutFewer"));
  press(Qt::Key_Tab, Qt::ShiftModifier);
  ASSERT_NE(focusedCard(), nullptr);
  EXPECT_EQ(focusedCard()->place().task, second) << "it stops where one has been";
}

TEST_F(TodayPageTest, stepsGoFromWorkingDayToWorkingDay) {
  startOn(orchardOfTwoCrews());
  for (int day = 0; day < 5; ++day) click("laterDay");
  EXPECT_EQ(isoText(page().day()), "2027-04-12") << "past Sunday, a day of rest";
  EXPECT_THAT(textOf("pageSubtitle"), HasSubstr("in 6 days"));
  click("earlierDay");
  EXPECT_EQ(isoText(page().day()), "2027-04-10");
  click("toToday");
  EXPECT_EQ(page().day(), session.today());
  EXPECT_FALSE(find<QPushButton>("earlierDay")->isEnabled()) << "nothing is on record";
}

TEST_F(TodayPageTest, arrowsGoFromCardToCard) {
  startOn(orchardOfTwoCrews());
  focusCardOf(kestrel);
  press(Qt::Key_Down);
  ASSERT_NE(focusedCard(), nullptr);
  EXPECT_EQ(focusedCard()->place().crew, wren);
  press(Qt::Key_Up);
  EXPECT_EQ(focusedCard()->place().crew, kestrel);
  EXPECT_TRUE(session.orchard().pins.empty());
}

TEST_F(TodayPageTest, withoutCrewsItSaysWhatIsMissingAndLeadsThere) {
  Orchard orchard = orchardOfTwoCrews();
  orchard.crews.clear();
  startOn(orchard);
  EXPECT_TRUE(find<QLabel>("noCrews")->isVisible());
  EXPECT_FALSE(find<QWidget>("crewLanes")->isVisible());
  click("openSettings");
  EXPECT_EQ(window.page(), RailPage::settings);
}

TEST_F(TodayPageTest, aCrewWithoutWorkSaysSo) {
  Orchard orchard = orchardOfTwoCrews();
  orchard.plantings.clear();
  startOn(orchard);
  EXPECT_TRUE(cardsOf(kestrel).empty());
  const auto* lane = lanes().findChildren<LaneCards*>().at(0);
  EXPECT_EQ(lane->accessibleName(), QStringLiteral("No work for this crew."));
}

TEST_F(TodayPageTest, anOrchardHeldElsewhereIsLookedAtOnly) {
  const QString path = lay(QStringLiteral("held.topwire"), orchardOfTwoCrews());
  ASSERT_TRUE(session.open(path, Access::look));
  window.show();
  settle();
  ASSERT_FALSE(cardsOf(kestrel).empty()) << "the plan is shown";
  for (const char* name : {"turnoutFewer", "turnoutMore", "acceptPlan", "lostDay"})
    EXPECT_FALSE(find<QPushButton>(name)->isEnabled()) << name;
  EXPECT_FALSE(find<QPushButton>("closeBlock")->isEnabled());
  focusCardOf(kestrel);
  press(Qt::Key_Down, Qt::ControlModifier);
  press(Qt::Key_Return);
  EXPECT_TRUE(session.orchard().pins.empty());
  EXPECT_FALSE(find<TickPanel>("tickPanel")->isVisible());
  EXPECT_TRUE(find<JobBar>("jobBar")->isVisible()) << "why is for everybody";
}

TEST_F(TodayPageTest, otherPagesPlanNothing) {
  startOn(orchardOfTwoCrews());
  window.showPage(RailPage::blocks);
  QSignalSpy spy{&window.planner(), &CrewPlanner::planned};
  session.perform(addBlock(session.orchard(), testing::block(30, "Far", "1-2")));
  EXPECT_EQ(spy.count(), 0);
  window.showPage(RailPage::today);
  EXPECT_EQ(spy.count(), 1) << "made up for when somebody looks";
}

TEST_F(TodayPageTest, everyButtonHasAName) {
  startOn(orchardOfTwoCrews());
  for (const QPushButton* button : page().findChildren<QPushButton*>()) {
    if (!button->isVisible()) continue;
    EXPECT_FALSE(button->text().isEmpty() && button->accessibleName().isEmpty())
        << button->objectName().toStdString();
  }
}

TEST_F(TodayPageTest, whatStandsBesideGoesBelowWhereItIsNarrow) {
  startOn(orchardOfTwoCrews());
  auto* side = find<QWidget>("todaySide");
  EXPECT_GT(side->x(), lanes().width());
  window.resize(1024, 768);
  settle();
  EXPECT_GT(side->mapTo(&window, QPoint{}).y(),
            lanes().mapTo(&window, QPoint{0, lanes().height()}).y());
}

class TodayPageInSpanish : public TodayPageTest {
protected:
  TodayPageInSpanish() { speak(QStringLiteral("es_MX")); }

  ~TodayPageInSpanish() override { speak(QStringLiteral("en_GB")); }
};

TEST_F(TodayPageInSpanish, thePageSpeaksIt) {
  MainWindow spanish{session, answers, preferences, MainWindow::TodayFrom::given};
  spanish.planner().setRuns(CrewPlanner::Runs::atOnce);
  spanish.planner().setMostTrades(trades);
  const QString path = lay(QStringLiteral("es.topwire"), orchardOfTwoCrews());
  ASSERT_TRUE(spanish.openAtStart(path, folder.path()));
  spanish.show();
  settle();
  const auto textIn = [&](const char* name) {
    return spanish.findChild<QPushButton*>(QLatin1String(name))->text().toStdString();
  };
  EXPECT_THAT(textIn("acceptPlan"), HasSubstr("Aceptar"));
  const auto* lane = spanish.findChild<LaneCards*>();
  ASSERT_FALSE(lane->cards().empty());
  EXPECT_THAT(lane->cards().front()->accessibleName().toStdString(),
              HasSubstr("hileras"));
}

}  // namespace

}  // namespace topwire
