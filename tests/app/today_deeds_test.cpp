#include "app/windows/day_forms.h"
#include "app/windows/hours_form.h"
#include "app/windows/tick_panel.h"
#include "core/crews/plan_and_done.h"
#include "tests/app/today_test.h"

#include <QComboBox>

namespace topwire {

namespace {

using ::testing::HasSubstr;
using testing::kestrel;
using ::testing::Not;
using testing::orchardOfTwoCrews;
using testing::TodayPageTest;
using testing::wren;

TEST_F(TodayPageTest, anAbsentWorkerReplansTheDay) {
  startOn(orchardOfTwoCrews());
  headOf(0).findChild<QPushButton*>(QStringLiteral("turnoutFewer"))->click();
  settle();
  EXPECT_EQ(session.orchard().turnouts.at({kestrel, session.today()}).workers, 2);
  EXPECT_EQ(headOf(0).findChild<QLabel*>(QStringLiteral("turnout"))->text(),
            QStringLiteral("2"));
  EXPECT_THAT(textOf("headline"), HasSubstr("6 of 7 turned out."));
  EXPECT_THAT(textOf("headline"), HasSubstr("48 worker-hours"));
}

TEST_F(TodayPageTest, theStepperKeepsTheKeyboardThroughAReplan) {
  startOn(orchardOfTwoCrews());
  auto* fewer = headOf(1).findChild<QPushButton*>(QStringLiteral("turnoutFewer"));
  fewer->setFocus(Qt::TabFocusReason);
  for (int times = 0; times < 4; ++times) press(Qt::Key_Space);
  EXPECT_EQ(session.orchard().turnouts.at({wren, session.today()}).workers, 0);
  EXPECT_FALSE(fewer->isEnabled()) << "nobody is left to stay at home";
  EXPECT_TRUE(cardsOf(wren).empty());
}

TEST_F(TodayPageTest, aKeyGivesAJobToAnotherCrewAndTheKeyboardGoesWithIt) {
  startOn(orchardOfTwoCrews());
  const TaskKey task = focusCardOf(kestrel).place().task;
  press(Qt::Key_Down, Qt::ControlModifier);
  settle();
  ASSERT_EQ(session.orchard().pins.size(), 1U);
  const Pin& pin = session.orchard().pins.begin()->second;
  EXPECT_EQ(pin.kind, PinKind::crewToJob);
  EXPECT_EQ(pin.crew, wren);
  EXPECT_EQ(pin.task, task);
  EXPECT_EQ(pin.day, session.today());
  ASSERT_NE(focusedCard(), nullptr);
  EXPECT_EQ(focusedCard()->place().crew, wren);
  EXPECT_THAT(focusedCard()->accessibleName().toStdString(), HasSubstr("pinned"));
  press(Qt::Key_Delete);
  settle();
  EXPECT_TRUE(session.orchard().pins.empty());
}

TEST_F(TodayPageTest, aJobPinnedOnIsPinnedToOneCrewOnly) {
  startOn(orchardOfTwoCrews());
  focusCardOf(kestrel);
  press(Qt::Key_Down, Qt::ControlModifier);
  settle();
  ASSERT_EQ(focusedCard()->place().crew, wren);
  press(Qt::Key_Up, Qt::ControlModifier);
  settle();
  ASSERT_EQ(session.orchard().pins.size(), 1U);
  EXPECT_EQ(session.orchard().pins.begin()->second.crew, kestrel);
}

TEST_F(TodayPageTest, ticksOfAJobMovedWhileItIsOpenArePutDownToItsNewCrew) {
  startOn(orchardOfTwoCrews());
  const JobPlace place = focusCardOf(kestrel).place();
  press(Qt::Key_Return);
  EXPECT_EQ(find<QComboBox>("tickWho")->currentText(), QStringLiteral("Kestrel"));
  lanes().cardAt(place)->setFocus(Qt::OtherFocusReason);
  press(Qt::Key_Down, Qt::ControlModifier);
  settle();
  EXPECT_EQ(find<QComboBox>("tickWho")->currentText(), QStringLiteral("Wren"));
}

TEST_F(TodayPageTest, aCardDraggedToALanePinsItThere) {
  startOn(orchardOfTwoCrews());
  JobCard* card = cardsOf(kestrel).front();
  const TaskKey task = card->place().task;
  auto* target = lanes().findChildren<LaneCards*>().at(1);
  const QPoint onTarget =
      card->mapFromGlobal(target->mapToGlobal(target->rect().center()));
  QTest::mousePress(card, Qt::LeftButton, {}, QPoint{20, 20});
  QTest::mouseMove(card, QPoint{60, 60});
  QTest::mouseMove(card, onTarget);
  QTest::mouseRelease(card, Qt::LeftButton, {}, onTarget);
  settle();
  ASSERT_EQ(session.orchard().pins.size(), 1U);
  EXPECT_EQ(session.orchard().pins.begin()->second.crew, wren);
  EXPECT_EQ(session.orchard().pins.begin()->second.task, task);
}

TEST_F(TodayPageTest, aCardLetGoInItsOwnLaneStays) {
  startOn(orchardOfTwoCrews());
  JobCard* card = cardsOf(kestrel).front();
  QTest::mousePress(card, Qt::LeftButton, {}, QPoint{20, 20});
  QTest::mouseMove(card, QPoint{60, 40});
  QTest::mouseRelease(card, Qt::LeftButton, {}, QPoint{60, 40});
  settle();
  EXPECT_TRUE(session.orchard().pins.empty());
  EXPECT_FALSE(find<TickPanel>("tickPanel")->isVisible()) << "carried is not clicked";
}

TEST_F(TodayPageTest, notTodayHoldsAJobBackToTheNextWorkingDay) {
  startOn(orchardOfTwoCrews());
  const TaskKey task = focusCardOf(kestrel).place().task;
  press(Qt::Key_Return);
  click("notToday");
  ASSERT_EQ(session.orchard().pins.size(), 1U);
  const Pin& pin = session.orchard().pins.begin()->second;
  EXPECT_EQ(pin.kind, PinKind::notBefore);
  EXPECT_EQ(isoText(pin.day), "2027-04-07");
  for (const CrewId crew : {kestrel, wren})
    for (const JobCard* card : cardsOf(crew)) EXPECT_NE(card->place().task, task);
  const QString release =
      QStringLiteral("release:") + QString::fromStdString(idText(pin.id));
  click(release.toLatin1().constData());
  EXPECT_TRUE(session.orchard().pins.empty()) << "and it can be taken back";
}

TEST_F(TodayPageTest, aPlanIsAcceptedAndThatIsUndone) {
  startOn(orchardOfTwoCrews());
  EXPECT_FALSE(find<QLabel>("acceptance")->isVisible());
  click("acceptPlan");
  EXPECT_GT(acceptedJobs(), 0);
  EXPECT_EQ(textOf("acceptance"), "This plan is accepted.");
  EXPECT_FALSE(find<QPushButton>("acceptPlan")->isVisible());
  window.undo();
  settle();
  EXPECT_EQ(acceptedJobs(), 0);
  EXPECT_TRUE(find<QPushButton>("acceptPlan")->isVisible());
}

TEST_F(TodayPageTest, aPlanChangedAfterItWasAcceptedSaysSo) {
  startOn(orchardOfTwoCrews());
  click("acceptPlan");
  headOf(1).findChild<QPushButton*>(QStringLiteral("turnoutFewer"))->click();
  settle();
  EXPECT_EQ(textOf("acceptance"), "The plan has changed since it was accepted.");
  click("acceptPlan");
  EXPECT_EQ(textOf("acceptance"), "This plan is accepted.");
}

TEST_F(TodayPageTest, rowsAreTickedInPlace) {
  startOn(orchardOfTwoCrews());
  const TaskKey task = focusCardOf(kestrel).place().task;
  press(Qt::Key_Return);
  ASSERT_EQ(QApplication::focusWidget(), find<QLineEdit>("tickRows"));
  type(QStringLiteral("1-2"));
  press(Qt::Key_Return);
  EXPECT_DOUBLE_EQ(session.view(task)->progress.rowsDone(), 2);
  press(Qt::Key_Escape);
  EXPECT_FALSE(find<TickPanel>("tickPanel")->isVisible());
}

TEST_F(TodayPageTest, hoursAreEnteredInTheEvening) {
  startOn(orchardOfTwoCrews());
  click("acceptPlan");
  const TaskKey task = focusCardOf(kestrel).place().task;
  press(Qt::Key_Return);
  type(QStringLiteral("1-2"));
  press(Qt::Key_Return);
  press(Qt::Key_Escape);
  click("enterHoursOfDay");
  auto* field = qobject_cast<QLineEdit*>(QApplication::focusWidget());
  ASSERT_NE(field, nullptr);
  EXPECT_EQ(field->objectName(), QStringLiteral("jobHours"));
  type(QStringLiteral("a day"));
  press(Qt::Key_Return);
  EXPECT_THAT(textOf("dayFormProblem"), HasSubstr("a day"));
  field->clear();
  type(QLocale{}.toString(3.5, 'f', 1));
  press(Qt::Key_Return);
  settle();
  EXPECT_FALSE(find<HoursForm>("hoursForm")->isVisible());
  EXPECT_EQ(session.view(task)->progress.minutes, 210);
  for (const PlanAndDone& job : planAndDone(session.orchard(), session.today()))
    EXPECT_FALSE(job.hoursMissing);
}

TEST_F(TodayPageTest, theNextMorningSaysWhatHasNoHours) {
  startOn(orchardOfTwoCrews());
  click("acceptPlan");
  focusCardOf(kestrel);
  press(Qt::Key_Return);
  type(QStringLiteral("1-2"));
  press(Qt::Key_Return);
  press(Qt::Key_Escape);
  session.setToday(dayOf(2027, 4, 7));
  settle();
  EXPECT_EQ(textOf("pageTitle"), "Wednesday 7 April") << "the page goes with the day";
  auto* button = find<QPushButton>("enterHours");
  ASSERT_TRUE(button->isVisible());
  button->click();
  EXPECT_TRUE(find<HoursForm>("hoursForm")->isVisible());
}

TEST_F(TodayPageTest, aBlockIsClosedAndReopened) {
  startOn(orchardOfTwoCrews());
  click("closeBlock");
  find<QComboBox>("closedBlock")->setCurrentText(QStringLiteral("Quarry"));
  find<QComboBox>("closedUntil")->setCurrentIndex(1);
  find<QLineEdit>("closedHour")->setText(QStringLiteral("6:00"));
  find<QLineEdit>("closedReason")->setText(QStringLiteral("spray"));
  click("closeBlockDeed");
  ASSERT_EQ(session.orchard().closures.size(), 1U);
  const BlockClosure& closure = session.orchard().closures.begin()->second;
  EXPECT_EQ(isoText(closure.until), "2027-04-07");
  EXPECT_EQ(closure.untilMinute, 360);
  for (const CrewId crew : {kestrel, wren})
    for (const JobCard* card : cardsOf(crew))
      EXPECT_THAT(card->accessibleName().toStdString(), Not(HasSubstr("Quarry")));
  const QString reopen =
      QStringLiteral("reopen:") + QString::fromStdString(idText(closure.id));
  click(reopen.toLatin1().constData());
  EXPECT_TRUE(session.orchard().closures.empty());
}

TEST_F(TodayPageTest, whenABlockOpensAgainIsForTheGrowerToSay) {
  startOn(orchardOfTwoCrews());
  click("closeBlock");
  EXPECT_EQ(find<QComboBox>("closedUntil")->currentIndex(), -1) << "no day is proposed";
  EXPECT_EQ(find<QLineEdit>("closedHour")->text(), QString{}) << "nor an hour";
  click("closeBlockDeed");
  EXPECT_THAT(textOf("dayFormProblem"), HasSubstr("Choose the day"));
  find<QComboBox>("closedUntil")->setCurrentIndex(2);
  for (const char* typed : {"", "noon", "25:00"}) {
    find<QLineEdit>("closedHour")->setText(QLatin1String(typed));
    click("closeBlockDeed");
    EXPECT_THAT(textOf("dayFormProblem"), HasSubstr("Type the hour")) << typed;
  }
  EXPECT_TRUE(session.orchard().closures.empty());
  find<QLineEdit>("closedHour")->setText(QStringLiteral("14:30"));
  click("closeBlockDeed");
  ASSERT_EQ(session.orchard().closures.size(), 1U);
  const BlockClosure& closure = session.orchard().closures.begin()->second;
  EXPECT_EQ(isoText(closure.until), "2027-04-08");
  EXPECT_EQ(closure.untilMinute, 870);
}

TEST_F(TodayPageTest, escapeLeadsBackToWhatOpenedAForm) {
  startOn(orchardOfTwoCrews());
  auto* opener = find<QPushButton>("closeBlock");
  opener->setFocus(Qt::TabFocusReason);
  press(Qt::Key_Space);
  EXPECT_NE(QApplication::focusWidget(), opener);
  press(Qt::Key_Escape);
  EXPECT_EQ(QApplication::focusWidget(), opener);
}

TEST_F(TodayPageTest, aDayLostToWeatherHasNoWork) {
  startOn(orchardOfTwoCrews());
  click("lostDay");
  find<QLineEdit>("lostReason")->setText(QStringLiteral("rain"));
  click("lostDayDeed");
  ASSERT_TRUE(session.orchard().workDays.contains(session.today()));
  EXPECT_EQ(session.orchard().workDays.at(session.today()).percent, 0);
  EXPECT_TRUE(cardsOf(kestrel).empty());
  EXPECT_FALSE(find<QPushButton>("acceptPlan")->isVisible()) << "nothing to accept";
  click("lostDay");
  click("usualDay");
  EXPECT_TRUE(session.orchard().workDays.empty());
  EXPECT_FALSE(cardsOf(kestrel).empty());
}

/// Everything a manager does in a morning, without a mouse.
TEST_F(TodayPageTest, aMorningIsReplannedByKeyboardAlone) {
  startOn(orchardOfTwoCrews());
  tabTo(named("turnoutFewer"));
  press(Qt::Key_Space);
  EXPECT_EQ(session.orchard().turnouts.at({kestrel, session.today()}).workers, 2);
  tabTo(named("jobCard"));
  ASSERT_EQ(focusedCard()->place().crew, kestrel);
  const TaskKey task = focusedCard()->place().task;
  press(Qt::Key_Down, Qt::ControlModifier);
  settle();
  ASSERT_NE(focusedCard(), nullptr);
  EXPECT_EQ(focusedCard()->place().crew, wren);
  tabTo(named("acceptPlan"));
  press(Qt::Key_Space);
  EXPECT_GT(acceptedJobs(), 0);
  tabTo([&](const QWidget* widget) {
    const auto* card = qobject_cast<const JobCard*>(widget);
    return card != nullptr && card->place().task == task;
  });
  press(Qt::Key_Return);
  type(QStringLiteral("1-2"));
  press(Qt::Key_Return);
  EXPECT_DOUBLE_EQ(session.view(task)->progress.rowsDone(), 2);
}

}  // namespace

}  // namespace topwire
