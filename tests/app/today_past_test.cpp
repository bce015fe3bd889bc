#include "app/models/past_day.h"
#include "app/windows/past_day.h"
#include "core/edit/deeds.h"
#include "tests/app/today_test.h"

namespace topwire {

namespace {

using ::testing::HasSubstr;
using ::testing::IsEmpty;
using testing::kestrel;
using testing::orchardOfTwoCrews;
using ::testing::SizeIs;
using testing::TodayPageTest;

class PastDayTest : public TodayPageTest {
protected:
  /// A plan accepted on 6 April, two rows of Kestrel's first job ticked in an hour.
  void workOneDay() {
    startOn(orchardOfTwoCrews());
    click("acceptPlan");
    task = focusCardOf(kestrel).place().task;
    press(Qt::Key_Return);
    type(QStringLiteral("1-2"));
    find<QLineEdit>("tickHours")->setText(QStringLiteral("1"));
    press(Qt::Key_Return);
    press(Qt::Key_Escape);
    session.setToday(dayOf(2027, 4, 7));
    settle();
  }

  std::string wordsOf(const char* name) {
    std::string words;
    for (const QLabel* label : find<QWidget>(name)->findChildren<QLabel*>())
      if (label->isVisible()) words += label->text().toStdString() + '\n';
    return words;
  }

  TaskKey task;
};

TEST_F(PastDayTest, showsWhatWasPlannedBesideWhatWasTicked) {
  workOneDay();
  click("earlierDay");
  EXPECT_EQ(textOf("pageTitle"), "Tuesday 6 April");
  EXPECT_THAT(textOf("pageSubtitle"), HasSubstr("planned and done"));
  EXPECT_THAT(textOf("headline"), HasSubstr("2 of "));
  const std::string words = wordsOf("pastDay");
  EXPECT_THAT(words, HasSubstr("Kestrel"));
  EXPECT_THAT(words, HasSubstr("from 06:30"));
  EXPECT_THAT(words, HasSubstr("rows 1\u2060–\u20602 in 1"));
}

TEST_F(PastDayTest, isToReadOnly) {
  workOneDay();
  click("earlierDay");
  for (const char* name :
       {"crewLanes", "todaySide", "acceptPlan", "enterHoursOfDay", "lostDay"})
    EXPECT_FALSE(find<QWidget>(name)->isVisible()) << name;
  EXPECT_FALSE(find<QPushButton>("earlierDay")->isEnabled()) << "nothing before it";
}

TEST_F(PastDayTest, leadsBackToToday) {
  workOneDay();
  click("earlierDay");
  click("laterDay");
  EXPECT_EQ(page().day(), session.today());
  EXPECT_TRUE(find<QWidget>("crewLanes")->isVisible());
  EXPECT_FALSE(find<QWidget>("pastDay")->isVisible());
}

TEST_F(PastDayTest, staysWhereItIsAtMidnight) {
  workOneDay();
  click("earlierDay");
  session.setToday(dayOf(2027, 4, 8));
  settle();
  EXPECT_EQ(textOf("pageTitle"), "Tuesday 6 April");
}

TEST_F(PastDayTest, tellsWorkDoneBesidesThePlan) {
  workOneDay();
  const Orchard& orchard = session.orchard();
  EXPECT_THAT(doneBesides(orchard, dayOf(2027, 4, 6)), IsEmpty());
  Orchard without = orchard;
  without.plannedJobs.clear();
  const auto besides = doneBesides(without, dayOf(2027, 4, 6));
  ASSERT_THAT(besides, SizeIs(1));
  EXPECT_EQ(besides[0].task, task);
  EXPECT_EQ(besides[0].by, "Kestrel");
  EXPECT_EQ(besides[0].rows.count(), 2);
  EXPECT_EQ(besides[0].minutes, 60);
  EXPECT_EQ(recordedBefore(without, dayOf(2027, 4, 7)), dayOf(2027, 4, 6));
  EXPECT_EQ(recordedAfter(orchard, dayOf(2027, 4, 6), dayOf(2027, 4, 7)), std::nullopt);
}

TEST(PastDayText, SaysInOneLineHowItWent) {
  PlanAndDone job;
  job.planned.rows = RowSet{}.with(parseRows("1-4").rows);
  EXPECT_EQ(pastDayText({}).toStdString(), "No plan was accepted for this day.");
  EXPECT_EQ(pastDayText({job}).toStdString(), "0 of 4 rows planned were ticked.");
  job.done = job.planned.rows;
  EXPECT_EQ(pastDayText({job}).toStdString(), "All 4 rows planned were ticked.");
  job.hoursMissing = true;
  EXPECT_THAT(pastDayText({job}).toStdString(), HasSubstr("No hours for 1 job."));
}

}  // namespace

}  // namespace topwire
