#include "app/paper/sheet_layout.h"

#include "app/paper/sheet_pieces.h"
#include "app/words/say.h"
#include "tests/app/sheet_samples.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <map>

namespace topwire {

namespace {

using testing::emptySheet;
using testing::sheetJob;
using testing::sheetOf;

/// Needs the application that the test program starts: fonts are measured.
class SheetLayout : public ::testing::Test {
protected:
  SheetLayout() { speak(QStringLiteral("en_GB")); }
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

bool isInk(const Item& item) {
  return !std::holds_alternative<RuleItem>(item)
         && !std::holds_alternative<FrameItem>(item);
}

/// Lines of text are set closer than the tallest letters reach.
QRectF tightBounds(const Item& item) {
  const double slack = std::holds_alternative<TextItem>(item) ? 3.2 : 0.1;
  return boundsOf(item).adjusted(0.1, slack, -0.1, -slack);
}

int overlapsOn(const Page& page) {
  std::vector<QRectF> taken;
  std::ptrdiff_t overlaps = 0;
  for (const Item& item : page.items) {
    if (!isInk(item)) continue;
    const QRectF bounds = tightBounds(item);
    overlaps += std::ranges::count_if(
        taken, [&bounds](const QRectF& other) { return bounds.intersects(other); });
    taken.push_back(bounds);
  }
  return static_cast<int>(overlaps);
}

/// Words may not run into each other or into a box.
void expectNoOverlap(const std::vector<Page>& pages) {
  for (const Page& page : pages) EXPECT_EQ(overlapsOn(page), 0);
}

void expectEachRowOnce(const std::vector<Page>& pages, int count) {
  std::map<std::pair<int, int>, int> seen;
  for (const RowItem& row : rowsOf(pages)) ++seen[{row.job, row.first}];
  EXPECT_EQ(seen.size(), static_cast<std::size_t>(count));
  EXPECT_TRUE(
      std::ranges::all_of(seen, [](const auto& each) { return each.second == 1; }));
}

/// Jobs of `sheetOf` whose title stands on the page.
std::vector<int> jobsBeginningOn(const Page& page) {
  std::vector<int> jobs;
  const QString title = QStringLiteral("Rub rivals ");
  for (const TextItem& item : itemsOf<TextItem>(page))
    if (item.face == sheet_style::title && item.text.startsWith(title))
      jobs.push_back(item.text.mid(title.size()).toInt());
  return jobs;
}

std::vector<int> firstBoxesOn(const Page& page) {
  std::vector<int> jobs;
  for (const RowItem& row : itemsOf<RowItem>(page))
    if (row.first == 1) jobs.push_back(row.job);
  return jobs;
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
      expectNoOverlap(pages);
      expectEachRowOnce(pages, jobs * rows);
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
  std::size_t heads = 0;
  for (const Page& page : pages) {
    const std::vector<int> jobs = jobsBeginningOn(page);
    EXPECT_EQ(firstBoxesOn(page), jobs);
    EXPECT_EQ(itemsOf<DrawingItem>(page).size(), jobs.size());
    heads += jobs.size();
  }
  EXPECT_EQ(heads, 9U);
}

TEST_F(SheetLayout, SaysOnTheNextPageWhichJobGoesOn) {
  const auto pages = layOut(sheetOf(1, 1500), {Paper::a4}, Language::english);
  ASSERT_GT(pages.size(), 2U);
  EXPECT_THAT(textOf(pages[1]), ::testing::HasSubstr("Job 1 in Block 1, continued"));
  EXPECT_THAT(textOf(pages[0]), ::testing::Not(::testing::HasSubstr("continued")));
}

TEST_F(SheetLayout, DrawsAtThreeCentimetresOrMore) {
  for (const int jobs : {1, 3, 4, 5, 8}) {
    const auto pages = layOut(sheetOf(jobs, 28), {Paper::letter}, Language::spanish);
    const double width = itemsOf<DrawingItem>(pages.front()).front().rect.width();
    EXPECT_GE(width, millimetres(30)) << jobs;
    EXPECT_LE(width, millimetres(52.001)) << jobs;
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
  marks.reserve(items.size());
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
  EXPECT_EQ((std::pair{dash->first, dash->last}), (std::pair{5, 19}));
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
  expectNoOverlap(pages);
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

TEST_F(SheetLayout, TellsDaysWhoseWeatherLetsJobsWait) {
  WorkSheet sheet = sheetOf(2, 10);
  const Sentence rain{phrase("Test", "Rain, %1 mm."), {Figure{4.2, 1}}};
  sheet.cautions = {{dayOf(2027, 4, 7), rain, RowSet::range(1, 1)},
                    {dayOf(2027, 4, 8), rain, RowSet::range(1, 2)},
                    {dayOf(2027, 4, 8), rain, {}}};
  const PageFormat format{};
  const auto pages = layOut(sheet, format, Language::english);
  expectInsideMargins(pages, format);
  EXPECT_THAT(textOf(pages),
              ::testing::AllOf(::testing::HasSubstr("Rain, 4.2 mm. Job 1 should wait."),
                               ::testing::HasSubstr("Wed 7 April"),
                               ::testing::HasSubstr(
                                   "\nRain, 4.2 mm. Jobs 1-2 should wait. Rain, 4.2 mm."),
                               ::testing::HasSubstr("Cautions, not orders")));
}

}  // namespace

}  // namespace topwire
