#include "core/phenology/stage.h"
#include "tests/support/builders.h"
#include "tests/support/operations.h"

#include <gmock/gmock.h>

#include <functional>

namespace topwire {

namespace {

using namespace topwire::testing;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using enum Vigour;

using Check = std::function<void(const Operation&)>;

/// A fact of the trade, the operation that carries it, and what has to stand there. All
/// of them are common practice, as growers told it; `published` names what was read
/// beside it.
struct Fact {
  const char* leaf;
  const char* fact;
  const char* id;
  const char* published;
  std::vector<Check> checks;
};

std::string wordsOf(const Operation& operation) {
  std::string all = operation.name.en + "\n" + operation.doneWhen.en;
  for (const Words& line : operation.how) all += "\n" + line.en;
  return all;
}

Check says(const std::string& words) {
  return [words](const Operation& operation) {
    EXPECT_THAT(wordsOf(operation), HasSubstr(words));
  };
}

Check opensAt(const Anchor& anchor) {
  return [anchor](const Operation& operation) { EXPECT_EQ(operation.opens, anchor); };
}

Check closesAt(const Anchor& anchor) {
  return [anchor](const Operation& operation) { EXPECT_EQ(operation.closes, anchor); };
}

Check isDone(int leaf, std::set<Vigour> on = {weak, moderate, strong}) {
  return [leaf, on](const Operation& operation) {
    for (const Vigour vigour : {weak, moderate, strong})
      EXPECT_EQ(operation.appliesTo(leaf, vigour, PlantingKind::main),
                on.contains(vigour))
          << "leaf " << leaf << ", class " << static_cast<int>(vigour);
  };
}

Check isNotDone(int leaf) {
  return isDone(leaf, {});
}

Check waitsFor(const std::string& other) {
  return [other](const Operation& operation) {
    EXPECT_THAT(operation.needs, Contains(other));
  };
}

Check avoids(Avoid avoid) {
  return [avoid](const Operation& operation) {
    EXPECT_THAT(operation.avoid, Contains(avoid));
  };
}

Check takes(const std::string& item, Per per, double least, double most) {
  return [=](const Operation& operation) {
    const auto found = std::ranges::find(operation.materials, item, &Material::item);
    ASSERT_NE(found, operation.materials.end()) << item;
    EXPECT_EQ(found->per, per);
    EXPECT_GE(found->amount, least);
    EXPECT_LE(found->amount, most);
  };
}

Check repeatsEvery(std::array<int, 3> days) {
  return [days](const Operation& operation) {
    ASSERT_TRUE(operation.repeat);
    EXPECT_EQ(operation.repeat->everyDays, days);
  };
}

void endsAtTheTopWire(const Operation& operation) {
  ASSERT_TRUE(operation.repeat && operation.repeat->until);
  EXPECT_EQ(operation.repeat->everyGrowth, Length::inches(15));
  EXPECT_EQ(operation.repeat->until->measure, Measure::leaderHeight);
  EXPECT_EQ(operation.repeat->until->side, Condition::Side::atLeast);
  EXPECT_TRUE(operation.repeat->until->topWire);
}

void isOnlyScheduled(const Operation& operation) {
  EXPECT_THAT(operation.materials, IsEmpty());
  EXPECT_THAT(operation.caution.en, HasSubstr("Licensed people only"));
  EXPECT_THAT(operation.caution.en, HasSubstr("Label and local law"));
  EXPECT_THAT(wordsOf(operation), HasSubstr("licensed adviser"));
}

const std::vector<Fact>& facts() {
  using namespace stages;
  static const std::vector<Fact> all{
      {"before",
       "planning starts two to three years ahead",
       "site-choice",
       "at least two years: Sazo, Growing Magazine",
       {opensAt(atPlanting(-40)), closesAt(atPlanting(-36))}},
      {"before",
       "site preparation starts two to three years ahead",
       "soil-test",
       "two years: Ontario, Timelines for planning an apple orchard",
       {opensAt(atPlanting(-24))}},
      {"before",
       "trees ordered three years ahead if possible",
       "order-trees",
       "two to three years: Cowgill, Good Fruit Grower",
       {opensAt(atPlanting(-36)), says("Three years ahead if you can")}},
      {"before",
       "with several small laterals asked for",
       "order-trees",
       "6 to 10 feathers: OMAFRA Planting HD Year 1",
       {says("several small laterals")}},
      {"before",
       "3-4 ft by 11-12 ft, about 1,200-1,300 trees an acre",
       "order-trees",
       "about 1,300: Robinson, Fruit Growers News 2020",
       {says("3 ft by 11 to 12 ft is 1,200 to 1,300 an acre")}},
      {"planting",
       "as early in spring as the ground can be worked",
       "plant",
       "late planting is a first-year mistake: Sazo, Growing Magazine",
       {opensAt(atPlanting()), avoids(Avoid::wet), avoids(Avoid::frost)}},
      {"planting",
       "graft union 4 in above the soil",
       "plant",
       "2 to 3 in: Clements, eXtension; 4 to 6 in: Sazo, Cornell slides",
       {says("graft union 4 in (10 cm) above the soil")}},
      {"planting",
       "graft union 4 in above the soil, still so once it has settled",
       "union-check",
       "extension practice, from memory",
       {says("4 in (10 cm) show"), waitsFor("plant")}},
      {"planting",
       "feathers below 24 in removed, flush at the collar",
       "feather-removal",
       "below 18 in: OMAFRA Planting HD Year 1",
       {says("Below 24 in (60 cm): cut every feather flush at the collar")}},
      {"planting",
       "feathers thicker than two thirds of the leader off, a short stub, no bevel",
       "feather-removal",
       "over half the leader: OMAFRA Planting HD Year 1",
       {says("over two thirds of the leader; a short stub, no bevel needed")}},
      {"planting",
       "no heading cut on leader or lateral",
       "feather-removal",
       "OMAFRA Training systems",
       {says("Never cut the leader or shorten a feather")}},
      {"1",
       "tied at once, a permanent tie above the first tier, loop 4 in across",
       "first-tie",
       "2 in loop: tall spindle table, from memory",
       {opensAt(atPlanting()),
        waitsFor("raise-trellis"),
        says("permanent tie just above the first tier of feathers"),
        says("loop 4 in (10 cm) across"),
        takes("permanent tie", Per::tree, 1, 1)}},
      {"1",
       "a trellis that supports the tree to 9 ft",
       "raise-trellis",
       "top wire about 10 ft: Walden Effect, Country Folks",
       {says("tight to 9 ft"), takes("wire", Per::metreOfWire, 1, 1)}},
      {"1",
       "protection from animals from the first day",
       "guards-first",
       "Smith, Protect trees, Good Fruit Grower",
       {opensAt(atPlanting()), takes("guard", Per::tree, 1, 1)}},
      {"1",
       "protection from insects, mites and disease from the first day",
       "protect-first",
       "common practice alone",
       {opensAt(atPlanting()), says("insect, mite and disease protection")}},
      {"1",
       "protection from insects, mites and disease all through the first leaf",
       "pest-watch",
       "common practice alone",
       {isDone(1), avoids(Avoid::spray)}},
      {"1",
       "protection from weeds from the first day",
       "weed-strip-first",
       "common practice alone",
       {opensAt(atPlanting()), says("4 ft (1.2 m)")}},
      {"1",
       "weed-free strip 4 ft wide",
       "weed-strip",
       "a yard wide under 20 % cover: OMAFRA, Critical weed-free period",
       {isDone(1), says("4 ft (1.2 m) bare")}},
      {"1",
       "dense grass in the alley",
       "alley-grass",
       "15 to 25 lb of seed an acre: Ontario, Timelines",
       {isDone(1), says("grass is dense")}},
      {"1",
       "dense grass in the alley, sown the autumn before",
       "alleys",
       "September: Ontario, Timelines for planning an apple orchard",
       {isDone(0), opensAt(atMonth(9, 1)), says("dense, low grass")}},
      {"1",
       "drip",
       "drip-line",
       "water at planting: Smith, Getting trees off, Good Fruit Grower",
       {opensAt(atPlanting(0, -14)), takes("drip line", Per::metreOfRow, 1, 1)}},
      {"1",
       "calcium nitrate, 2-4 oz a tree, twice, a month apart",
       "calcium-nitrate",
       "about 14 g of nitrogen: University of Maine Extension",
       {isDone(1),
        isNotDone(2),
        says("2 to 4 oz (56-113 g) a tree, twice, a month apart"),
        repeatsEvery({30, 30, 30}),
        takes("calcium nitrate", Per::tree, 56, 113)}},
      {"1",
       "calcium nitrate once the ground has settled and growth started",
       "calcium-nitrate",
       "common practice alone",
       {waitsFor("union-check"), opensAt(atStage(halfInchGreen, 14))}},
      {"1",
       "calcium nitrate kept off the bark",
       "calcium-nitrate",
       "common practice alone",
       {says("none against the bark")}},
      {"1",
       "at bud swell the three shoots below the leader rubbed off",
       "rub-rivals",
       "buds two and three: tall spindle table, from memory",
       {isDone(1), says("At bud swell"), says("Rub off the three shoots")}},
      {"1",
       "flower buds off before they open, above all on weak trees",
       "flower-removal",
       "pink to petal fall: MSU Extension, three options to defruit",
       {isDone(1),
        opensAt(atStage(pink)),
        closesAt(atStage(firstBloom)),
        says("before they open"),
        says("Weak trees first")}},
      {"1",
       "strong cultivars get a second pass for uprights at 3-4 in",
       "second-rub",
       "every class: Clements and Cowgill, UMass young-tree training",
       {isDone(1, {moderate, strong}),
        says("uprights below the leader, 3 to 4 in"),
        waitsFor("rub-rivals")}},
      {"1",
       "leader tied all season, ending at the top wire or the terminal bud",
       "leader-tie",
       "every 2 weeks on strong trees: OMAFRA Year 2",
       {isDone(1),
        closesAt(atStage(terminalBud)),
        repeatsEvery({28, 21, 14}),
        endsAtTheTopWire,
        waitsFor("raise-trellis")}},
      {"1",
       "laterals that are long or upright bent",
       "limb-bending",
       "over 10 in: tall spindle table, from memory",
       {isDone(1, {moderate, strong}), says("longer than 10 in"), says("upright")}},
      {"2",
       "as the first: the leader protected from rivals",
       "rub-rivals",
       "OMAFRA Year 2",
       {isDone(2)}},
      {"2",
       "as the first: the leader protected, all season",
       "rival-check",
       "every 2 weeks on strong trees: OMAFRA Year 2",
       {isDone(2)}},
      {"2",
       "weak trees lose their flower buds before they open",
       "flower-removal-weak",
       "MSU Extension, three options to defruit",
       {isDone(2, {weak}), opensAt(atStage(pink)), closesAt(atStage(firstBloom))}},
      {"2",
       "strong trees keep about 15 fruit on lower branches",
       "hand-thinning",
       "15 to 20: Good Fruit Grower 2013",
       {isDone(2), says("Leaf 2: about 15, on low branches")}},
      {"2",
       "what is above the second wire is thinned",
       "clear-leader-fruit",
       "common practice alone",
       {isDone(2), says("everything above the second wire")}},
      {"2",
       "tied to further wires",
       "wire-tie",
       "one permanent loop a wire: from memory",
       {isDone(2), waitsFor("raise-trellis"), takes("permanent tie", Per::tree, 1, 1)}},
      {"2",
       "leader at the top wire by the end of the second leaf",
       "wire-tie",
       "leaf 2 or 3: Sazo, Growing Magazine; OMAFRA Year 3-5",
       {says("leader at the top wire by the end of the second leaf")}},
      {"3",
       "dormant pruning in February or March before it",
       "dormant-pruning",
       "over by green tip: Capital Press 2018",
       {isNotDone(2), isDone(3), opensAt(atMonth(2, 1)), closesAt(atStage(greenTip))}},
      {"3",
       "over-strong limbs out, leaving a stub",
       "dormant-pruning",
       "over half the leader: OMAFRA Year 2",
       {says("over-strong limbs out, with a stub")}},
      {"3",
       "trees that fill their space at a 1.5 in trunk carry about 30 fruit",
       "hand-thinning",
       "50 to 60: tall spindle table, from memory",
       {isDone(3), says("Leaf 3: about 30 at a 1.5 in (4 cm) trunk")}},
      {"3",
       "chemical thinning, scheduled only",
       "chemical-thinning",
       "bloom to 18 mm: MSU Extension, NC State Extension",
       {isNotDone(2), isDone(3), isOnlyScheduled}},
      {"3",
       "followed by hand thinning",
       "chemical-thinning",
       "7 to 10 days after it: common practice alone",
       {says("then thin by hand")}},
      {"3",
       "no fruit that competes with the leader",
       "clear-leader-fruit",
       "common practice alone",
       {isDone(3), says("No fruit pulls on or bends the leader")}},
      {"4",
       "dormant before it: largest limbs out",
       "dormant-pruning",
       "one to three a year: OMAFRA Year 3-5",
       {isDone(4), says("Leaf 4 on: the largest, one to three")}},
      {"4",
       "uprights out",
       "dormant-pruning",
       "OMAFRA Year 3-5",
       {says("Take out uprights")}},
      {"4",
       "the hanging parts of limbs out",
       "hanging-wood",
       "pencil-thick wood: UMass blog 2009",
       {isNotDone(3), isDone(4), says("limbs that hang straight down")}},
      {"4",
       "renewal cuts, or a hanging limb shortened to an upward lateral",
       "renewal-cuts",
       "stub of 1 to 2 in: OMAFRA Year 2",
       {isNotDone(3), isDone(4), says("shorten a hanging limb to an upward lateral")}},
      {"later",
       "limbs renewed every year",
       "renewal-cuts",
       "OMAFRA Year 3-5",
       {isDone(5), isDone(9), isDone(15)}},
      {"later",
       "side branches thinned so that each limb is a single axis",
       "single-axis",
       "columnar limbs: UMass blog 2009",
       {isDone(5), says("one tip to each limb"), says("Take off strong side branches")}},
      {"later",
       "the cone kept",
       "single-axis",
       "OMAFRA Year 3-5",
       {says("Keep the cone")}},
      {"later",
       "height at most 90 % of the row spacing, 11 ft rows: 10 ft",
       "height-cut",
       "UMass blog 2009; 100 %: Robinson, Fruit Growers News 2020",
       {isDone(5),
        says("nine tenths of the row width"),
        says("11 ft rows (3.4 m): 10 ft (3.0 m)")}},
  };
  return all;
}

TEST(ProgrammeFacts, StandInTheShippedFileAsCommonPractice) {
  const Programme& programme = shippedProgrammes().at("tall-spindle-apple");
  for (const Fact& fact : facts()) {
    SCOPED_TRACE(std::string{"leaf "} + fact.leaf + ", " + fact.id + ": " + fact.fact
                 + "; beside it " + fact.published);
    const Operation* operation = programme.find(fact.id);
    ASSERT_NE(operation, nullptr);
    for (const Check& check : fact.checks) check(*operation);
    EXPECT_THAT(operation->source, HasSubstr("ommon practice"));
  }
}

/// The facts' days on a planting set on 10 April 2027 (10 September in the south), with
/// full bloom on 10 May (10 November) and first leaf as the others.
struct Dated {
  const char* id;
  int leaf;
  const char* northOpens;
  const char* northCloses;
  const char* southOpens;
  const char* southCloses;
};

// Worked out by hand from the fixed stages: pink 7, first bloom 3, green tip 32 and half-
// inch green 24 days before full bloom. North, green tip in the first leaf is over before
// the trees are in the ground.
const Dated dates[]{
    {"order-trees", -2, "2024-04-10", "2025-04-10", "2024-09-10", "2025-09-10"},
    {"first-tie", 1, "2027-04-10", "2027-04-24", "2027-09-10", "2027-09-24"},
    {"rub-rivals", 1, "2027-04-10", "2027-05-03", "2027-10-09", "2027-11-03"},
    {"flower-removal", 1, "2027-05-03", "2027-05-07", "2027-11-03", "2027-11-07"},
    {"flower-removal-weak", 2, "2028-05-03", "2028-05-07", "2028-11-03", "2028-11-07"},
    {"dormant-pruning", 3, "2029-02-01", "2029-04-08", "2029-08-01", "2029-10-09"},
    {"renewal-cuts", 4, "2030-02-01", "2030-04-08", "2030-08-01", "2030-10-09"},
    {"hand-thinning", 3, "2029-05-24", "2029-06-19", "2029-11-24", "2029-12-20"},
};

Orchard weakPlanting(bool south) {
  Orchard orchard = south ? orchardOfOne(southernSettings(), dayOf(2027, 9, 10))
                          : orchardOfOne(northernSettings(), dayOf(2027, 4, 10));
  orchard.plantings.begin()->second.vigour = weak;
  return orchard;
}

TEST(ProgrammeFacts, FallOnTheirDaysInBothHemispheres) {
  const FixedForecaster forecaster;
  const Trade trade{shippedTables(), shippedProgrammes(), forecaster};
  for (const bool south : {false, true}) {
    const Orchard orchard = weakPlanting(south);
    const PlantingId planting = orchard.plantings.begin()->first;
    const Plan plan =
        planTasks(orchard, trade, {Season{2023}, Season{2034}}, dayOf(2023, 7, 1));
    for (const Dated& row : dates) {
      const Task* task = plan.find({planting, row.id, Season{2026 + row.leaf}, 1});
      ASSERT_NE(task, nullptr) << row.id;
      EXPECT_EQ(isoText(task->opens), south ? row.southOpens : row.northOpens) << row.id;
      // The early edge of a bloom still to be seen may close it sooner.
      EXPECT_LE(isoText(task->closes), south ? row.southCloses : row.northCloses);
      EXPECT_GE(daysBetween(task->opens, task->closes), 1) << row.id;
    }
  }
}

/// The shipped file asks by trunk, room and leader where they were measured.
TEST(ProgrammeFacts, AskForWorkByWhatWasMeasured) {
  const Programme& programme = shippedProgrammes().at("tall-spindle-apple");
  const auto first = [&](const char* id) { return programme.find(id)->when.at(0); };
  using enum Condition::Side;
  // Derived: below 1.25 in (31,750 micrometres) a tree carries too few fruit to be worth
  // a spray.
  EXPECT_EQ(first("chemical-thinning"),
            (Condition{Measure::trunkDiameter, atLeast, 31'750, false}));
  // Strong trees that fill their space: MSU Extension, root pruning; nine tenths derived.
  EXPECT_EQ(first("root-pruning"), (Condition{Measure::spaceFilled, atLeast, 90, false}));
  // Only once the leader is up: OMAFRA Year 3-5.
  EXPECT_EQ(first("height-cut"), (Condition{Measure::leaderHeight, atLeast, 0, true}));
}

TEST(ProgrammeFacts, GiveCalciumNitrateTwiceAMonthApart) {
  const FixedForecaster forecaster;
  const Trade trade{shippedTables(), shippedProgrammes(), forecaster};
  const Orchard orchard = weakPlanting(false);
  const Plan plan =
      planTasks(orchard, trade, {Season{2027}, Season{2027}}, dayOf(2027, 1, 1));
  std::vector<Day> gifts;
  for (const Task& task : plan.tasks)
    if (task.key.operation == "calcium-nitrate") gifts.push_back(task.opens);
  ASSERT_EQ(gifts.size(), 2U);
  EXPECT_EQ(daysBetween(gifts[0], gifts[1]), 30);
}

}  // namespace

}  // namespace topwire
