#include "app/models/session.h"

#include "tests/app/memory_files.h"
#include "tests/support/builders.h"
#include "tests/support/weather.h"

#include <gmock/gmock.h>

namespace topwire {

namespace {

using testing::block;
using ::testing::Contains;
using ::testing::IsEmpty;
using ::testing::MatchesRegex;
using ::testing::Not;
using testing::orchardOfOne;
using ::testing::SizeIs;

/// FixedForecaster, moved as a whole by what was seen.
class FollowingForecaster final : public testing::PlainForecaster {
public:
  Outlook outlook(const Orchard& orchard,
                  const Planting& planting,
                  Season season,
                  Day today) const override {
    Outlook outlook =
        testing::FixedForecaster{}.outlook(orchard, planting, season, today);
    for (const auto& [id, seen] : orchard.observations) {
      if (seasonOf(seen.day, Hemisphere::north) != season) continue;
      const int later = daysBetween(outlook.find(seen.bbch)->date, seen.day);
      for (StageEstimate& stage : outlook.stages) {
        for (Day* day : {&stage.date, &stage.early, &stage.late})
          *day = plusDays(*day, later);
        if (stage.bbch == seen.bbch) stage.kind = StageKind::observed;
      }
    }
    return outlook;
  }
};

class SessionTest : public ::testing::Test {
protected:
  SessionTest() {
    files.orchards["one"] = orchardOfOne(testing::northernSettings(), dayOf(2025, 4, 10));
    files.orchards["two"] = Orchard{};
    files.orchards["two"].settings = testing::southernSettings();
    session.setToday(dayOf(2027, 4, 6));
    QObject::connect(&session, &Session::changed, [this] { ++changes; });
    QObject::connect(&session, &Session::happened, [this](const Sentence& name) {
      happened.push_back(name);
    });
    QObject::connect(&session, &Session::troubled, [this](const Problem& problem) {
      troubles.push_back(problem);
    });
    QObject::connect(&session,
                     &Session::shifted,
                     [this](const std::vector<PlanDifference>& differences,
                            const std::vector<Sentence>& why) {
                       shifts.push_back(differences);
                       for (const Sentence& one : why) whys.push_back(inEnglish(one));
                     });
  }

  Checked<Change> anotherBlock() {
    return addBlock(session.orchard(), block(9, "Quarry", "1-4"));
  }

  Checked<Change> sawGreenTip(Day day) {
    Observation seen;
    seen.id = {0, 77};
    seen.planting = {0, 2};
    seen.bbch = stages::greenTip;
    seen.day = day;
    return observeStage(session.orchard(), seen);
  }

  testing::MemoryFiles files;
  FollowingForecaster forecaster;
  Session session{
      testing::shippedTables(), testing::shippedProgrammes(), forecaster, files, [] {
        return std::int64_t{0};
      }};
  int changes = 0;
  std::vector<Sentence> happened;
  Problems troubles;
  std::vector<std::vector<PlanDifference>> shifts;
  std::vector<std::string> whys;
};

TEST_F(SessionTest, opensWithAPlanStoredAndViewsOfEveryTask) {
  ASSERT_TRUE(session.open(QStringLiteral("one"), Access::write));
  EXPECT_THAT(session.plan().tasks, Not(IsEmpty()));
  EXPECT_EQ(session.views().size(), session.plan().tasks.size());
  EXPECT_EQ(session.orchard().tasks.size(), session.plan().tasks.size());
  EXPECT_EQ(files.journal->tasks, session.orchard().tasks);
}

TEST_F(SessionTest, aFirstPlanIsNoNews) {
  ASSERT_TRUE(session.open(QStringLiteral("one"), Access::write));
  EXPECT_THAT(shifts, IsEmpty());
}

TEST_F(SessionTest, aRefusedWriteLeavesEverythingAsItWasAndIsTold) {
  ASSERT_TRUE(session.open(QStringLiteral("one"), Access::write));
  const Orchard before = session.orchard();
  const Plan planBefore = session.plan();
  changes = 0;
  files.journal->refuses = true;

  const Problems problems = session.perform(anotherBlock());

  EXPECT_THAT(problems, SizeIs(1));
  EXPECT_EQ(troubles, problems);
  EXPECT_EQ(session.orchard(), before);
  EXPECT_EQ(session.plan().tasks, planBefore.tasks);
  EXPECT_EQ(session.undoName(), nullptr);
  EXPECT_EQ(changes, 0);
  EXPECT_THAT(happened, IsEmpty());
}

TEST_F(SessionTest, aDeedWithProblemsIsNotPerformed) {
  ASSERT_TRUE(session.open(QStringLiteral("one"), Access::write));
  const Orchard before = session.orchard();
  const Problems problems =
      session.perform(addBlock(session.orchard(), block(9, "Creek", "1-4")));
  ASSERT_THAT(problems, Not(IsEmpty()));
  EXPECT_EQ(problems.front().place, "name");
  EXPECT_EQ(session.orchard(), before);
  EXPECT_THAT(files.journal->entries, IsEmpty());
}

TEST_F(SessionTest, performsThenUndoesThenRedoes) {
  ASSERT_TRUE(session.open(QStringLiteral("one"), Access::write));
  const auto blocks = session.orchard().blocks;
  EXPECT_THAT(session.perform(anotherBlock()), IsEmpty());
  EXPECT_THAT(happened, SizeIs(1));
  ASSERT_NE(session.undoName(), nullptr);
  EXPECT_EQ(*session.undoName(), happened.front());

  ASSERT_TRUE(session.undo());
  EXPECT_EQ(session.orchard().blocks, blocks);
  EXPECT_EQ(session.undoName(), nullptr);

  ASSERT_TRUE(session.redo());
  EXPECT_TRUE(session.orchard().blocks.contains(BlockId{0, 9}));
  EXPECT_THAT(happened, SizeIs(1)) << "undo and redo are not deeds of their own";
}

TEST_F(SessionTest, aRefusedOpeningLeavesTheOpenOrchard) {
  ASSERT_TRUE(session.open(QStringLiteral("one"), Access::write));
  const Orchard before = session.orchard();
  EXPECT_FALSE(session.open(QStringLiteral("missing"), Access::write));
  EXPECT_EQ(session.path(), QStringLiteral("one"));
  EXPECT_EQ(session.orchard(), before);
  EXPECT_THAT(session.views(), Not(IsEmpty()));
}

TEST_F(SessionTest, anotherOrchardTakesTheFirstOnesPlace) {
  ASSERT_TRUE(session.open(QStringLiteral("one"), Access::write));
  ASSERT_TRUE(session.open(QStringLiteral("two"), Access::write));
  EXPECT_EQ(session.orchard().settings.name, "Rata Flat");
  EXPECT_THAT(session.views(), IsEmpty());
}

TEST_F(SessionTest, lookingWritesNothing) {
  ASSERT_TRUE(session.open(QStringLiteral("one"), Access::look));
  EXPECT_TRUE(session.isReadOnly());
  EXPECT_THAT(session.views(), Not(IsEmpty()));
  EXPECT_THAT(session.orchard().tasks, IsEmpty());
  EXPECT_THAT(files.journal->tasks, IsEmpty());
}

TEST_F(SessionTest, theNextDayIsPlannedAnew) {
  ASSERT_TRUE(session.open(QStringLiteral("one"), Access::write));
  changes = 0;
  session.setToday(dayOf(2027, 4, 6));
  EXPECT_EQ(changes, 0) << "the same day";
  session.setToday(dayOf(2027, 4, 7));
  EXPECT_EQ(changes, 1);
}

TEST_F(SessionTest, plansSeasonsFarFromTodayWhenTheyAreLookedAt) {
  ASSERT_TRUE(session.open(QStringLiteral("one"), Access::write));
  const DaySpan may2031{dayOf(2031, 5, 1), dayOf(2031, 5, 31)};
  const std::vector<TaskView> views = session.viewsFor(may2031);
  EXPECT_TRUE(std::ranges::any_of(
      views, [](const TaskView& view) { return view.task->key.season == Season{2031}; }));
  EXPECT_EQ(&session.planFor(may2031), &session.planFor(may2031))
      << "kept until a change";
}

TEST_F(SessionTest, aDeedWithoutFieldsTellsWhatIsInItsWay) {
  ASSERT_TRUE(session.open(QStringLiteral("one"), Access::write));
  session.performOrTell(deleteBlock(session.orchard(), BlockId{0, 404}));
  EXPECT_THAT(troubles, SizeIs(1));
}

TEST_F(SessionTest, seeingAStageIsADeedThatCanBeUndone) {
  ASSERT_TRUE(session.open(QStringLiteral("one"), Access::write));
  EXPECT_THAT(session.perform(sawGreenTip(dayOf(2027, 4, 2))), IsEmpty());
  EXPECT_THAT(session.orchard().observations, SizeIs(1));
  ASSERT_TRUE(session.undo());
  EXPECT_THAT(session.orchard().observations, IsEmpty());
}

TEST_F(SessionTest, tellsWhichStagesMovedTheWork) {
  ASSERT_TRUE(session.open(QStringLiteral("one"), Access::write));
  EXPECT_THAT(session.perform(sawGreenTip(dayOf(2027, 4, 4))), IsEmpty());
  EXPECT_THAT(whys,
              Contains(MatchesRegex("Green tip at Creek seen 4 April 2027, 4 days "
                                    "earlier than expected: [0-9]+ tasks moved.")));
  EXPECT_THAT(whys,
              Contains(MatchesRegex("Full bloom at Creek expected 4 days earlier: "
                                    "[0-9]+ tasks moved.")));
  EXPECT_EQ(session.outlooks().at({0, 2}).find(stages::greenTip)->date,
            dayOf(2027, 4, 4));
}

TEST_F(SessionTest, cautionsAreAboutDaysToCome) {
  Orchard& orchard = files.orchards["one"];
  for (const unsigned day : {5U, 6U})
    testing::put(orchard, dayOf(2027, 4, day), {4, 12, 3, WeatherSource::typed});
  ASSERT_TRUE(session.open(QStringLiteral("one"), Access::look));
  EXPECT_THAT(session.cautionsOn(dayOf(2027, 4, 6)), SizeIs(1));
  EXPECT_THAT(session.cautionsOn(dayOf(2027, 4, 5)), IsEmpty());
}

}  // namespace

}  // namespace topwire
