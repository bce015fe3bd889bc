#include "app/paper/sheet_layout.h"

#include "app/paper/sheet_pieces.h"
#include "app/words/say.h"
#include "tests/app/sheet_samples.h"

#include <QGuiApplication>

#include <gmock/gmock.h>

#include <algorithm>
#include <map>

namespace topwire {

namespace {

using testing::emptySheet;
using testing::sheetJob;
using testing::sheetOf;

/// Fonts are measured, so there has to be an application.
void needApplication() {
  if (QCoreApplication::instance()) return;
  static int count = 1;
  static char name[] = "app_test";
  static char* arguments[] = {name, nullptr};
  static const QGuiApplication application{count, arguments};
}

class SheetLayout : public ::testing::Test {
protected:
  SheetLayout() {
    needApplication();
    speak(QStringLiteral("en_GB"));
  }
};

template <class Kind>
std::vector<Kind> itemsOf(const Page& page) {
  std::vector<Kind> found;
  for (const Item& item : page.items)
    if (const auto* kind = std::get_if<Kind>(&item)) found.push_back(*kind);
  return found;
}

std::string textOf(const Page& page) {
  std::string all;
  for (const TextItem& item : itemsOf<TextItem>(page))
    all += item.text.toStdString() + '\n';
  return all;
}

std::string textOf(const std::vector<Page>& pages) {
  std::string all;
  for (const Page& page : pages) all += textOf(page);
  return all;
}

std::vector<RowItem> rowsOf(const std::vector<Page>& pages) {
  std::vector<RowItem> all;
  for (const Page& page : pages)
    for (const RowItem& row : itemsOf<RowItem>(page)) all.push_back(row);
  return all;
}

void expectInsideMargins(const std::vector<Page>& pages, PageFormat format) {
  const QRectF room = format.content().adjusted(-0.05, -0.05, 0.05, 0.05);
  for (const Page& page : pages)
    for (const Item& item : page.items) {
      const QRectF bounds = boundsOf(item);
      EXPECT_TRUE(room.contains(bounds)) << bounds.left() << ' ' << bounds.top() << ' '
                                         << bounds.right() << ' ' << bounds.bottom();
    }
}

/// Words may not run into each other or into a box.
void expectNoOverlap(const Page& page) {
  std::vector<QRectF> taken;
  for (const Item& item : page.items) {
    if (std::holds_alternative<RuleItem>(item) || std::holds_alternative<FrameItem>(item))
      continue;
    // Lines of text are set closer than the tallest letters reach.
    const double slack = std::holds_alternative<TextItem>(item) ? 3.2 : 0.1;
    const QRectF bounds = boundsOf(item).adjusted(0.1, slack, -0.1, -slack);
    for (const QRectF& other : taken) EXPECT_FALSE(bounds.intersects(other));
    taken.push_back(bounds);
  }
}

TEST_F(SheetLayout, TakesThePaperSizesOfTheStandards) {
  // ISO 216: A4 is 210 mm x 297 mm. ANSI/ASME Y14.1: size A (Letter) is 8.5 in x 11 in.
  EXPECT_NEAR(PageFormat{Paper::a4}.size().width() / 72 * 25.4, 210, 1e-9);
  EXPECT_NEAR(PageFormat{Paper::a4}.size().height() / 72 * 25.4, 297, 1e-9);
  EXPECT_EQ(PageFormat{Paper::letter}.size(), QSizeF(612, 792));
  const auto pages = layOut(sheetOf(1, 10), {Paper::letter}, Language::english);
  EXPECT_EQ(pages.front().size, QSizeF(612, 792));
}

struct SheetCase {
  const char* name;
  int jobs;
  int rows;
};

class SheetsOfManySizes : public SheetLayout,
                          public ::testing::WithParamInterface<SheetCase> {};

TEST_P(SheetsOfManySizes, KeepTheirMarginsAndShowEveryRowOnce) {
  const auto [name, jobs, rows] = GetParam();
  const WorkSheet sheet = sheetOf(jobs, rows);
  for (const Paper paper : {Paper::a4, Paper::letter})
    for (const Language language : {Language::english, Language::spanish}) {
      const auto pages = layOut(sheet, {paper}, language);
      expectInsideMargins(pages, {paper});
      for (const Page& page : pages) expectNoOverlap(page);
      std::map<std::pair<int, int>, int> seen;
      for (const RowItem& row : rowsOf(pages)) ++seen[{row.job, row.first}];
      EXPECT_EQ(seen.size(), static_cast<std::size_t>(jobs * rows));
      EXPECT_TRUE(
          std::ranges::all_of(seen, [](const auto& each) { return each.second == 1; }));
    }
}

INSTANTIATE_TEST_SUITE_P(Paper,
                         SheetsOfManySizes,
                         ::testing::Values(SheetCase{"one", 1, 1},
                                           SheetCase{"short", 2, 28},
                                           SheetCase{"week", 7, 36},
                                           SheetCase{"wide", 3, 60},
                                           SheetCase{"huge", 1, 1500},
                                           SheetCase{"long", 24, 12}),
                         [](const auto& each) { return each.param.name; });

TEST_F(SheetLayout, PutsAShortWeekOnOnePage) {
  EXPECT_EQ(layOut(sheetOf(2, 28), {Paper::a4}, Language::english).size(), 1U);
}

TEST_F(SheetLayout, KeepsAJobsHeadDrawingAndFirstBoxesTogether) {
  const auto pages = layOut(sheetOf(9, 60), {Paper::letter}, Language::english);
  ASSERT_GT(pages.size(), 2U);
  int heads = 0;
  for (const Page& page : pages) {
    const std::string text = textOf(page);
    for (int job = 1; job <= 9; ++job) {
      const std::string title = "Rub rivals " + std::to_string(job) + '\n';
      if (text.find(title) == std::string::npos) continue;
      ++heads;
      EXPECT_TRUE(std::ranges::any_of(itemsOf<RowItem>(page), [job](const RowItem& row) {
        return row.job == job && row.first == 1;
      })) << job;
    }
    const auto jobsHere = std::ranges::count_if(
        itemsOf<RowItem>(page), [](const RowItem& row) { return row.first == 1; });
    EXPECT_EQ(static_cast<std::ptrdiff_t>(itemsOf<DrawingItem>(page).size()), jobsHere);
  }
  EXPECT_EQ(heads, 9);
}

TEST_F(SheetLayout, SaysOnTheNextPageWhichJobGoesOn) {
  const auto pages = layOut(sheetOf(1, 1500), {Paper::a4}, Language::english);
  ASSERT_GT(pages.size(), 2U);
  EXPECT_THAT(textOf(pages[1]), ::testing::HasSubstr("Job 1 in Block 1, continued"));
  EXPECT_THAT(textOf(pages[0]), ::testing::Not(::testing::HasSubstr("continued")));
}

TEST_F(SheetLayout, DrawsAtThreeCentimetresOrMore) {
  for (const int jobs : {1, 3, 4, 5, 8})
    for (const Page& page : layOut(sheetOf(jobs, 28), {Paper::letter}, Language::spanish))
      for (const DrawingItem& item : itemsOf<DrawingItem>(page)) {
        EXPECT_GE(item.rect.width(), millimetres(30));
        EXPECT_LE(item.rect.width(), millimetres(52.001));
      }
}

TEST_F(SheetLayout, GivesSpareRoomToTheDrawings) {
  const auto pages = layOut(sheetOf(1, 10), {Paper::a4}, Language::english);
  EXPECT_NEAR(
      itemsOf<DrawingItem>(pages.front()).front().rect.width(), millimetres(52), 0.01);
}

TEST_F(SheetLayout, MarksRowsAsTheyStand) {
  WorkSheet sheet = sheetOf(1, 6);
  auto& rows = sheet.blocks[0].jobs[0].rows;
  rows[0].cell = RowCell::done;
  rows[1].cell = RowCell::partly;
  rows.erase(rows.begin() + 3);  // row 4 is not in the job
  const auto items = rowsOf(layOut(sheet, {}, Language::english));
  std::vector<RowMark> marks;
  for (const RowItem& item : items) marks.push_back(item.mark);
  EXPECT_THAT(marks,
              ::testing::ElementsAre(RowMark::done,
                                     RowMark::partly,
                                     RowMark::toDo,
                                     RowMark::absent,
                                     RowMark::toDo,
                                     RowMark::toDo));
  EXPECT_NEAR(items[0].box.width(), millimetres(6.2), 1e-9);
}

TEST_F(SheetLayout, LetsOneDashStandForALongGap) {
  WorkSheet sheet = sheetOf(1, 30);
  std::erase_if(sheet.blocks[0].jobs[0].rows,
                [](const SheetRow& row) { return row.number >= 5 && row.number <= 19; });
  const auto pages = layOut(sheet, {}, Language::english);
  const auto items = rowsOf(pages);
  const auto dash = std::ranges::find(items, RowMark::absent, &RowItem::mark);
  ASSERT_NE(dash, items.end());
  EXPECT_EQ(dash->first, 5);
  EXPECT_EQ(dash->last, 19);
  EXPECT_EQ(std::ranges::count(items, RowMark::absent, &RowItem::mark), 1);
  EXPECT_THAT(textOf(pages), ::testing::HasSubstr("5–19"));
}

TEST_F(SheetLayout, EvensOutTheLinesOfBoxes) {
  const auto items = rowsOf(layOut(sheetOf(1, 36), {}, Language::english));
  std::map<double, int> lines;
  for (const RowItem& item : items) ++lines[item.box.top()];
  ASSERT_EQ(lines.size(), 2U);
  EXPECT_LE(std::abs(lines.begin()->second - lines.rbegin()->second), 1);
}

TEST_F(SheetLayout, TellsARepeatedOperationOnce) {
  WorkSheet sheet = sheetOf(2, 10);
  sheet.blocks[1].jobs[0].operation = sheet.blocks[0].jobs[0].operation;
  sheet.blocks[1].jobs[0].sameAs = 1;
  const auto pages = layOut(sheet, {}, Language::english);
  EXPECT_THAT(textOf(pages), ::testing::HasSubstr("As job 1."));
  EXPECT_EQ(itemsOf<DrawingItem>(pages.front()).size(), 1U);
}

TEST_F(SheetLayout, TellsItInFullWhereTheEarlierJobWasDoneAndSaysNothing) {
  WorkSheet sheet = sheetOf(2, 10);
  sheet.blocks[0].jobs[0].state = TaskState::done;
  sheet.blocks[1].jobs[0].operation = sheet.blocks[0].jobs[0].operation;
  sheet.blocks[1].jobs[0].sameAs = 1;
  const auto pages = layOut(sheet, {}, Language::english);
  EXPECT_THAT(textOf(pages), ::testing::Not(::testing::HasSubstr("As job")));
  EXPECT_EQ(itemsOf<DrawingItem>(pages.front()).size(), 1U);
}

TEST_F(SheetLayout, DoesWithoutADrawingThatDoesNotExist) {
  WorkSheet sheet = sheetOf(1, 10);
  sheet.blocks[0].jobs[0].drawing = "no-such-job";
  const auto pages = layOut(sheet, {}, Language::english);
  EXPECT_TRUE(itemsOf<DrawingItem>(pages.front()).empty());
  EXPECT_THAT(textOf(pages), ::testing::HasSubstr("Keep the top bud."));
}

TEST_F(SheetLayout, SaysWhatTheCrewNeedsInEnglish) {
  WorkSheet sheet = sheetOf(1, 10);
  sheet.blocks[0].jobs[0].cutOff = dayOf(2027, 4, 25);
  sheet.blocks[0].jobs[0].cutOffReason = {"the wood is hard", "la madera está dura"};
  const std::string text = textOf(layOut(sheet, {}, Language::english));
  for (const char* wanted : {"Alder Bend",
                             "Week 14, 5–11 April 2027",
                             "made 6 April 2027",
                             "Block 1",
                             "Gala, third leaf",
                             "to Sun 18 April · 18 h",
                             "Done when",
                             "10 rows · 1,000 trees",
                             "snips · soft ties: 3,600",
                             "there is frost",
                             "Sun 25 April: the wood is hard",
                             "Rows done",
                             "Crew leader",
                             "page 1 of 1"})
    EXPECT_THAT(text, ::testing::HasSubstr(wanted));
}

TEST_F(SheetLayout, SaysItInSpanishWhateverTheWindowsSpeak) {
  const std::string text = textOf(layOut(sheetOf(1, 10), {}, Language::spanish));
  for (const char* wanted : {"Semana 14, 5–11 de abril de 2027",
                             "Quitar yemas",
                             "Gala, tercera hoja",
                             "hasta el dom 18 de abril",
                             "Listo cuando",
                             "Pare si",
                             "Hileras hechas",
                             "Mayordomo",
                             "página 1 de 1"})
    EXPECT_THAT(text, ::testing::HasSubstr(wanted));
  EXPECT_THAT(text, ::testing::Not(::testing::HasSubstr("Done when")));
}

TEST_F(SheetLayout, SaysSinceWhenAJobIsLateAndFromWhenOneOpens) {
  WorkSheet sheet = sheetOf(2, 10);
  sheet.blocks[0].jobs[0].state = TaskState::late;
  sheet.blocks[0].jobs[0].closes = dayOf(2027, 4, 3);
  sheet.blocks[1].jobs[0].opens = dayOf(2027, 4, 9);
  const std::string text = textOf(layOut(sheet, {}, Language::english));
  EXPECT_THAT(text, ::testing::HasSubstr("late, was to be done by 3 April · 18 h"));
  EXPECT_THAT(text, ::testing::HasSubstr("9–18 April · 18 h"));
}

TEST_F(SheetLayout, WrapsLongNamesInsteadOfClippingThem) {
  WorkSheet sheet = sheetOf(1, 10);
  sheet.orchard = "The Upper and Lower Orchards of Alder Bend and Ferry Field Combined";
  sheet.blocks[0].name = std::string(120, 'W');
  sheet.blocks[0].jobs[0].title.en =
      "Take out the one to three thickest limbs of every tree in the upper half";
  sheet.blocks[0].jobs[0].cultivar = "A cultivar with a name that hardly ends at all";
  const auto pages = layOut(sheet, {Paper::letter}, Language::english);
  expectInsideMargins(pages, {Paper::letter});
  for (const Page& page : pages) expectNoOverlap(page);
}

TEST_F(SheetLayout, GivesAnEmptyWeekOnePageThatSaysSo) {
  const auto pages = layOut(emptySheet(), {}, Language::english);
  ASSERT_EQ(pages.size(), 1U);
  EXPECT_THAT(textOf(pages), ::testing::HasSubstr("No work is open this week."));
  EXPECT_THAT(textOf(pages), ::testing::Not(::testing::HasSubstr("Rows done")));
  expectInsideMargins(pages, {});
}

TEST_F(SheetLayout, IsTheSameEveryTime) {
  const WorkSheet sheet = sheetOf(7, 36);
  EXPECT_EQ(textOf(layOut(sheet, {}, Language::english)),
            textOf(layOut(sheet, {}, Language::english)));
}

TEST_F(SheetLayout, BreaksAWordThatIsWiderThanALine) {
  const QString word(200, u'm');
  const QStringList lines = wrapped(word, sheet_style::body, 100);
  EXPECT_GT(lines.size(), 10);
  EXPECT_EQ(lines.join(QString{}), word);
  for (const QString& line : lines) EXPECT_LE(widthOf(line, sheet_style::body), 100);
}

}  // namespace

}  // namespace topwire
