#include "core/planning/reconcile.h"

#include "tests/support/builders.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using namespace topwire::testing;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;
using Kind = PlanDifference::Kind;

class ReconcileTest : public ::testing::Test {
protected:
  TaskKey key(const std::string& operation, int season = 2027) const {
    return {orchard.plantings.begin()->first, operation, Season{season}, 1};
  }

  Task planned(const std::string& operation, int dayOfApril) const {
    Task task;
    task.key = key(operation);
    task.opens = dayOf(2027, 4, static_cast<unsigned>(dayOfApril));
    task.closes = plusDays(task.opens, 10);
    return task;
  }

  void store(const std::string& operation, int dayOfApril, int season = 2027) {
    const Day opens = dayOf(season, 4, static_cast<unsigned>(dayOfApril));
    const TaskKey stored = key(operation, season);
    orchard.tasks[stored] = {stored, opens, plusDays(opens, 10), std::nullopt, false};
  }

  Reconciled reconciled(std::vector<Task> tasks) const {
    return reconcile(orchard, Plan{std::move(tasks), {}}, {Season{2026}, Season{2028}});
  }

  Orchard orchard = orchardOfOne(northernSettings(), dayOf(2025, 4, 10));
};

TEST_F(ReconcileTest, TellsNothingOfTheSamePlan) {
  store("rub", 10);
  const Reconciled same = reconciled({planned("rub", 10)});
  EXPECT_THAT(same.differences, IsEmpty());
  EXPECT_EQ(same.tasks, orchard.tasks);
}

TEST_F(ReconcileTest, TellsMovesInDays) {
  store("rub", 10);
  const Reconciled moved = reconciled({planned("rub", 6)});
  ASSERT_THAT(moved.differences, SizeIs(1));
  EXPECT_EQ(moved.differences[0], (PlanDifference{Kind::moved, key("rub"), -4, -4}));
  EXPECT_EQ(isoText(moved.tasks.at(key("rub")).opens), "2027-04-06");
}

TEST_F(ReconcileTest, AddsNewTasksAndDropsUntouchedOnes) {
  store("old", 10);
  const Reconciled result = reconciled({planned("new", 6)});
  EXPECT_THAT(result.differences,
              ElementsAre(PlanDifference{Kind::appeared, key("new")},
                          PlanDifference{Kind::dropped, key("old")}));
  EXPECT_FALSE(result.tasks.contains(key("old")));
}

TEST_F(ReconcileTest, MarksWhatIsKeptForItsTicksOnce) {
  store("old", 10);
  Task kept = planned("old", 10);
  kept.noLongerAsked = true;
  const Reconciled first = reconciled({kept});
  EXPECT_THAT(first.differences,
              ElementsAre(PlanDifference{Kind::keptUnasked, key("old")}));
  orchard.tasks = first.tasks;
  EXPECT_THAT(reconciled({kept}).differences, IsEmpty());
}

TEST_F(ReconcileTest, LeavesOtherSeasonsAlone) {
  store("rub", 10, 2020);
  const Reconciled result = reconciled({});
  EXPECT_THAT(result.differences, IsEmpty());
  EXPECT_TRUE(result.tasks.contains(key("rub", 2020)));
}

TEST_F(ReconcileTest, ForgetsOtherSeasonsOfAPlantingThatIsGone) {
  store("rub", 10, 2020);
  orchard.plantings.clear();
  EXPECT_THAT(reconciled({}).tasks, IsEmpty());
}

TEST_F(ReconcileTest, SumsUpInWords) {
  const std::vector<PlanDifference> differences{{Kind::moved, key("a"), 1, 1},
                                                {Kind::moved, key("b"), 2, 2},
                                                {Kind::dropped, key("c")}};
  std::vector<std::string> words;
  for (const Sentence& sentence : summaryOf(differences))
    words.push_back(inEnglish(sentence));
  EXPECT_THAT(words, ElementsAre("2 windows moved", "1 job is no longer asked for"));
}

}  // namespace
}  // namespace topwire
