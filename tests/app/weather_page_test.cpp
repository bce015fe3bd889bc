#include "app/windows/weather_page.h"

#include "app/models/past_seasons.h"
#include "app/windows/daily_figures_panel.h"
#include "app/windows/day_field.h"
#include "app/windows/days_ahead_card.h"
#include "app/windows/heat_card.h"
#include "app/windows/notice_bar.h"
#include "app/windows/stage_row.h"
#include "app/windows/weather_file_panel.h"
#include "core/phenology/stage.h"
#include "tests/app/window_test.h"
#include "tests/support/weather.h"

#include <QComboBox>
#include <QDateEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTableView>

#include <functional>

namespace topwire {

namespace {

using ::testing::Contains;
using ::testing::HasSubstr;
using testing::northernSettings;
using testing::orchardOfOne;
using testing::put;

/// One block of Gala in third leaf, on 6 April 2027.
class WeatherPageTest : public testing::WindowTest {
protected:
  static Orchard creek() { return orchardOfOne(northernSettings(), dayOf(2025, 4, 10)); }

  void startOnWeather(const Orchard& orchard) {
    start(orchard);
    window.showPage(RailPage::weather);
    settle();
  }

  WeatherPage& page() { return *window.findChild<WeatherPage*>(); }

  StageRow& row(int bbch) {
    return *find<StageRow>(QStringLiteral("stage%1").arg(bbch).toLatin1().constData());
  }

  HeatView& view() { return *find<HeatView>("heatView"); }

  QTableView& daysTable() { return *find<QTableView>("daysTable"); }

  std::string cell(const QTableView& table, int at, int column) {
    return table.model()->index(at, column).data().toString().toStdString();
  }

  void fill(const char* field, const QString& text) {
    find<QLineEdit>(field)->setText(text);
  }

  void chooseDay(const char* field, Day day) {
    find<QDateEdit>(field)->setDate(dateOf(day));
  }

  const WeatherDay* known(Day day) { return weatherOn(session.orchard(), day); }

  QString fileOf(const QByteArray& text, const char* name = "weather.csv") {
    QString path = folder.filePath(QLatin1String(name));
    QFile file{path};
    if (!file.open(QIODevice::WriteOnly)) ADD_FAILURE() << "no room";
    file.write(text);
    return path;
  }

  std::vector<std::string> linesOf(const char* labels) {
    std::vector<std::string> lines;
    for (const auto* label : page().findChildren<QLabel*>(QLatin1String(labels)))
      lines.push_back(label->text().toStdString());
    return lines;
  }

  void waitUntil(const std::function<bool()>& done) {
    ASSERT_TRUE(QTest::qWaitFor(done, 5000));
    settle();
  }

  void bringIn(const QByteArray& text) {
    answers.file = fileOf(text);
    click("fileWay");
    click("chooseFile");
    waitUntil([this] { return !find<QWidget>("readingProgress")->isVisible(); });
  }
};

TEST_F(WeatherPageTest, aStageIsNotedInTwoClicks) {
  startOnWeather(creek());
  QTest::mouseClick(&row(stages::greenTip), Qt::LeftButton);
  settle();
  row(stages::greenTip).findChild<QPushButton*>(QStringLiteral("seenToday"))->click();
  settle();
  ASSERT_EQ(session.orchard().observations.size(), 1u);
  const Observation& seen = session.orchard().observations.begin()->second;
  EXPECT_EQ(seen.bbch, stages::greenTip);
  EXPECT_EQ(seen.day, session.today());
}

TEST_F(WeatherPageTest, aStageIsNotedByKeyboard) {
  startOnWeather(creek());
  row(stages::silverTip).setFocus(Qt::TabFocusReason);
  press(Qt::Key_Down);
  press(Qt::Key_Return);
  ASSERT_EQ(session.orchard().observations.size(), 1u);
  EXPECT_EQ(session.orchard().observations.begin()->second.bbch, stages::greenTip);
}

TEST_F(WeatherPageTest, aStageIsNotedForAnotherDay) {
  startOnWeather(creek());
  row(stages::silverTip).setFocus(Qt::TabFocusReason);
  press(Qt::Key_D);
  chooseDay("seenDay", dayOf(2027, 3, 30));
  click("seenThen");
  ASSERT_EQ(session.orchard().observations.size(), 1u);
  EXPECT_EQ(session.orchard().observations.begin()->second.day, dayOf(2027, 3, 30));
}

TEST_F(WeatherPageTest, nothingIsNotedInAFileThatMayOnlyBeRead) {
  const QString path = lay(QStringLiteral("held.topwire"), creek());
  files.heldElsewhere = path.toStdString();
  ASSERT_TRUE(session.open(path, Access::look));
  window.show();
  window.showPage(RailPage::weather);
  settle();
  EXPECT_FALSE(row(stages::greenTip)
                   .findChild<QPushButton*>(QStringLiteral("seenToday"))
                   ->isVisible());
  row(stages::greenTip).setFocus(Qt::TabFocusReason);
  press(Qt::Key_Return);
  EXPECT_TRUE(session.orchard().observations.empty());
  click("dailyFiguresWay");
  EXPECT_FALSE(find<QPushButton>("keepDay")->isEnabled());
}

TEST_F(WeatherPageTest, whatMovedIsToldUntilAnotherOrchardOpens) {
  startOnWeather(creek());
  EXPECT_FALSE(find<QLabel>("shiftWords")->isVisible());
  const PlanDifference moved{PlanDifference::Kind::moved, {}, -4, -4};
  const Sentence why{phrase("Test", "Green tip came 4 days earlier: 6 tasks moved.")};
  Q_EMIT session.shifted({moved}, {why});
  EXPECT_EQ(textOf("shiftWords"), "Green tip came 4 days earlier: 6 tasks moved.");
  click("showShift");
  EXPECT_EQ(window.page(), RailPage::calendar);
  ASSERT_TRUE(session.open(lay(QStringLiteral("other.topwire"), creek()), Access::write));
  window.showPage(RailPage::weather);
  settle();
  EXPECT_FALSE(find<QLabel>("shiftWords")->isVisible());
}

TEST_F(WeatherPageTest, theArrowsReadTheChartDayByDay) {
  startOnWeather(creek());
  view().setFocus(Qt::TabFocusReason);
  press(Qt::Key_Right);
  EXPECT_EQ(view().dayRead(), session.today()) << "it begins at today";
  press(Qt::Key_Right);
  EXPECT_EQ(view().dayRead(), plusDays(session.today(), 1));
  EXPECT_THAT(view().accessibleDescription().toStdString(), HasSubstr("7 April"));
  press(Qt::Key_Left, Qt::ControlModifier);
  EXPECT_EQ(view().dayRead(), plusDays(session.today(), -6));
  press(Qt::Key_Escape);
  EXPECT_FALSE(view().dayRead());
}

TEST_F(WeatherPageTest, theArrowsGoFromStageToStage) {
  startOnWeather(creek());
  view().setFocus(Qt::TabFocusReason);
  press(Qt::Key_Down);
  const auto& stagesShown = view().sceneShown().stages;
  ASSERT_TRUE(view().dayRead());
  EXPECT_TRUE(std::ranges::any_of(stagesShown, [this](const HeatStage& stage) {
    return stage.date == *view().dayRead();
  }));
  EXPECT_GT(*view().dayRead(), session.today());
}

TEST_F(WeatherPageTest, theOtherMeasureIsOnePressAway) {
  startOnWeather(creek());
  EXPECT_EQ(view().sceneShown().heat.measure, HeatMeasure::heatUnits);
  click("degreeDays");
  EXPECT_EQ(view().sceneShown().heat.measure, HeatMeasure::degreeDays);
  EXPECT_THAT(textOf("heatSubtitle"), HasSubstr("Degree days above 6.1 °C"));
}

TEST_F(WeatherPageTest, yesterdaysFiguresAreTypedAndKept) {
  startOnWeather(creek());
  click("dailyFiguresWay");
  EXPECT_EQ(QApplication::focusWidget(), find<QLineEdit>("field-minimum"));
  type(QStringLiteral("-1.5"));
  press(Qt::Key_Tab);
  type(QStringLiteral("9"));
  press(Qt::Key_Return);
  settle();
  const WeatherDay* yesterday = known(dayOf(2027, 4, 5));
  ASSERT_NE(yesterday, nullptr);
  EXPECT_EQ(yesterday->minimum, -1.5);
  EXPECT_EQ(yesterday->maximum, 9);
  EXPECT_FALSE(yesterday->rain);
  EXPECT_EQ(yesterday->source, WeatherSource::typed);
}

TEST_F(WeatherPageTest, figuresAreTypedInTheOrchardsUnits) {
  Orchard orchard = creek();
  orchard.settings.units = UnitSystem::usCustomary;
  startOnWeather(orchard);
  click("dailyFiguresWay");
  fill("field-minimum", QStringLiteral("28"));
  fill("field-maximum", QStringLiteral("50"));
  fill("field-rain", QStringLiteral("0.5"));
  click("keepDay");
  const WeatherDay* yesterday = known(dayOf(2027, 4, 5));
  ASSERT_NE(yesterday, nullptr);
  EXPECT_NEAR(*yesterday->minimum, -2.222, 0.001);
  EXPECT_NEAR(*yesterday->maximum, 10, 0.001);
  EXPECT_NEAR(*yesterday->rain, 12.7, 0.001);
  EXPECT_EQ(cell(daysTable(), 1, WeatherDaysModel::minimum), "28.0");
}

TEST_F(WeatherPageTest, whatIsWrongStandsBesideItsField) {
  startOnWeather(creek());
  click("dailyFiguresWay");
  fill("field-minimum", QStringLiteral("cold"));
  fill("field-maximum", QStringLiteral("9"));
  click("keepDay");
  EXPECT_THAT(textOf("message-minimum"), HasSubstr("cold is not a number"));
  EXPECT_TRUE(session.orchard().weather.empty());
}

TEST_F(WeatherPageTest, gapsAreSeenAndFilledOneAfterTheOther) {
  Orchard orchard = creek();
  for (int day = 1; day <= 5; ++day)
    if (day != 2 && day != 4)
      put(orchard, dayOf(2027, 4, static_cast<unsigned>(day)), testing::mild());
  startOnWeather(orchard);
  click("dailyFiguresWay");
  EXPECT_EQ(cell(daysTable(), 2, WeatherDaysModel::source), "missing") << "4 April";
  EXPECT_EQ(cell(daysTable(), 1, WeatherDaysModel::source), "measured");
  chooseDay("field-day", dayOf(2027, 4, 2));
  fill("field-minimum", QStringLiteral("2"));
  fill("field-maximum", QStringLiteral("8"));
  click("keepDay");
  EXPECT_EQ(dayOf(find<QDateEdit>("field-day")->date()), dayOf(2027, 4, 4));
  EXPECT_TRUE(find<QLineEdit>("field-minimum")->text().isEmpty());
}

TEST_F(WeatherPageTest, aDayOfTheTableStandsInTheFieldsAndIsForgotten) {
  Orchard orchard = creek();
  put(orchard, dayOf(2027, 4, 3), {-2, 7, 1.5, WeatherSource::typed});
  startOnWeather(orchard);
  click("dailyFiguresWay");
  daysTable().setCurrentIndex(daysTable().model()->index(3, 0));
  settle();
  EXPECT_EQ(find<QLineEdit>("field-minimum")->text(), QStringLiteral("-2.0"));
  EXPECT_EQ(find<QLineEdit>("field-rain")->text(), QStringLiteral("1.5"));
  click("forgetDay");
  EXPECT_EQ(known(dayOf(2027, 4, 3)), nullptr);
}

TEST_F(WeatherPageTest, aDayToComeIsTypedAsAForecast) {
  startOnWeather(creek());
  click("dailyFiguresWay");
  chooseDay("field-day", dayOf(2027, 4, 9));
  fill("field-minimum", QStringLiteral("2"));
  fill("field-maximum", QStringLiteral("8"));
  click("keepDay");
  ASSERT_NE(known(dayOf(2027, 4, 9)), nullptr);
  EXPECT_EQ(known(dayOf(2027, 4, 9))->source, WeatherSource::forecast);
}

constexpr const char* threeDays =
    "date,minimum C,maximum C,rain mm\n"
    "2027-04-01,1.5,9.0,0\n"
    "2027-04-02,2.0,11.0,4.2\n"
    "2027-04-03,-3.0,8.0,0\n";

TEST_F(WeatherPageTest, aFileIsToldBeforeItIsKept) {
  startOnWeather(creek());
  bringIn(threeDays);
  EXPECT_THAT(linesOf("foundLine"), Contains(HasSubstr("\"minimum C\"")))
      << "which column it took";
  EXPECT_THAT(textOf("fileChanges"), HasSubstr("3 days come in."));
  EXPECT_TRUE(session.orchard().weather.empty()) << "not yet";
  click("keepFile");
  ASSERT_NE(known(dayOf(2027, 4, 3)), nullptr);
  EXPECT_EQ(known(dayOf(2027, 4, 3))->minimum, -3);
  EXPECT_EQ(page().part(), WeatherPage::Part::stages);
}

TEST_F(WeatherPageTest, leavingAFileLeavesNothingBehind) {
  startOnWeather(creek());
  bringIn(threeDays);
  click("leaveFile");
  EXPECT_TRUE(session.orchard().weather.empty());
  EXPECT_FALSE(find<QPushButton>("keepFile")->isVisible());
}

TEST_F(WeatherPageTest, aLongFileIsCancelled) {
  QByteArray text{"date,minimum C,maximum C\n"};
  for (Day day = dayOf(1800, 1, 1); day < dayOf(2027, 1, 1); day = plusDays(day, 1))
    text += QByteArray::fromStdString(isoText(day)) + ",1.0,9.0\n";
  startOnWeather(creek());
  answers.file = fileOf(text);
  click("fileWay");
  auto* panel = find<WeatherFilePanel>("weatherFile");
  panel->bringIn(answers.file);
  find<QPushButton>("cancelReading")->click();
  QTest::qWait(300);
  EXPECT_FALSE(find<QPushButton>("keepFile")->isVisible());
  EXPECT_TRUE(session.orchard().weather.empty());
  panel->bringIn(answers.file);
  waitUntil([this] { return find<QPushButton>("keepFile")->isVisible(); });
}

TEST_F(WeatherPageTest, anInferredUnitCanBeCorrected) {
  startOnWeather(creek());
  bringIn("date,tmin,tmax\n2027-04-01,34,50\n2027-04-02,36,52\n2027-04-03,30,48\n");
  ASSERT_TRUE(find<QComboBox>("temperatureUnit")->isVisible());
  auto* unit = find<QComboBox>("temperatureUnit");
  unit->setCurrentIndex(unit->findData(static_cast<int>(TemperatureUnit::fahrenheit)));
  waitUntil([this] { return find<QPushButton>("keepFile")->isVisible(); });
  click("keepFile");
  ASSERT_NE(known(dayOf(2027, 4, 1)), nullptr);
  EXPECT_NEAR(*known(dayOf(2027, 4, 1))->maximum, 10, 0.01);
}

TEST_F(WeatherPageTest, daysAreBroughtInAsAForecast) {
  startOnWeather(creek());
  bringIn("date,minimum C,maximum C\n2027-04-06,1,9\n2027-04-07,2,12\n");
  find<QComboBox>("daysAre")->setCurrentIndex(1);
  waitUntil([this] { return find<QPushButton>("keepFile")->isVisible(); });
  click("keepFile");
  ASSERT_NE(known(dayOf(2027, 4, 6)), nullptr);
  EXPECT_EQ(known(dayOf(2027, 4, 6))->source, WeatherSource::forecast);
}

TEST_F(WeatherPageTest, aFileThatIsNoWeatherIsRefusedWithItsReason) {
  startOnWeather(creek());
  bringIn("a letter, and nothing of the weather\n");
  EXPECT_TRUE(find<QLabel>("fileProblem")->isVisible());
  EXPECT_THAT(textOf("fileProblem"), HasSubstr("weather.csv"));
  EXPECT_FALSE(find<QPushButton>("keepFile")->isVisible());
}

TEST_F(WeatherPageTest, aFileThatIsNotThereIsSaid) {
  startOnWeather(creek());
  click("fileWay");
  find<WeatherFilePanel>("weatherFile")
      ->bringIn(folder.filePath(QStringLiteral("gone.csv")));
  waitUntil([this] { return find<QLabel>("fileProblem")->isVisible(); });
  EXPECT_THAT(textOf("fileProblem"), HasSubstr("gone.csv"));
}

TEST_F(WeatherPageTest, pastDatesAreAddedAndTakenAway) {
  startOnWeather(creek());
  click("pastSeasonsWay");
  EXPECT_TRUE(find<QLabel>("noPastSeasons")->isVisible());
  find<QComboBox>("field-cultivar")->setCurrentText(QStringLiteral("Gala"));
  chooseDay("field-day", dayOf(2026, 5, 4));
  click("addPastDate");
  ASSERT_EQ(session.orchard().pastStages.size(), 1u);
  EXPECT_EQ(session.orchard().pastStages.begin()->second.bbch, stages::fullBloom);
  const auto& dates = *find<QTableView>("pastDates");
  EXPECT_EQ(cell(dates, 0, 0), "2026");
  EXPECT_EQ(dates.currentIndex().data().toString(), QStringLiteral("4 May"));
  click("removePastDate");
  EXPECT_TRUE(session.orchard().pastStages.empty());
}

TEST_F(WeatherPageTest, whatWasSeenInEarlierSeasonsStandsThereToo) {
  Orchard orchard = creek();
  const Observation seen{
      ObservationId{0, 7}, PlantingId{0, 2}, stages::pink, dayOf(2026, 4, 29), "Wren"};
  orchard.observations[seen.id] = seen;
  startOnWeather(orchard);
  click("pastSeasonsWay");
  const auto& dates = *find<QTableView>("pastDates");
  ASSERT_EQ(dates.model()->rowCount(), 1);
  EXPECT_EQ(cell(dates, 0, PastSeasonsModel::cultivarColumn), "Gala");
  EXPECT_FALSE(find<QPushButton>("removePastDate")->isEnabled());
}

TEST_F(WeatherPageTest, comingDaysShowTheirCautions) {
  Orchard orchard = creek();
  put(orchard, dayOf(2027, 4, 8), {-9, 8, 0, WeatherSource::forecast});
  startOnWeather(orchard);
  auto* strip = find<DaysAheadStrip>("daysAhead");
  ASSERT_TRUE(strip->isVisible());
  EXPECT_EQ(strip->chosen(), 2) << "the first day with a caution";
  EXPECT_THAT(textOf("dayAheadWords"), HasSubstr("Thursday 8 April"));
  strip->setFocus(Qt::TabFocusReason);
  press(Qt::Key_Home);
  EXPECT_THAT(textOf("dayAheadWords"), HasSubstr("nothing known yet"));
}

TEST_F(WeatherPageTest, withoutAForecastThereIsNoStrip) {
  startOnWeather(creek());
  EXPECT_FALSE(find<DaysAheadCard>("daysAheadCard")->isVisible());
}

TEST_F(WeatherPageTest, escapeLeadsBackToTheStages) {
  startOnWeather(creek());
  click("dailyFiguresWay");
  press(Qt::Key_Escape);
  EXPECT_EQ(page().part(), WeatherPage::Part::stages);
  EXPECT_FALSE(find<QPushButton>("dailyFiguresWay")->isChecked());
}

TEST_F(WeatherPageTest, withoutAPlantingItInvitesToAddABlock) {
  Orchard bare;
  bare.settings = northernSettings();
  startOnWeather(bare);
  click("weatherAddBlock");
  EXPECT_EQ(window.page(), RailPage::blocks);
}

TEST_F(WeatherPageTest, theChartIsSavedAsPdf) {
  startOnWeather(creek());
  const QString path = folder.filePath(QStringLiteral("heat.pdf"));
  ASSERT_TRUE(page().savePdf(path));
  QFile file{path};
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  EXPECT_EQ(file.read(5), QByteArray{"%PDF-"});
  EXPECT_FALSE(page().savePdf(folder.filePath(QStringLiteral("no/where/heat.pdf"))));
}

struct WindowSize {
  int width;
  int height;
};

class WeatherPageSizes : public WeatherPageTest,
                         public ::testing::WithParamInterface<WindowSize> {};

/// Nothing sticks out of the page at its right, whichever part is open.
TEST_P(WeatherPageSizes, holdEveryPart) {
  Orchard orchard = creek();
  for (int day = 0; day < 9; ++day)
    put(orchard, plusDays(dayOf(2027, 4, 5), day), {-6, 8, 9, WeatherSource::forecast});
  startOnWeather(orchard);
  window.resize(GetParam().width, GetParam().height);
  QTest::qWait(30);
  const auto* area = page().findChild<QScrollArea*>();
  for (const auto part : {WeatherPage::Part::stages,
                          WeatherPage::Part::dailyFigures,
                          WeatherPage::Part::file,
                          WeatherPage::Part::pastSeasons}) {
    page().showPart(part);
    QTest::qWait(10);
    EXPECT_EQ(window.width(), GetParam().width);
    EXPECT_EQ(area->horizontalScrollBar()->maximum(), 0) << static_cast<int>(part);
    for (const auto* button : page().findChildren<QPushButton*>()) {
      if (!button->isVisible()) continue;
      const int right = button->mapTo(area->widget(), QPoint{button->width(), 0}).x();
      EXPECT_LE(right, area->widget()->width()) << button->text().toStdString();
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Usual,
                         WeatherPageSizes,
                         ::testing::Values(WindowSize{1024, 700},
                                           WindowSize{1280, 800},
                                           WindowSize{1920, 1080}));

}  // namespace

}  // namespace topwire
