#include "app/windows/material_page.h"

#include "tests/app/window_test.h"

#include <QClipboard>
#include <QComboBox>

namespace topwire {

namespace {

using ::testing::HasSubstr;
using testing::northernSettings;
using testing::orchardOfOne;

/// Gala in its second leaf, ten rows of a hundred trees; and a planting to come.
class MaterialPageTest : public testing::WindowTest {
protected:
  MaterialPageTest() {
    Orchard orchard = orchardOfOne(northernSettings(), dayOf(2026, 4, 10));
    Block hill = testing::block(5, "Hill", "1-4");
    hill.rowLength = Length::metres(100);
    orchard.blocks[hill.id] = hill;
    Planting fuji = testing::planting(6, hill, dayOf(2029, 4, 10));
    fuji.cultivar = "Fuji";
    orchard.plantings[fuji.id] = fuji;
    start(orchard);
    window.showPage(RailPage::material);
    settle();
  }

  void choose(const char* span) {
    auto* box = find<QComboBox>("materialSpan");
    box->setCurrentIndex(box->findText(QLatin1String(span)));
    settle();
  }

  std::string tableText() {
    const auto* table = find<QTableWidget>("materials");
    std::string text;
    for (int row = 0; row < table->rowCount(); ++row) {
      for (int column = 0; column < table->columnCount(); ++column)
        text += table->item(row, column)->text().toStdString() + '|';
      text += '\n';
    }
    return text;
  }
};

TEST_F(MaterialPageTest, aSeasonIsCountedAndPacked) {
  choose("for a season");
  EXPECT_THAT(tableText(), HasSubstr("Soft tie|"));
  EXPECT_THAT(tableText(), HasSubstr("× box of 1,000|"));
  EXPECT_THAT(tableText(), HasSubstr("(Creek)"));
}

TEST_F(MaterialPageTest, aNewPlantingBringsItsTreesAndTrellis) {
  choose("for a new planting");
  EXPECT_THAT(tableText(), HasSubstr("Tree|400|42 × bundle of 10|"));
  EXPECT_THAT(tableText(), HasSubstr("(Hill)"));
}

TEST_F(MaterialPageTest, theListIsCopiedForOtherPrograms) {
  choose("for a new planting");
  click("copyMaterial");
  const std::string copied = QGuiApplication::clipboard()->text().toStdString();
  EXPECT_THAT(copied, HasSubstr("item,name,unit,needed,to_buy"));
  EXPECT_THAT(copied, HasSubstr("tree,tree,piece,400,412"));
}

TEST_F(MaterialPageTest, theListGoesOnPaper) {
  choose("for a new planting");
  const QString path = folder.filePath(QStringLiteral("list.pdf"));
  ASSERT_TRUE(find<MaterialPage>("materialPage")->savePdf(path));
  EXPECT_GT(QFileInfo{path}.size(), 1000);
}

TEST_F(MaterialPageTest, weeksAreSteppedThrough) {
  const std::string before = find<QTableWidget>("materials") ? tableText() : "";
  for (int week = 0; week < 8; ++week) click("laterMaterial");
  EXPECT_NE(tableText(), before);
}

TEST_F(MaterialPageTest, anEmptyWeekSaysSo) {
  find<MaterialPage>("materialPage")->showWeek({2030, 2});
  settle();
  EXPECT_TRUE(find<QLabel>("noMaterial")->isVisible());
  EXPECT_FALSE(find<QPushButton>("printMaterial")->isEnabled());
}

TEST_F(MaterialPageTest, ticksTakeMaterialOff) {
  choose("for a season");
  const std::string before = tableText();
  for (const TaskView& view : session.views()) {
    const TaskKey& key = view.task->key;
    if (key.operation != "leader-tie" || key.season != session.season()) continue;
    Tick tick;
    tick.id = session.ids().next<TickId>();
    tick.task = key;
    tick.rows = RowSet::range(1, 5);
    tick.day = session.today();
    tick.by = "Ada";
    session.performOrTell(
        tickRows(session.orchard(), *view.task, session.titleOf(*view.task), tick));
    break;
  }
  settle();
  EXPECT_NE(tableText(), before);
}

}  // namespace

}  // namespace topwire
