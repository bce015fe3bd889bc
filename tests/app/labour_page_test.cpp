#include "app/windows/labour_page.h"

#include "app/windows/labour_strip.h"
#include "tests/app/window_test.h"

namespace topwire {

namespace {

using ::testing::HasSubstr;
using testing::northernSettings;
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
    start(orchard);
    window.showPage(RailPage::labour);
    settle();
  }

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

TEST_F(LabourPageTest, withoutCrewsItSaysSo) {
  begin(0);
  EXPECT_TRUE(shown("noLabour"));
}

}  // namespace

}  // namespace topwire
