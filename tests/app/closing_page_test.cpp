#include "app/windows/closing_page.h"

#include "app/windows/labour_bars.h"
#include "core/edit/crew_deeds.h"
#include "tests/app/window_test.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QSpinBox>

namespace topwire {

namespace {

using ::testing::HasSubstr;
using ::testing::IsEmpty;
using testing::northernSettings;
using ::testing::Not;
using testing::orchardOfOne;
using ::testing::SizeIs;

/// Gala in its third leaf of 2027, seen on 5 November of that year, fourteen trees
/// missing.
class ClosingPageTest : public testing::WindowTest {
protected:
  ClosingPageTest() {
    session.setToday(dayOf(2027, 11, 5));
    Orchard orchard = orchardOfOne(northernSettings(), dayOf(2025, 4, 10));
    orchard.settings.recordsFrom = dayOf(2027, 1, 1);
    Measurement missing;
    missing.id = {0, 77};
    missing.planting = {0, 2};
    missing.measure = Measure::missingTrees;
    missing.day = dayOf(2027, 10, 28);
    missing.values = {14};
    orchard.measurements[missing.id] = missing;
    start(orchard);
    window.showPage(RailPage::closing);
    settle();
  }

  std::string allText(const char* card) {
    std::string text;
    for (const QLabel* label : find<QWidget>(card)->findChildren<QLabel*>())
      text += label->text().toStdString() + '\n';
    return text;
  }

  const Orchard& orchard() const { return session.orchard(); }
};

TEST_F(ClosingPageTest, tellsWhatWasMissedAndOnAskingWhatLiesAhead) {
  EXPECT_THAT(allText("doneCard"), HasSubstr("Creek: Gala · third leaf"));
  EXPECT_THAT(allText("doneCard"), HasSubstr("missed"));
  const std::size_t before = allText("doneCard").size();
  find<QCheckBox>("showAllWork")->setChecked(true);
  settle();
  EXPECT_GT(allText("doneCard").size(), before);
}

TEST_F(ClosingPageTest, tellsWhatIsStillToBeMeasured) {
  EXPECT_THAT(allText("measuresCard"),
              HasSubstr("Creek: Gala: trunk diameter, leader height"));
  EXPECT_THAT(allText("measuresCard"), Not(HasSubstr("missing trees")));
}

TEST_F(ClosingPageTest, proposesReplantsForCountedGaps) {
  EXPECT_EQ(find<QSpinBox>("missing-p2")->value(), 14);
  EXPECT_EQ(find<QLineEdit>("replantRows-p2")->text(), QStringLiteral("1-10"));
  EXPECT_EQ(find<QDateEdit>("replanted-p2")->date(), QDate(2028, 4, 1));
  EXPECT_THAT(textOf("closingEffects"),
              HasSubstr("14 trees are replanted in p2 on 1 April 2028."));
}

TEST_F(ClosingPageTest, closesInOneChangeThatUndoTakesBack) {
  const Orchard before = orchard();
  find<QLineEdit>("fruitFrom-p2")->setText(QStringLiteral("30"));
  Q_EMIT find<QLineEdit>("fruitFrom-p2")->editingFinished();
  find<QLineEdit>("fruitTo-p2")->setText(QStringLiteral("45"));
  Q_EMIT find<QLineEdit>("fruitTo-p2")->editingFinished();
  find<QLineEdit>("closedBy")->setText(QStringLiteral("Ada"));
  click("closeSeason");
  ASSERT_THAT(orchard().closes, SizeIs(1));
  EXPECT_EQ(orchard().closes.begin()->second.by, "Ada");
  EXPECT_EQ(orchard().plantings.size(), before.plantings.size() + 1);
  EXPECT_EQ(orchard().targets.at({{0, 2}, Season{2028}}).fruitTo, 45);
  EXPECT_THAT(textOf("closingProblem"), HasSubstr("was closed on"));
  EXPECT_FALSE(find<QPushButton>("closeSeason")->isEnabled());
  window.undo();
  settle();
  EXPECT_THAT(orchard().closes, IsEmpty());
  EXPECT_THAT(orchard().targets, IsEmpty());
  EXPECT_EQ(orchard().plantings, before.plantings);
  EXPECT_TRUE(find<QPushButton>("closeSeason")->isEnabled());
}

TEST_F(ClosingPageTest, namesWhatIsOutOfRangeBesideItsPlanting) {
  find<QLineEdit>("replantRows-p2")->setText(QStringLiteral("1-99"));
  Q_EMIT find<QLineEdit>("replantRows-p2")->editingFinished();
  EXPECT_THAT(allText("replantsCard"), HasSubstr("the planting's own rows: 1-10"));
  EXPECT_FALSE(find<QPushButton>("closeSeason")->isEnabled());
  find<QSpinBox>("missing-p2")->setValue(0);
  EXPECT_TRUE(find<QPushButton>("closeSeason")->isEnabled());
}

TEST_F(ClosingPageTest, keepsWhatAPersonChoseWhileTheOrchardChanges) {
  auto* vigour = find<QComboBox>("class-p2");
  vigour->setCurrentIndex(2);
  Q_EMIT vigour->activated(2);
  session.performOrTell(addCrew(orchard(), {session.ids().next<CrewId>(), "Wren", 4, 8}));
  settle();
  EXPECT_EQ(find<QComboBox>("class-p2")->currentIndex(), 2);
  click("closeSeason");
  const SeasonTarget& target = orchard().targets.at({{0, 2}, Season{2028}});
  EXPECT_EQ(target.vigour, Vigour::strong);
  EXPECT_THAT(target.vigourReason, Not(IsEmpty()));
}

TEST_F(ClosingPageTest, waitsUntilTheSeasonIsOver) {
  session.setToday(dayOf(2027, 8, 1));
  settle();
  EXPECT_THAT(textOf("closingProblem"), HasSubstr("from 1 October 2027 on"));
  EXPECT_FALSE(find<QPushButton>("closeSeason")->isEnabled());
}

TEST_F(ClosingPageTest, showsTheWorkOfBothSeasonsInWordsToo) {
  const QString words = find<LabourBars>("labourBars")->accessibleDescription();
  EXPECT_TRUE(words.contains(QStringLiteral("planned in 2028"))) << words.toStdString();
}

TEST_F(ClosingPageTest, isReachedFromTheBlocksAndLeadsBack) {
  click("backToBlocks");
  EXPECT_EQ(window.page(), RailPage::blocks);
  click("closeTheSeason");
  EXPECT_EQ(window.page(), RailPage::closing);
}

TEST_F(ClosingPageTest, isWorkedByTheKeyboardAlone) {
  find<QCheckBox>("showAllWork")->setFocus();
  QWidget* close = find<QPushButton>("closeSeason");
  for (int step = 0; step < 40 && QApplication::focusWidget() != close; ++step)
    press(Qt::Key_Tab);
  ASSERT_EQ(QApplication::focusWidget(), close);
  press(Qt::Key_Space);
  settle();
  EXPECT_THAT(orchard().closes, SizeIs(1));
}

}  // namespace

}  // namespace topwire
