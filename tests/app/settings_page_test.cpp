#include "app/windows/normals_table.h"
#include "core/edit/crew_deeds.h"
#include "tests/app/window_test.h"

#include <QCheckBox>
#include <QComboBox>

namespace topwire {

namespace {

using ::testing::HasSubstr;
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

TEST_F(SettingsPageTest, anOpenedCrewFormIsInSight) {
  window.resize(1024, 700);
  settle();
  click("addCrew");
  settle();
  EXPECT_FALSE(find<QPushButton>("saveCrew")->visibleRegion().isEmpty());
  EXPECT_FALSE(QApplication::focusWidget()->visibleRegion().isEmpty());
}

TEST_F(SettingsPageTest, aCrewsLineTellsItsDaysOffToCome) {
  Crew crew;
  crew.id = {0, 9};
  crew.name = "Heron";
  crew.daysOff = {{dayOf(2027, 3, 1), dayOf(2027, 3, 2)},
                  {dayOf(2027, 7, 5), dayOf(2027, 7, 17)}};
  session.perform(addCrew(session.orchard(), crew));
  settle();
  QStringList words;
  for (const QLabel* label : find<QWidget>("crewsCard")->findChildren<QLabel*>())
    words << label->text();
  const std::string all = words.join(QLatin1Char('\n')).toStdString();
  EXPECT_THAT(all, HasSubstr("off 5–17 July"));
  EXPECT_THAT(all, ::testing::Not(HasSubstr("March")));
}

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

TEST_F(SettingsPageTest, theWorkingDayIsSavedAsOneChange) {
  EXPECT_EQ(find<QLineEdit>("field-start")->text(), QStringLiteral("06:30"));
  const auto days = find<QWidget>("field-workdays")->findChildren<QCheckBox*>();
  ASSERT_EQ(days.size(), 7);
  EXPECT_TRUE(days.at(5)->isChecked());
  EXPECT_FALSE(days.at(6)->isChecked());
  days.at(5)->setChecked(false);
  find<QLineEdit>("field-start")->setText(QStringLiteral("5:45"));
  find<QLineEdit>("field-moveMinutes")->setText(QStringLiteral("15"));
  find<QLineEdit>("field-moveMinutesPerKm")->setText(QStringLiteral("3"));
  find<QLineEdit>("field-keepTogether")->setText(QStringLiteral("80"));
  find<QLineEdit>("field-gangAtMost")->setText(QStringLiteral("5"));
  click("saveWorkingDay");
  Settings expected = northernSettings();
  expected.workdays[5] = false;
  expected.startMinute = 345;
  expected.moveMinutes = 15;
  expected.moveMinutesPerKm = 3;
  expected.keepTogether = 80;
  expected.gangAtMost = 5;
  EXPECT_EQ(saved(), expected);
  window.undo();
  EXPECT_EQ(saved(), northernSettings());
  EXPECT_EQ(find<QLineEdit>("field-start")->text(), QStringLiteral("06:30"));
}

TEST_F(SettingsPageTest, aWorkingDayThatCannotBeIsSaidBesideItsField) {
  for (QCheckBox* day : find<QWidget>("field-workdays")->findChildren<QCheckBox*>())
    day->setChecked(false);
  EXPECT_THAT(textOf("message-workdays"), HasSubstr("on one day of the week at least"));
  find<QLineEdit>("field-start")->setText(QStringLiteral("at dawn"));
  EXPECT_THAT(textOf("message-start"), HasSubstr("Write a time of day here"));
  find<QLineEdit>("field-keepTogether")->setText(QStringLiteral("101"));
  EXPECT_THAT(textOf("message-keepTogether"), HasSubstr("0 to 100 percent"));
  click("saveWorkingDay");
  EXPECT_EQ(saved(), northernSettings());
}

TEST_F(SettingsPageTest, savingTheWorkingDayLeavesWhatIsTypedAboveAlone) {
  find<QLineEdit>("field-name")->setText(QStringLiteral("Half typed"));
  find<QLineEdit>("field-moveMinutes")->setText(QStringLiteral("15"));
  click("saveWorkingDay");
  EXPECT_EQ(saved().moveMinutes, 15);
  EXPECT_EQ(find<QLineEdit>("field-name")->text(), QStringLiteral("Half typed"));
}

class CrewsCardTest : public SettingsPageTest {
protected:
  void write(const char* place, const char* text) {
    auto* form = find<QWidget>("crewForm");
    const QString name = QStringLiteral("field-") + QLatin1String(place);
    form->findChild<QLineEdit*>(name)->setText(QString::fromUtf8(text));
  }

  std::string messageOf(const char* place) {
    auto* form = find<QWidget>("crewForm");
    const QString name = QStringLiteral("message-") + QLatin1String(place);
    return form->findChild<QLabel*>(name)->text().toStdString();
  }

  void addHeron() {
    click("addCrew");
    write("name", "Heron");
    write("workers", "7");
    write("skills", "pruning, Tractor");
    click("saveCrew");
  }

  const Crew& heron() const { return session.orchard().crews.begin()->second; }

  std::string buttonOf(const char* deed) const {
    return deed + ('-' + idText(heron().id));
  }
};

TEST_F(CrewsCardTest, aCrewIsAddedWithAllThatIsSaidOfIt) {
  EXPECT_TRUE(find<QLabel>("noCrews")->isVisible());
  click("addCrew");
  write("name", " Heron ");
  write("workers", "7");
  write("hoursPerDay", "7,5");
  write("youngMinutes", "1.5");
  write("skills", "pruning,  Tractor,");
  write("members", "Ada, Béa");
  write("daysOff",
        "2027-07-05 \xe2\x80\x93 2027-07-17, 2027-05-03, 2027-06-01 a 2027-06-02");
  click("saveCrew");
  ASSERT_EQ(session.orchard().crews.size(), 1U);
  Crew expected{
      heron().id, "Heron", 7, 7.5, {"pruning", "tractor"}, {"Ada", "Béa"}, {}, 90};
  expected.daysOff = {{dayOf(2027, 5, 3), dayOf(2027, 5, 3)},
                      {dayOf(2027, 6, 1), dayOf(2027, 6, 2)},
                      {dayOf(2027, 7, 5), dayOf(2027, 7, 17)}};
  EXPECT_EQ(heron(), expected);
  EXPECT_FALSE(find<QLabel>("noCrews")->isVisible());
  EXPECT_FALSE(find<QWidget>("crewForm")->isVisible());
}

TEST_F(CrewsCardTest, savingACrewWithoutAChangeIsNone) {
  addHeron();
  const Crew before = heron();
  click(buttonOf("editCrew").c_str());
  EXPECT_EQ(find<QWidget>("crewForm")
                ->findChild<QLineEdit*>(QStringLiteral("field-skills"))
                ->text(),
            QStringLiteral("pruning, tractor"));
  click("saveCrew");
  EXPECT_EQ(heron(), before);
  EXPECT_EQ(inEnglish(*session.undoName()), "Crew Heron added");
}

TEST_F(CrewsCardTest, faultsAreSaidBesideTheirFields) {
  click("addCrew");
  write("workers", "none");
  EXPECT_THAT(messageOf("workers"), HasSubstr("Write a whole number here"));
  write("workers", "0");
  EXPECT_THAT(messageOf("workers"), HasSubstr("between 1 and 200 workers"));
  write("daysOff", "3 May");
  EXPECT_THAT(messageOf("daysOff"), HasSubstr("3 May is no day"));
  write("youngMinutes", "1000");
  EXPECT_THAT(messageOf("youngMinutes"), HasSubstr("Hours kept for young trees"));
  click("saveCrew");
  EXPECT_THAT(messageOf("name"), HasSubstr("A name is missing"));
  EXPECT_THAT(session.orchard().crews, IsEmpty());
}

TEST_F(CrewsCardTest, theSkillsOfTheProgrammesAreTold) {
  click("addCrew");
  EXPECT_THAT(messageOf("skills"), HasSubstr("pruning, spraying, tractor"));
}

TEST_F(CrewsCardTest, aCrewIsDeletedOnceThatIsConfirmed) {
  addHeron();
  answers.agrees = false;
  click(buttonOf("deleteCrew").c_str());
  EXPECT_THAT(session.orchard().crews, SizeIs(1));
  answers.agrees = true;
  click(buttonOf("deleteCrew").c_str());
  EXPECT_THAT(session.orchard().crews, IsEmpty());
  window.undo();
  EXPECT_THAT(session.orchard().crews, SizeIs(1));
}

TEST_F(CrewsCardTest, theFormGoesWithItsCrew) {
  addHeron();
  click(buttonOf("editCrew").c_str());
  EXPECT_TRUE(find<QWidget>("crewForm")->isVisible());
  window.undo();
  settle();
  EXPECT_FALSE(find<QWidget>("crewForm")->isVisible());
}

TEST_F(CrewsCardTest, aCrewIsAddedAndEditedByTheKeyboardAlone) {
  find<QPushButton>("addCrew")->setFocus();
  press(Qt::Key_Space);
  type(QStringLiteral("Wren"));
  press(Qt::Key_Tab);
  press(Qt::Key_A, Qt::ControlModifier);
  type(QStringLiteral("5"));
  press(Qt::Key_Return);
  settle();
  ASSERT_THAT(session.orchard().crews, SizeIs(1));
  EXPECT_EQ(heron().name, "Wren");
  EXPECT_EQ(heron().workers, 5);
  press(Qt::Key_Space);  // on the new crew's own button
  type(QStringLiteral("X"));
  press(Qt::Key_Return);
  settle();
  EXPECT_EQ(heron().name, "WrenX");
}

}  // namespace

}  // namespace topwire
