#include "app/windows/targets_card.h"

#include "app/models/measure_scene.h"
#include "app/windows/day_field.h"
#include "app/windows/measure_view.h"
#include "app/windows/measurements_panel.h"
#include "core/edit/target_deeds.h"
#include "tests/app/window_test.h"

#include <QComboBox>
#include <QPainter>

namespace topwire {

namespace {

using ::testing::HasSubstr;
using ::testing::IsEmpty;
using testing::northernSettings;
using testing::orchardOfOne;
using ::testing::SizeIs;

class TargetsCardTest : public testing::WindowTest {
protected:
  void startOnBlocks(const Orchard& orchard) {
    start(orchard);
    window.showPage(RailPage::blocks);
    settle();
  }

  /// Gala in the third leaf, in rows 11 ft apart.
  static Orchard creek() { return orchardOfOne(northernSettings(), dayOf(2025, 4, 10)); }

  static Orchard withGrowth(std::int64_t leaderInches) {
    Orchard orchard = creek();
    Measurement taken;
    taken.id = {0, 900};
    taken.planting = orchard.plantings.begin()->first;
    taken.measure = Measure::leaderGrowth;
    taken.day = dayOf(2026, 12, 3);
    taken.values = {leaderInches * 25'400};
    orchard.measurements[taken.id] = taken;
    return orchard;
  }

  /// All that the card says, word after word.
  std::string said() {
    QStringList words;
    for (const QLabel* label : find<TargetsCard>("targetsCard")->findChildren<QLabel*>())
      if (isShown(*label)) words << label->text();
    return words.join(QLatin1Char('\n')).toStdString();
  }

  const auto& measurements() { return session.orchard().measurements; }
};

TEST_F(TargetsCardTest, saysTheSeasonsFigures) {
  startOnBlocks(creek());
  EXPECT_THAT(said(), HasSubstr("Fruit to keep\n25 to 35\na tree, by leaf and class"));
  EXPECT_THAT(said(), HasSubstr("Leader wanted today\n3.05 m\nNot measured yet."));
  EXPECT_THAT(said(), HasSubstr("Nitrogen, as nutrient\n14 g"));
  EXPECT_THAT(said(), HasSubstr("Height once grown\n3.02 m"));
  EXPECT_FALSE(find<QWidget>("targetReasons")->isVisible());
}

TEST_F(TargetsCardTest, tellsTheReasonsWhenAsked) {
  startOnBlocks(creek());
  click("targetsWhy");
  EXPECT_TRUE(find<QWidget>("targetReasons")->isVisible());
  EXPECT_THAT(said(), HasSubstr("None that competes with the leader."));
  EXPECT_THAT(said(), HasSubstr("A soil or leaf test goes before this figure"));
  click("targetsWhy");
  EXPECT_FALSE(find<QWidget>("targetReasons")->isVisible());
}

TEST_F(TargetsCardTest, treesNotPlantedYetHaveNoFigures) {
  startOnBlocks(orchardOfOne(northernSettings(), dayOf(2028, 4, 10)));
  EXPECT_THAT(said(), HasSubstr("Targets begin with the first leaf"));
  EXPECT_FALSE(find<QPushButton>("measureWay")->isVisible());
}

TEST_F(TargetsCardTest, theClassIsTheGrowersToChange) {
  startOnBlocks(withGrowth(64));
  EXPECT_THAT(said(), HasSubstr("More than half outside the class: from moderate to"));
  EXPECT_EQ(find<QPushButton>("changeClass")->text(),
            QStringLiteral("C&hange to strong"));
  click("changeClass");
  ASSERT_THAT(session.orchard().targets, SizeIs(1));
  const SeasonTarget& target = session.orchard().targets.begin()->second;
  EXPECT_EQ(target.of.season, Season{2027});
  EXPECT_EQ(target.vigour, Vigour::strong);
  EXPECT_THAT(target.vigourReason, HasSubstr("leader growth"));
  EXPECT_FALSE(find<QPushButton>("changeClass")->isVisible());
  ASSERT_TRUE(session.undo().has_value());
  settle();
  EXPECT_THAT(session.orchard().targets, IsEmpty());
  EXPECT_TRUE(find<QPushButton>("changeClass")->isVisible());
}

TEST_F(TargetsCardTest, keepingTheClassSettlesItToo) {
  startOnBlocks(withGrowth(64));
  click("keepClass");
  EXPECT_EQ(session.orchard().targets.begin()->second.vigour, Vigour::moderate);
  EXPECT_FALSE(find<QPushButton>("keepClass")->isVisible());
}

TEST_F(TargetsCardTest, aMeasurementIsTypedByKeysAlone) {
  startOnBlocks(creek());
  click("measureWay");
  ASSERT_EQ(QApplication::focusWidget(), find<QLineEdit>("field-values"));
  type(QStringLiteral("38 36 41"));
  EXPECT_EQ(textOf("measuredMean"), "3 trees, mean 38.3 mm");
  press(Qt::Key_Tab);
  ASSERT_EQ(QApplication::focusWidget(), find<QLineEdit>("field-note"));
  type(QStringLiteral("rows 1-3"));
  press(Qt::Key_Return);
  settle();
  ASSERT_THAT(measurements(), SizeIs(1));
  const Measurement& taken = measurements().begin()->second;
  EXPECT_EQ(taken.values, (std::vector<std::int64_t>{38'000, 36'000, 41'000}));
  EXPECT_EQ(taken.day, session.today());
  EXPECT_EQ(taken.note, "rows 1-3");
  EXPECT_EQ(find<QLineEdit>("field-values")->text(), QString{});
  EXPECT_THAT(said(), HasSubstr("Trunk\n38.3 mm"));
  press(Qt::Key_Escape);
  EXPECT_FALSE(find<MeasurementsPanel>("measurements")->isVisible());
  EXPECT_FALSE(find<QPushButton>("measureWay")->isChecked());
}

TEST_F(TargetsCardTest, whatCannotBeIsSaidBesideItsField) {
  startOnBlocks(creek());
  click("measureWay");
  find<QLineEdit>("field-values")->setText(QStringLiteral("38 and 41"));
  EXPECT_THAT(textOf("message-values"), HasSubstr("can't be read"));
  find<QLineEdit>("field-values")->setText(QStringLiteral("381"));
  EXPECT_THAT(textOf("message-values"), HasSubstr("381 mm is not likely"));
  click("keepMeasurement");
  EXPECT_THAT(measurements(), IsEmpty());
  find<QLineEdit>("field-values")->setText(QStringLiteral("38.1"));
  find<QDateEdit>("field-day")->setDate(dateOf(dayOf(2027, 4, 7)));
  EXPECT_THAT(textOf("message-day"), HasSubstr("still to come"));
}

TEST_F(TargetsCardTest, anEarlierOneIsTakenOffTheRecord) {
  startOnBlocks(withGrowth(20));
  click("measureWay");
  click("removeMeasurement");
  EXPECT_THAT(measurements(), IsEmpty());
  EXPECT_EQ(session.undoName()->text, "Measurement of %2 removed in %3: %1");
}

TEST_F(TargetsCardTest, theSceneHoldsWantedAndMeasured) {
  startOnBlocks(creek());
  const Planting& gala = session.orchard().plantings.begin()->second;
  Measurement taken;
  taken.id = {0, 901};
  taken.planting = gala.id;
  taken.measure = Measure::shootGrowth;
  taken.day = dayOf(2027, 1, 20);  // of the season before
  taken.values = {400'000};
  ASSERT_TRUE(session.perform(addMeasurement(session.orchard(), taken)).empty());
  const MeasureScene scene = measureScene(session, gala);
  ASSERT_THAT(scene.leaves, SizeIs(3));
  EXPECT_EQ(scene.leaves.front().leaf, 1);
  ASSERT_THAT(scene.plots, SizeIs(3));
  const MeasurePlot& shoots = scene.plots[2];
  EXPECT_TRUE(shoots.isBand);
  ASSERT_THAT(shoots.measured, SizeIs(1));
  EXPECT_EQ(shoots.measured.front().drawnAt, dayOf(2026, 12, 31));
  EXPECT_THAT(shoots.wanted, SizeIs(3));
  EXPECT_EQ(scene.plots[1].wanted.front().back().high, 3'048'000) << "the top wire";
  EXPECT_THAT(find<MeasureView>("measureChart")->accessibleDescription().toStdString(),
              HasSubstr("Measured once: shoot growth 40 cm on 20 January 2027."));
}

/// Words stay inside the chart and apart from each other, at every width and text size.
TEST_F(TargetsCardTest, theChartsWordsFindRoom) {
  startOnBlocks(creek());
  const Planting& gala = session.orchard().plantings.begin()->second;
  MeasureScene scene = measureScene(session, gala);
  scene.plots[0].measured = {{dayOf(2026, 2, 1), dayOf(2026, 2, 1), 20'000, 10},
                             {dayOf(2027, 2, 1), dayOf(2027, 2, 1), 38'000, 12}};
  const HeatType type{QFont{}, QFont{}, QFont{}, QFont{}, 1};
  for (const double width : {260.0, 480.0, 700.0, 1100.0}) {
    const MeasureChart chart = layOut(scene, width, type, voiceIn(Language::english));
    ASSERT_THAT(chart.panels, SizeIs(3));
    for (const MeasurePanel& panel : chart.panels) {
      EXPECT_GT(panel.plot.width(), 120) << width;
      for (const ChartWords& words : panel.words) {
        EXPECT_GE(words.box.left(), -0.5) << words.text.toStdString();
        EXPECT_LE(words.box.right(), width + 1) << words.text.toStdString();
        EXPECT_LE(words.box.bottom(), chart.size.height() + 0.5);
      }
    }
  }
}

}  // namespace

}  // namespace topwire
