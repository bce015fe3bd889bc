#include "app/windows/normals_table.h"
#include "tests/app/window_test.h"

#include <QComboBox>

namespace topwire {

namespace {

using ::testing::IsEmpty;
using testing::northernSettings;
using testing::orchardOfOne;
using ::testing::SizeIs;

class SettingsPageTest : public testing::WindowTest {
protected:
  SettingsPageTest() {
    start(orchardOfOne(northernSettings(), dayOf(2025, 4, 10)));
    window.showPage(RailPage::settings);
  }

  void choose(const char* combo, int index) {
    auto* box = find<QComboBox>(combo);
    box->setCurrentIndex(index);
    Q_EMIT box->activated(index);
  }

  const Settings& saved() const { return session.orchard().settings; }
};

TEST_F(SettingsPageTest, savingIsOneChange) {
  find<QLineEdit>("field-name")->setText(QStringLiteral("Alder Bend East"));
  find<QLineEdit>("field-latitude")->setText(QStringLiteral("46,5"));
  click("saveSettings");
  EXPECT_EQ(saved().name, "Alder Bend East");
  EXPECT_DOUBLE_EQ(saved().latitude, 46.5) << "a decimal comma is read";
  window.undo();
  EXPECT_EQ(saved(), northernSettings());
}

TEST_F(SettingsPageTest, theFirstLeafsDelayIsAWholeNumberOfDays) {
  auto* delay = find<QLineEdit>("field-firstLeafDelay");
  EXPECT_EQ(delay->text(), QStringLiteral("10"));
  const std::string hint = textOf("message-firstLeafDelay");
  for (const char* bad : {"", "1.5", "-1", "61", "soon"}) {
    delay->setText(QLatin1String(bad));
    EXPECT_NE(textOf("message-firstLeafDelay"), hint) << bad;
  }
  delay->setText(QStringLiteral("7"));
  click("saveSettings");
  EXPECT_EQ(saved().firstLeafDelayDays, 7);
}

TEST_F(SettingsPageTest, savingWithoutAChangeIsNone) {
  click("saveSettings");
  EXPECT_EQ(session.undoName(), nullptr);
}

TEST_F(SettingsPageTest, aStationBringsItsNormalsAndItsSource) {
  const Station& station = session.tables().stations.back();
  auto* box = find<QComboBox>("field-station");
  choose("field-station", box->findText(QString::fromStdString(station.name)));
  EXPECT_THAT(textOf("message-station"), ::testing::HasSubstr(station.source));
  click("saveSettings");
  EXPECT_EQ(saved().station, station.name);
  EXPECT_EQ(saved().normals, station.normals);
  EXPECT_EQ(saved().stationElevation, station.elevation);
}

TEST_F(SettingsPageTest, showingFahrenheitChangesNoNormal) {
  choose("field-units", 1);
  EXPECT_EQ(find<NormalsTable>("normals")->item(0, 0)->text(), QStringLiteral("18.7"));
  click("saveSettings");
  EXPECT_EQ(saved().units, UnitSystem::usCustomary);
  EXPECT_EQ(saved().normals, northernSettings().normals);
  EXPECT_EQ(saved().elevation, northernSettings().elevation);
}

TEST_F(SettingsPageTest, aNormalTypedInFahrenheitIsKeptInCelsius) {
  choose("field-units", 1);
  find<NormalsTable>("normals")->item(1, 6)->setText(QStringLiteral("86"));
  click("saveSettings");
  EXPECT_NEAR(saved().normals.maximum[6], 30, 1e-9);
}

TEST_F(SettingsPageTest, aNormalThatIsNoTemperatureIsSaid) {
  find<NormalsTable>("normals")->item(0, 0)->setText(QStringLiteral("cold"));
  EXPECT_TRUE(find<QLabel>("message-normals")->isVisible());
  click("saveSettings");
  EXPECT_EQ(saved(), northernSettings());
}

}  // namespace

}  // namespace topwire
