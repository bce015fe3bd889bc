#include "app/models/row_lanes.h"
#include "app/windows/block_list.h"
#include "app/windows/block_words.h"
#include "app/windows/day_field.h"
#include "tests/app/window_test.h"

#include <QAbstractItemModelTester>
#include <QComboBox>

namespace topwire {

namespace {

using testing::block;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using testing::northernSettings;
using ::testing::Not;
using testing::orchardOfOne;
using testing::planting;
using ::testing::SizeIs;

class BlocksPageTest : public testing::WindowTest {
protected:
  void startOnBlocks(const Orchard& orchard) {
    start(orchard);
    window.showPage(RailPage::blocks);
    QCoreApplication::processEvents();
  }

  static Orchard bare() {
    Orchard orchard;
    orchard.settings = northernSettings();
    return orchard;
  }

  static Orchard creek() { return orchardOfOne(northernSettings(), dayOf(2025, 4, 10)); }

  void write(const char* field, const char* text) {
    find<QLineEdit>(field)->setText(QString::fromUtf8(text));
  }

  const Block& onlyBlock() const { return session.orchard().blocks.begin()->second; }

  const Planting& onlyPlanting() const {
    return session.orchard().plantings.begin()->second;
  }
};

TEST_F(BlocksPageTest, anEmptyPageInvites) {
  startOnBlocks(bare());
  EXPECT_TRUE(find<QPushButton>("addFirstBlock")->isVisible());
  EXPECT_FALSE(find<BlockList>("blockList")->isVisible());
}

TEST_F(BlocksPageTest, aBlockWithItsPlantingIsAddedByKeysAlone) {
  startOnBlocks(bare());
  press(Qt::Key_B, Qt::ControlModifier | Qt::ShiftModifier);
  ASSERT_EQ(QApplication::focusWidget(), find<QLineEdit>("field-name"));
  type(QStringLiteral("Quarry"));
  press(Qt::Key_Tab);
  type(QStringLiteral("1-12, 15"));
  press(Qt::Key_Tab);
  type(QStringLiteral("3.6 m"));
  press(Qt::Key_Tab);
  type(QStringLiteral("108 m"));
  press(Qt::Key_Return);

  ASSERT_THAT(session.orchard().blocks, SizeIs(1));
  EXPECT_EQ(onlyBlock().name, "Quarry");
  EXPECT_EQ(onlyBlock().rows.count(), 13);
  EXPECT_EQ(onlyBlock().rowSpacing, Length::millimetres(3600));

  ASSERT_EQ(QApplication::focusWidget(), find<QComboBox>("field-cultivar"));
  find<QComboBox>("field-cultivar")->lineEdit()->selectAll();
  type(QStringLiteral("Gala"));
  press(Qt::Key_Escape);  // the completer's list
  find<QComboBox>("field-rootstock")->setFocus(Qt::TabFocusReason);
  find<QComboBox>("field-rootstock")->lineEdit()->selectAll();
  type(QStringLiteral("M.9 T337"));
  press(Qt::Key_Escape);
  find<QLineEdit>("field-treeSpacing")->setFocus(Qt::TabFocusReason);
  type(QStringLiteral("0.9 m"));
  press(Qt::Key_Return);

  ASSERT_THAT(session.orchard().plantings, SizeIs(1));
  EXPECT_EQ(onlyPlanting().cultivar, "Gala");
  EXPECT_EQ(onlyPlanting().rootstock, "M.9 T337");
  EXPECT_EQ(onlyPlanting().planted, session.today());
  EXPECT_EQ(onlyPlanting().rows, onlyBlock().rows) << "the rows that were free";
  EXPECT_EQ(treesIn(session.orchard(), onlyPlanting()), 13 * 120) << "108 m at 0.9 m";
  EXPECT_THAT(onlyPlanting().code, Not(IsEmpty()));
  EXPECT_THAT(session.views(), Not(IsEmpty())) << "its tasks are planned at once";
}

TEST_F(BlocksPageTest, whatIsWrongIsSaidBesideItsFieldWhileTyping) {
  startOnBlocks(creek());
  click("addBlock");
  const std::string hint = textOf("message-rows");
  write("field-rows", "1-5, 3");
  EXPECT_THAT(textOf("message-rows"), HasSubstr("twice"));
  write("field-rows", "1-5");
  EXPECT_EQ(textOf("message-rows"), hint);
  write("field-name", "Creek");
  EXPECT_NE(textOf("message-name"), "As it is called in the field")
      << "the name is taken";
}

TEST_F(BlocksPageTest, fieldsNotYetTouchedAreNotFaultedBeforeSaving) {
  startOnBlocks(creek());
  click("addBlock");
  write("field-name", "Quarry");
  EXPECT_FALSE(find<QLineEdit>("field-rows")->property("fault").toBool());
  click("saveBlock");
  EXPECT_TRUE(find<QLineEdit>("field-rows")->property("fault").toBool());
  EXPECT_TRUE(find<QLineEdit>("field-rowSpacing")->property("fault").toBool());
  EXPECT_EQ(QApplication::focusWidget(), find<QLineEdit>("field-rows"));
  EXPECT_THAT(session.orchard().blocks, SizeIs(1));
}

TEST_F(BlocksPageTest, leavingAFormChangesNothing) {
  startOnBlocks(creek());
  const Orchard before = session.orchard();
  click("editBlock");
  write("field-name", "Brook");
  click("leaveBlock");
  EXPECT_EQ(session.orchard(), before);
  EXPECT_EQ(session.undoName(), nullptr);
}

TEST_F(BlocksPageTest, aSpacingInOtherUnitsComesBackUntouched) {
  startOnBlocks(creek());  // 11 ft between rows, in an orchard that shows metres
  click("editBlock");
  write("field-name", "Brook");
  click("saveBlock");
  EXPECT_EQ(onlyBlock().name, "Brook");
  EXPECT_EQ(onlyBlock().rowSpacing, Length::feet(11));
}

TEST_F(BlocksPageTest, correctionsAreTypedInTheOrchardsUnitsAndKeptInCelsius) {
  Orchard orchard = creek();
  orchard.settings.units = UnitSystem::usCustomary;
  orchard.blocks.begin()->second.maximumCorrection = 0.1 + 0.2;
  startOnBlocks(orchard);
  click("editBlock");
  EXPECT_EQ(find<QLineEdit>("field-minimumCorrection")->text(), QString{});
  EXPECT_EQ(find<QLineEdit>("field-maximumCorrection")->text(),
            QStringLiteral("0.54 °F"));
  write("field-minimumCorrection", "−2,7");
  click("saveBlock");
  EXPECT_DOUBLE_EQ(onlyBlock().minimumCorrection, -1.5);
  EXPECT_EQ(onlyBlock().maximumCorrection, 0.1 + 0.2) << "left alone";
  click("editBlock");
  write("field-minimumCorrection", "-2 °C");
  write("field-maximumCorrection", "");
  click("saveBlock");
  EXPECT_EQ(onlyBlock().minimumCorrection, -2);
  EXPECT_EQ(onlyBlock().maximumCorrection, 0);
}

TEST_F(BlocksPageTest, aCorrectionThatIsNoneIsSaidBesideItsField) {
  startOnBlocks(creek());
  click("editBlock");
  const std::string hint = textOf("message-minimumCorrection");
  for (const char* bad : {"cold", "1 K", "-10.5", "°C"}) {
    write("field-minimumCorrection", bad);
    EXPECT_NE(textOf("message-minimumCorrection"), hint) << bad;
  }
  write("field-minimumCorrection", "-10");
  EXPECT_EQ(textOf("message-minimumCorrection"), hint);
}

TEST_F(BlocksPageTest, deletingAsksOnceAndCanBeUndone) {
  startOnBlocks(creek());
  const auto plantings = session.orchard().plantings;
  answers.agrees = false;
  click("deleteBlock");
  EXPECT_THAT(session.orchard().blocks, SizeIs(1));
  answers.agrees = true;
  click("deleteBlock");
  EXPECT_EQ(answers.asked.size(), 2);
  EXPECT_THAT(session.orchard().blocks, IsEmpty());
  EXPECT_TRUE(find<QPushButton>("addFirstBlock")->isVisible());

  press(Qt::Key_Z, Qt::ControlModifier);
  EXPECT_THAT(session.orchard().blocks, SizeIs(1));
  EXPECT_EQ(session.orchard().plantings, plantings);
}

TEST_F(BlocksPageTest, aFormWhoseBlockIsUndoneCloses) {
  startOnBlocks(bare());
  session.perform(addBlock(session.orchard(), block(9, "Quarry", "1-4")));
  click("addPlanting");
  ASSERT_TRUE(find<QPushButton>("savePlanting")->isVisible());
  window.undo();
  QCoreApplication::processEvents();
  EXPECT_FALSE(find<QPushButton>("savePlanting")->isVisible());
}

TEST_F(BlocksPageTest, theFormSaysTheVigourAndWhatMadeItUp) {
  startOnBlocks(creek());
  click("editPlanting-p2");
  EXPECT_THAT(textOf("message-vigour"), HasSubstr("Gala"));
  find<QComboBox>("field-cultivar")->setCurrentText(QStringLiteral("Fuji"));
  EXPECT_THAT(textOf("message-vigour"), HasSubstr("Fuji"));
  auto* vigour = find<QComboBox>("field-vigour");
  EXPECT_FALSE(find<QLineEdit>("field-vigourReason")->isEnabled());
  vigour->setCurrentIndex(vigour->count() - 1);
  EXPECT_TRUE(find<QLineEdit>("field-vigourReason")->isEnabled());
  write("field-vigourReason", "shoots over 40 cm");
  click("savePlanting");
  EXPECT_EQ(onlyPlanting().vigour, Vigour::strong);
  EXPECT_EQ(onlyPlanting().vigourReason, "shoots over 40 cm");
}

TEST_F(BlocksPageTest, anUnknownCultivarIsSaidBesideIt) {
  startOnBlocks(creek());
  click("editPlanting-p2");
  find<QComboBox>("field-cultivar")->setCurrentText(QStringLiteral("Galla"));
  EXPECT_TRUE(find<QComboBox>("field-cultivar")->property("fault").toBool());
  EXPECT_THAT(textOf("message-cultivar"), HasSubstr("Galla"));
}

TEST_F(BlocksPageTest, aStageIsSeenByChoosingItAndItsDay) {
  startOnBlocks(creek());
  auto* stage = find<QComboBox>("seenStage");
  stage->setCurrentIndex(stage->findData(stages::greenTip));
  find<QDateEdit>("seenDay")->setDate(QDate{2027, 4, 3});
  click("seeStage");
  ASSERT_THAT(session.orchard().observations, SizeIs(1));
  const Observation& seen = session.orchard().observations.begin()->second;
  EXPECT_EQ(seen.bbch, stages::greenTip);
  EXPECT_EQ(seen.day, dayOf(2027, 4, 3));
}

TEST_F(BlocksPageTest, theListFollowsTheOrchardAndKeepsItsPlace) {
  Orchard orchard = creek();
  orchard.blocks[{0, 9}] = block(9, "Quarry", "1-4");
  startOnBlocks(orchard);
  auto* list = find<BlockList>("blockList");
  list->choose(BlockId{0, 9});
  EXPECT_EQ(textOf("pageTitle"), "Quarry");
  session.perform(addBlock(session.orchard(), block(10, "Alder", "1-4")));
  EXPECT_EQ(list->chosen(), (BlockId{0, 9}));
  EXPECT_EQ(list->model()->rowCount(), 3);
}

TEST(BlockRowsModelTest, holdsToTheRulesOfModels) {
  BlockRowsModel model;
  const QAbstractItemModelTester tester{
      &model, QAbstractItemModelTester::FailureReportingMode::Fatal};
  model.setRows(
      {{{0, 1}, QStringLiteral("Creek"), {}}, {{0, 2}, QStringLiteral("Quarry"), {}}});
  int resets = 0;
  int changes = 0;
  QObject::connect(&model, &BlockRowsModel::modelReset, [&resets] { ++resets; });
  QObject::connect(&model, &BlockRowsModel::dataChanged, [&changes] { ++changes; });
  model.setRows(
      {{{0, 1}, QStringLiteral("Creek"), {}}, {{0, 2}, QStringLiteral("Pit"), {}}});
  EXPECT_EQ(resets, 0);
  EXPECT_EQ(changes, 1);
  model.setRows({{{0, 2}, QStringLiteral("Pit"), {}}});
  EXPECT_EQ(resets, 1);
  EXPECT_EQ(model.rowCount(), 1);
}

TEST(RowLanesTest, sayWhatEachRowHolds) {
  Orchard orchard = orchardOfOne(northernSettings(), dayOf(2025, 4, 10));
  const BlockId id{0, 1};
  orchard.plantings.at({0, 2}).rows = parseRows("1-4, 6-8").rows;
  Planting pollinizer = planting(3, orchard.blocks.at(id), dayOf(2025, 4, 10));
  pollinizer.kind = PlantingKind::pollinizer;
  pollinizer.rows = parseRows("5").rows;
  Planting replants = planting(4, orchard.blocks.at(id), dayOf(2026, 4, 10));
  replants.kind = PlantingKind::replant;
  replants.rows = parseRows("2").rows;
  replants.treesPerRow = 3;
  orchard.plantings[pollinizer.id] = pollinizer;
  orchard.plantings[replants.id] = replants;
  Task task;
  task.rows = parseRows("1-4").rows;
  TaskView view{&task, TaskState::open, {}, 0};
  view.progress.percentByRow = {{1, 100}, {2, 40}};

  const std::vector<RowLane> lanes = rowLanes(orchard, id, &view);
  ASSERT_THAT(lanes, SizeIs(10));
  EXPECT_EQ(lanes[0].percent, 100);
  EXPECT_EQ(lanes[1].percent, 40);
  EXPECT_EQ(lanes[1].replants, 3);
  EXPECT_TRUE(lanes[3].inTask);
  EXPECT_EQ(lanes[4].kind, PlantingKind::pollinizer);
  EXPECT_FALSE(lanes[5].inTask);
  EXPECT_EQ(lanes[8].kind, std::nullopt) << "row 9 has no planting";
}

TEST(DensityTextTest, givesBothUnitsTheOrchardsOwnFirst) {
  // 3 x 11 ft: 1,320 trees an acre, common practice; over 0.40469 ha, 3,262 a hectare.
  EXPECT_EQ(densityText(UnitSystem::usCustomary, Length::feet(11), Length::feet(3)),
            QStringLiteral("1,320 an acre · 3,262 a hectare"));
  EXPECT_TRUE(densityText(UnitSystem::metric, Length{}, Length::feet(3)).isEmpty());
}

}  // namespace

}  // namespace topwire
