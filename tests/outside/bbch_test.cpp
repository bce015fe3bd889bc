#include "core/phenology/stage.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

namespace topwire {

namespace {

using ::testing::ElementsAre;
using ::testing::IsSubsetOf;

std::vector<int> codes() {
  std::vector<int> all;
  for (const Stage& stage : allStages()) all.push_back(stage.bbch);
  return all;
}

/// Meier (ed.), Growth stages of mono- and dicotyledonous plants, BBCH Monograph, pome
/// fruit: inflorescence (5), flowering (6), fruit (7), maturity (8), senescence (9). The
/// codes up to 73 were read in a published table, those above are from memory.
TEST(Bbch, OnlyCodesOfThePomeFruitScale) {
  EXPECT_THAT(codes(),
              IsSubsetOf({51, 52, 53, 54, 55, 56, 57, 59, 60, 61, 62, 63, 64, 65, 67, 69,
                          71, 72, 73, 74, 75, 77, 81, 85, 87, 89, 91, 92, 93, 95, 97}));
}

TEST(Bbch, CodesRiseExceptThatShootsStopBeforeHarvest) {
  std::vector<int> falls;
  const auto all = codes();
  for (std::size_t i = 1; i < all.size(); ++i)
    if (all[i] < all[i - 1]) falls.push_back(all[i]);
  EXPECT_THAT(falls, ElementsAre(stages::harvest));
  EXPECT_EQ(std::ranges::find(all, stages::harvest)[-1], stages::terminalBud);
}

struct Pairing {
  int bbch;
  const char* name;
};

/// North American names: New York's Food and Life Sciences Bulletin 58 (1976) and Utah
/// State University's growth-stage page; meanings of the codes from the BBCH table.
constexpr Pairing pairings[] = {{52, "silver tip"},
                                {53, "green tip"},
                                {54, "half-inch green"},
                                {55, "tight cluster"},
                                {57, "pink"},
                                {59, "full pink"},
                                {60, "first bloom"},
                                {65, "full bloom"},
                                {69, "petal fall"},
                                {71, "fruit set"},
                                {73, "June drop"},
                                {87, "harvest"},
                                {91, "terminal bud set"},
                                {95, "leaf fall"}};

TEST(Bbch, EverydayNamesStandBesideTheirCodes) {
  for (const auto& [bbch, name] : pairings) {
    const Stage* stage = stageByCode(bbch);
    ASSERT_NE(stage, nullptr) << bbch;
    EXPECT_EQ(stage->name.en, name);
  }
  EXPECT_EQ(stageByCode(stages::greenTip)->name.es, "punta verde");
}

TEST(Bbch, EachStageHasItsOwnNameInBothLanguages) {
  std::set<std::string> en;
  std::set<std::string> es;
  for (const Stage& stage : allStages()) {
    EXPECT_TRUE(en.insert(stage.name.en).second) << stage.name.en;
    EXPECT_TRUE(es.insert(stage.name.es).second) << stage.name.es;
  }
  EXPECT_FALSE(en.contains("") || es.contains(""));
}

TEST(Bbch, CodesNotDatedAreNotFound) {
  for (const int bbch : {0, 10, 53 - 100, 58, 66, 100})
    EXPECT_EQ(stageByCode(bbch), nullptr) << bbch;
}

}  // namespace

}  // namespace topwire
