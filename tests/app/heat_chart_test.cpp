#include "app/paper/heat_chart.h"

#include "app/paper/heat_page.h"
#include "app/paper/typesetter.h"
#include "core/phenology/stage.h"
#include "tests/app/heat_samples.h"

#include <QImage>
#include <QPainter>
#include <QProcess>
#include <QTemporaryDir>

#include <gmock/gmock.h>

namespace topwire {

namespace {

using namespace topwire::testing;
using ::testing::Contains;
using ::testing::ContainsRegex;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using ::testing::SizeIs;

const Day newYear = dayOf(2027, 1, 1);
const Day april8 = dayOf(2027, 4, 8);

Voice english() {
  return Voice{Language::english, QLocale{QLocale::English, QLocale::UnitedKingdom}};
}

Voice spanish() {
  return Voice{Language::spanish, QLocale{QLocale::Spanish, QLocale::Mexico}};
}

/// A font of the sheet's family in pixels of a screen.
QFont font(double points, bool bold = false) {
  QFont made = fontFor({points, bold});
  made.setPixelSize(qRound(points * 96 / 72));
  return made;
}

HeatType screenType() {
  return {font(9), font(10), font(10, true), font(22, true), 1};
}

HeatChart chartOf(const HeatScene& scene, QSizeF size, const Voice& voice = english()) {
  return layOut(scene, size, screenType(), voice);
}

std::vector<std::string> textsOf(const HeatChart& chart) {
  std::vector<std::string> texts;
  for (const ChartWords& words : chart.words) texts.push_back(words.text.toStdString());
  return texts;
}

const ChartWords* wordsOf(const HeatChart& chart, const char* text) {
  const auto found =
      std::ranges::find(chart.words, QString::fromUtf8(text), &ChartWords::text);
  return found == chart.words.end() ? nullptr : &*found;
}

/// What stands over or beyond something else, in words; nothing where all is well.
std::string collisionsIn(const HeatChart& chart) {
  const QRectF page{QPointF{}, chart.size};
  QStringList faults;
  for (std::size_t i = 0; i < chart.words.size(); ++i) {
    const ChartWords& one = chart.words[i];
    if (!page.adjusted(-1, -1, 1, 1).contains(one.box))
      faults << one.text + QStringLiteral(" leaves the chart");
    for (std::size_t j = i + 1; j < chart.words.size(); ++j)
      if (one.box.adjusted(1, 2, -1, -2)
              .intersects(chart.words[j].box.adjusted(1, 2, -1, -2)))
        faults << one.text + QStringLiteral(" over ") + chart.words[j].text;
  }
  return faults.join(QStringLiteral("; ")).toStdString();
}

TEST(DaysOfChart, GoTwoWeeksPastTheLastStageAndAWeekPastToday) {
  const DaySpan season{newYear, dayOf(2027, 12, 31)};
  const auto stages = inventedStages(newYear, april8, Language::english);
  EXPECT_EQ(daysOfChart(season, stages, april8), (DaySpan{newYear, dayOf(2027, 6, 3)}));
  EXPECT_EQ(daysOfChart(season, stages, dayOf(2027, 8, 20)),
            (DaySpan{newYear, dayOf(2027, 8, 27)}));
  EXPECT_EQ(daysOfChart(season, stages, dayOf(2027, 12, 30)), season);
}

TEST(ReadHeat, TakesEachDayFromTheLineThatHoldsIt) {
  SeasonHeat heat;
  heat.measured = {{newYear, 0}, {plusDays(newYear, 10), 20}};
  heat.forecast = {{plusDays(newYear, 10), 20}, {plusDays(newYear, 12), 26}};
  heat.likely = {{plusDays(newYear, 12), 26}, {plusDays(newYear, 20), 50}};
  EXPECT_EQ(readHeat(heat, plusDays(newYear, 5))->sum, 10);
  EXPECT_EQ(readHeat(heat, plusDays(newYear, 10))->source, HeatSource::measured);
  EXPECT_EQ(readHeat(heat, plusDays(newYear, 11))->sum, 23);
  EXPECT_EQ(readHeat(heat, plusDays(newYear, 11))->source, HeatSource::forecast);
  EXPECT_EQ(readHeat(heat, plusDays(newYear, 16))->source, HeatSource::likely);
  EXPECT_FALSE(readHeat(heat, plusDays(newYear, 21)));
  EXPECT_FALSE(readHeat(SeasonHeat{}, newYear));
}

TEST(HeatChart, HasRoundFiguresAtItsAxis) {
  const HeatChart chart = chartOf(inventedScene(newYear, april8), {732, 640});
  for (const char* figure : {"0", "100", "200", "300", "400"})
    EXPECT_THAT(textsOf(chart), Contains(figure));
  const ChartWords* hundred = wordsOf(chart, "100");
  EXPECT_NEAR(hundred->box.center().y(), chart.y(100), 0.5);
}

TEST(HeatChart, PutsDaysWhereItFindsThemAgain) {
  const HeatChart chart = chartOf(inventedScene(newYear, april8), {732, 640});
  for (Day day = chart.days.first; day <= chart.days.last; day = plusDays(day, 1))
    EXPECT_EQ(chart.dayAt(chart.x(day)), day);
  EXPECT_EQ(chart.dayAt(-100), chart.days.first);
  EXPECT_EQ(chart.dayAt(10'000), chart.days.last);
}

TEST(HeatChart, DrawsEveryMonthAtItsFirst) {
  const HeatChart chart = chartOf(inventedScene(newYear, april8), {732, 640});
  for (const char* month : {"January", "February", "March", "April", "May"})
    EXPECT_THAT(textsOf(chart), Contains(month));
  EXPECT_NEAR(wordsOf(chart, "March")->box.left(), chart.x(dayOf(2027, 3, 1)) + 4, 0.5);
}

TEST(HeatChart, StartsTheSouthernSeasonInJuly) {
  const Day july = dayOf(2026, 7, 1);
  const HeatChart chart = chartOf(inventedScene(july, dayOf(2026, 10, 6)), {732, 640});
  EXPECT_THAT(textsOf(chart), Contains("July"));
  EXPECT_THAT(textsOf(chart), Contains("6 October"));
  EXPECT_EQ(chart.days.first, july);
}

TEST(HeatChart, PutsEachStageOnTheLineAndBelowIt) {
  const HeatScene scene = inventedScene(newYear, april8);
  const HeatChart chart = chartOf(scene, {732, 640});
  ASSERT_THAT(chart.points, SizeIs(scene.stages.size()));
  ASSERT_THAT(chart.spans, SizeIs(scene.stages.size()));
  for (const StagePoint& point : chart.points) {
    const HeatStage& stage = scene.stages[point.stage];
    EXPECT_NEAR(point.at.y(), chart.y(readHeat(scene.heat, stage.date)->sum), 0.01);
    EXPECT_EQ(point.at.x(), chart.spans[point.stage].at.x());
    EXPECT_EQ(point.seen, stage.seen);
  }
  const StageSpan& pink = chart.spans[5];
  EXPECT_NEAR(pink.whisker.x1(), chart.x(scene.stages[5].span.first), 0.01);
  EXPECT_NEAR(pink.whisker.x2(), chart.x(scene.stages[5].span.last), 0.01);
}

TEST(HeatChart, TellsTodaysSumAndHowFarAheadItIs) {
  const HeatChart chart = chartOf(inventedScene(newYear, april8), {732, 640});
  EXPECT_THAT(textsOf(chart), Contains("8 April"));
  EXPECT_THAT(textsOf(chart), Contains("degree days so far,"));
  EXPECT_THAT(textsOf(chart), Contains("4 days ahead of the middle year"));
  EXPECT_THAT(textsOf(chart), Contains("middle of 12 past years"));
  EXPECT_THAT(textsOf(chart), Contains("forecast, 7 days"));
}

TEST(HeatChart, SaysWhereTheBandComesFromAverages) {
  HeatScene scene = inventedScene(newYear, april8);
  scene.heat.pastYears = 0;
  scene.heat.daysAhead = -1;
  const auto texts = textsOf(chartOf(scene, {732, 640}));
  EXPECT_THAT(texts, Contains("half of all years, estimated"));
  EXPECT_THAT(texts, Contains("1 day behind an average year"));
  EXPECT_THAT(texts, Not(Contains(HasSubstr("past years"))));
}

TEST(HeatChart, SaysHowFarTheWeatherIsKnownWhereItEndedLongAgo) {
  HeatScene scene = inventedScene(newYear, april8);
  scene.heat.missingDays = 3;
  scene.today = dayOf(2027, 5, 1);
  const auto texts = textsOf(chartOf(scene, {732, 640}));
  EXPECT_THAT(texts, Contains("weather known to 14 April"));
  EXPECT_THAT(texts, Contains("3 days missing"));
}

TEST(HeatChart, SaysHowToBringWeatherInWhereThereIsNone) {
  HeatScene scene = inventedScene(newYear, april8);
  scene.heat = inventedHeat(newYear, newYear, 0, 0);
  const HeatChart chart = chartOf(scene, {732, 640});
  const auto texts = textsOf(chart);
  EXPECT_THAT(texts, Contains("No weather yet"));
  EXPECT_THAT(texts, Contains("Bring in a file, or type daily figures."));
  EXPECT_THAT(texts, Not(Contains("measured")));
  EXPECT_THAT(chart.measured, IsEmpty());
  EXPECT_THAT(chart.likely, Not(IsEmpty()));
}

TEST(HeatChart, LeavesTheSpansOutWhereTheyDoNotFit) {
  const HeatScene scene = inventedScene(newYear, april8);
  const double least = leastHeight(scene, screenType());
  EXPECT_FALSE(chartOf(scene, {732, least + 1}).rows.isEmpty());
  EXPECT_TRUE(chartOf(scene, {732, least / 2}).rows.isEmpty());
}

/// Every third day of the season, in two languages and three shapes of window.
TEST(HeatChart, NeverPutsWordsOverWordsOrBeyondItsEdge) {
  for (const Voice& voice : {english(), spanish()})
    for (const QSizeF size : {QSizeF{520, 520}, QSizeF{732, 600}, QSizeF{1200, 560}})
      for (int day = 0; day < 199; day += 3) {
        const Day today = plusDays(newYear, day);
        const HeatScene scene = inventedScene(newYear, today, voice.language());
        const HeatChart chart = chartOf(scene, size, voice);
        EXPECT_EQ(collisionsIn(chart), "") << isoText(today) << ' ' << size.width();
        EXPECT_THAT(chart.legend, Not(IsEmpty())) << isoText(today);
      }
}

TEST(HeatChart, TellsAScreenReaderEverything) {
  const std::string told =
      describe(inventedScene(newYear, april8), english()).toStdString();
  EXPECT_THAT(told, HasSubstr("4 days ahead of the middle year"));
  EXPECT_THAT(told, HasSubstr("The band is of 12 past years."));
  EXPECT_THAT(told, HasSubstr("silver tip: seen on 30 March."));
  EXPECT_THAT(told, HasSubstr("pink: expected on 29 April, eight years in ten"));
}

/// How dark the chart is at a place; 0 is black.
int greyAt(const HeatChart& chart, QPointF at) {
  QImage image{chart.size.toSize(), QImage::Format_RGB32};
  image.fill(Qt::white);
  QPainter painter{&image};
  paint(painter, chart, screenType(), heatColoursOnPaper());
  painter.end();
  return qGray(image.pixel(at.toPoint()));
}

TEST(HeatChart, PaintsTheMeasuredLineThroughItsDays) {
  const HeatScene scene = inventedScene(newYear, april8);
  const HeatChart chart = chartOf(scene, {732, 640});
  const Day day = dayOf(2027, 3, 10);
  const QPointF on{chart.x(day), chart.y(readHeat(scene.heat, day)->sum)};
  EXPECT_LT(greyAt(chart, on), 60);
  EXPECT_GT(greyAt(chart, on - QPointF{0, 30}), 240);
}

HeatPage pageOf(Paper paper) {
  HeatPage page;
  page.scene = inventedScene(newYear, april8);
  page.title = QStringLiteral("Heat of Creek 1");
  page.subtitle = QStringLiteral("degree days");
  page.foot = QStringLiteral("As of 8 April 2027");
  page.paper = paper;
  return page;
}

std::string outputOf(const char* program, const QStringList& arguments) {
  QProcess process;
  process.start(QString::fromLatin1(program), arguments);
  EXPECT_TRUE(process.waitForFinished())
      << program << " is not installed; tests/run installs poppler-utils";
  return process.readAllStandardOutput().toStdString();
}

/// Poppler reads it back.
TEST(HeatPage, IsOnePageOnItsSideWithItsWordsAsText) {
  QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("heat.pdf"));
  ASSERT_TRUE(writePdf(path, pageOf(Paper::a4), english()));
  const std::string facts = outputOf("pdfinfo", {path});
  EXPECT_THAT(facts, ContainsRegex("Pages: +1\n"));
  EXPECT_THAT(facts, ContainsRegex("Page size: +84[12].* x 595.*A4"));
  const std::string text = outputOf("pdftotext", {path, QStringLiteral("-")});
  for (const char* words : {"Heat of Creek 1",
                            "4 days ahead of the middle year",
                            "half-inch green",
                            "When each stage comes",
                            "As of 8 April 2027"})
    EXPECT_THAT(text, HasSubstr(words));
}

TEST(HeatPage, FillsLetterPaperToo) {
  QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("heat.pdf"));
  ASSERT_TRUE(writePdf(path, pageOf(Paper::letter), english()));
  EXPECT_THAT(outputOf("pdfinfo", {path}), ContainsRegex("Page size: +792 x 612"));
}

TEST(HeatPage, SaysWhereItCouldNotBeWritten) {
  QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("no/such/folder/heat.pdf"));
  const Done done = writePdf(path, pageOf(Paper::a4), english());
  ASSERT_FALSE(done.has_value());
  EXPECT_THAT(inEnglish(done.error().sentence), HasSubstr(path.toStdString()));
}

}  // namespace

}  // namespace topwire
