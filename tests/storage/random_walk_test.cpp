#include "core/edit/workbench.h"
#include "storage/orchard_file.h"
#include "tests/storage/file_support.h"
#include "tests/support/builders.h"

#include <gtest/gtest.h>

#include <memory>
#include <random>

namespace topwire {
namespace {

/// A season of clumsy work in fast motion: changes of every kind, some of which the file
/// refuses, undone and redone, planned anew, closed and opened again. After each stretch
/// memory and disk must be the same.
class Walk {
public:
  explicit Walk(std::string path) : path_(std::move(path)) {
    EXPECT_TRUE(files_.create(path_, testing::orchardOfEverything()).has_value());
    reopen();
  }

  void step() {
    switch (pick(14)) {
      case 0:
      case 1:
        return take(bench_->undo().has_value());
      case 2:
        return take(bench_->redo().has_value());
      case 3:
        return take(bench_->replan(someTasks()).has_value());
      default:
        return take(bench_->perform(someChange()).has_value());
    }
  }

  void reopen() {
    const std::string undo = bench_ ? spoken(bench_->undoName()) : "";
    const std::string redo = bench_ ? spoken(bench_->redoName()) : "";
    const bool first = !bench_;
    bench_.reset();
    opened_.journal.reset();
    auto result = files_.open(path_, Access::write);
    ASSERT_TRUE(result.has_value()) << testing::outcome(result);
    opened_ = std::move(*result);
    bench_ = std::make_unique<Workbench>(
        opened_.orchard,
        *opened_.journal,
        [this] { return 1'800'000'000 + taken; },
        IdSource::countingFrom(ids_ += 1'000'000));
    if (first) return;
    EXPECT_EQ(spoken(bench_->undoName()), undo);
    EXPECT_EQ(spoken(bench_->redoName()), redo);
  }

  const Orchard& memory() const { return bench_->orchard(); }

  Orchard disk() {
    const auto looked = files_.open(path_, Access::look);
    EXPECT_TRUE(looked.has_value()) << testing::outcome(looked);
    return looked ? looked->orchard : Orchard{};
  }

  int taken = 0;
  int refused = 0;

private:
  static std::string spoken(const Sentence* name) {
    return name ? inEnglish(*name) : std::string{};
  }

  void take(bool done) { ++(done ? taken : refused); }

  int pick(int below) {
    return static_cast<int>(random_() % static_cast<unsigned>(below));
  }

  template <class Map>
  const typename Map::mapped_type* any(const Map& map) {
    if (map.empty()) return nullptr;
    return &std::next(map.begin(), pick(static_cast<int>(map.size())))->second;
  }

  template <class Id>
  Id freshId() {
    return bench_->ids().next<Id>();
  }

  std::string someText() {
    static const std::vector<std::string> texts{
        "", "Ñandú", "it's \"so\"", "línea\n2", "🍎"};
    return texts[static_cast<std::size_t>(pick(5))] + std::to_string(pick(1000));
  }

  TaskKey someKey() {
    const Planting* planting = any(memory().plantings);
    return {planting ? planting->id : PlantingId{}, "tie", {2026 + pick(3)}, 1 + pick(3)};
  }

  std::map<TaskKey, StoredTask> someTasks() {
    std::map<TaskKey, StoredTask> tasks;
    for (int i = pick(6); i > 0; --i) {
      const TaskKey key = someKey();
      const Day opens = plusDays(dayOf(2027, 1, 1), pick(300));
      tasks[key] = {key, opens, plusDays(opens, 9), std::nullopt, pick(2) == 0};
    }
    return tasks;
  }

  /// Adds, edits or removes; `edited` alters a record that is there.
  template <class Map, class Make, class Alter>
  AnyEdit editOf(const Map& records, Make make, Alter alter) {
    using Record = typename Map::mapped_type;
    const Record* held = any(records);
    const int kind = pick(3);
    if (!held || kind == 0) return Edit<Record>{std::nullopt, make()};
    if (kind == 1) return Edit<Record>{*held, std::nullopt};
    Record after = *held;
    alter(after);
    return Edit<Record>{*held, after};
  }

  AnyEdit blockEdit() {
    return editOf(
        memory().blocks,
        [&] {
          Block block = testing::block(1, someText(), "1-9");
          block.id = freshId<BlockId>();
          return block;
        },
        // A spacing of zero breaks a rule of the file.
        [&](Block& block) { block.rowSpacing = Length::feet(pick(6)); });
  }

  AnyEdit plantingEdit() {
    return editOf(
        memory().plantings,
        [&] {
          const Block* block = any(memory().blocks);
          // Without a block there is nothing to refer to, which is refused.
          Planting planting = testing::planting(
              1, block ? *block : Block{}, plusDays(dayOf(2024, 1, 1), pick(1000)));
          planting.id = freshId<PlantingId>();
          return planting;
        },
        [&](Planting& planting) { planting.vigourReason = someText(); });
  }

  Day someDay() { return plusDays(dayOf(2027, 4, 1), pick(20)); }

  CrewId someCrew() {
    const Crew* crew = any(memory().crews);
    return crew ? crew->id : CrewId{};
  }

  AnyEdit workDayEdit() {
    return editOf(
        memory().workDays,
        [&] {
          return WorkDay{someDay(), pick(101), someText()};
        },
        // More than a whole day is refused.
        [&](WorkDay& work) { work.percent = pick(110); });
  }

  AnyEdit turnoutEdit() {
    return editOf(
        memory().turnouts,
        [&] {
          return Turnout{{someCrew(), someDay()}, pick(9)};
        },
        // Fewer than none are refused.
        [&](Turnout& turnout) { turnout.workers = pick(9) - 1; });
  }

  AnyEdit pinEdit() {
    return editOf(
        memory().pins,
        [&] {
          const bool toCrew = pick(2) == 0;
          return Pin{freshId<PinId>(),
                     toCrew ? PinKind::crewToJob : PinKind::notBefore,
                     someKey(),
                     toCrew ? std::optional{someCrew()} : std::nullopt,
                     someDay(),
                     someText()};
        },
        [&](Pin& pin) { pin.reason = someText(); });
  }

  AnyEdit closureEdit() {
    return editOf(
        memory().closures,
        [&] {
          const Block* block = any(memory().blocks);
          const Day from = someDay();
          return BlockClosure{freshId<ClosureId>(),
                              block ? block->id : BlockId{},
                              from,
                              plusDays(from, pick(4)),
                              pick(1440),
                              someText()};
        },
        // An end before the beginning is refused.
        [&](BlockClosure& closure) { closure.until = someDay(); });
  }

  AnyEdit plannedJobEdit() {
    return editOf(
        memory().plannedJobs,
        [&] {
          return PlannedJob{{someDay(), someCrew(), 1 + pick(3)},
                            someKey(),
                            RowSet::range(1, 1 + pick(9)),
                            390 + pick(99),
                            pick(600),
                            pick(9)};
        },
        [&](PlannedJob& job) { job.workers = 1 + pick(9); });
  }

  AnyEdit crewEdit() {
    return editOf(
        memory().crews,
        [&] {
          return Crew{freshId<CrewId>(), someText(), pick(4), 7.5};
        },
        [&](Crew& crew) {
          crew.hoursPerDay += 0.1;
          crew.skills.push_back("pruning " + std::to_string(pick(9)));
          const Day off = someDay();
          crew.daysOff.push_back({off, plusDays(off, pick(9))});
          crew.youngMinutes = pick(200) - 1;  // less than none is refused
        });
  }

  AnyEdit observationEdit() {
    return editOf(
        memory().observations,
        [&] {
          return Observation{freshId<ObservationId>(),
                             someKey().planting,
                             53,
                             dayOf(2027, 4, 1),
                             someText()};
        },
        [&](Observation& seen) { seen.day = plusDays(seen.day, 1); });
  }

  AnyEdit tickEdit() {
    Tick tick;
    tick.id = freshId<TickId>();
    tick.task = someKey();
    tick.rows = RowSet::range(1, 1 + pick(9));
    tick.percent = pick(101);  // none at all is refused
    tick.by = someText();
    tick.day = dayOf(2027, 4, 1);
    const Tick* other = any(memory().ticks);
    if (other && pick(3) == 0) tick.takesBack = other->id;
    return Edit<Tick>{std::nullopt, tick};
  }

  AnyEdit markEdit() {
    return editOf(
        memory().marks,
        [&] {
          return TaskMark{someKey(), std::nullopt, someText(), "", 0};
        },
        [&](TaskMark& mark) {
          mark.moved = DaySpan{dayOf(2027, 4, 1), plusDays(dayOf(2027, 4, 2), pick(9))};
        });
  }

  AnyEdit settingsEdit() {
    Settings after = memory().settings;
    after.normals.minimum[static_cast<std::size_t>(pick(12))] -= 0.1;
    after.name = someText();
    return Edit<Settings>{memory().settings, after};
  }

  AnyEdit pastStageEdit() {
    return editOf(
        memory().pastStages,
        [&] {
          return PastStage{freshId<PastStageId>(), someText(), 65, dayOf(2019, 5, 2)};
        },
        // A code beyond the scale is refused.
        [&](PastStage& past) { past.bbch = 50 + pick(60); });
  }

  WeatherDay someWeather() {
    WeatherDay day;
    day.source = static_cast<WeatherSource>(pick(3));
    day.minimum = pick(200) * 0.1 - 10;
    if (pick(3) > 0) day.maximum = *day.minimum + pick(100) / 7.0;
    // Less than none is refused.
    if (pick(3) == 0) day.rain = pick(60) - 1;
    return day;
  }

  WeatherMonth someMonth() {
    WeatherMonth month{{2020 + pick(9), 1U + static_cast<unsigned>(pick(12))}, {}};
    month.days[27] = someWeather();
    return month;
  }

  AnyEdit weatherEdit() {
    return editOf(
        memory().weather,
        [&] { return someMonth(); },
        [&](WeatherMonth& month) {
          for (int i = pick(5); i > 0; --i)
            month.days[static_cast<std::size_t>(pick(28))] = someWeather();
          month.days[static_cast<std::size_t>(pick(27))].reset();
          if (pick(4) == 0) month.days[27] = someWeather();
        });
  }

  AnyEdit measurementEdit() {
    return editOf(
        memory().measurements,
        [&] {
          return Measurement{freshId<MeasurementId>(),
                             someKey().planting,
                             Measure::leaderHeight,
                             dayOf(2027, 3, 1),
                             {pick(9), -1},
                             someText(),
                             ""};
        },
        // A measurement of no tree is refused.
        [&](Measurement& sample) { sample.values.resize(random_() % 3); });
  }

  AnyEdit targetEdit() {
    return editOf(
        memory().targets,
        [&] {
          SeasonTarget target;
          target.of = {someKey().planting, {2020 + pick(9)}};
          return target;
        },
        [&](SeasonTarget& target) {
          target.vigour = Vigour::strong;
          target.note = someText();
        });
  }

  AnyEdit programmeEdit() {
    return editOf(
        memory().programmes,
        [&] {
          return OwnProgramme{someText(), someText()};
        },
        [&](OwnProgramme& own) { own.text = someText(); });
  }

  AnyEdit closeEdit() {
    return editOf(
        memory().closes,
        [&] {
          return SeasonClose{{2020 + pick(9)}, dayOf(2027, 12, 3), someText()};
        },
        [&](SeasonClose& close) { close.by = someText(); });
  }

  AnyEdit someEdit() {
    switch (pick(18)) {
      case 0:
        return blockEdit();
      case 1:
        return plantingEdit();
      case 2:
        return crewEdit();
      case 3:
        return observationEdit();
      case 4:
        return markEdit();
      case 5:
        return settingsEdit();
      case 6:
        return pastStageEdit();
      case 7:
        return weatherEdit();
      case 8:
        return measurementEdit();
      case 9:
        return targetEdit();
      case 10:
        return programmeEdit();
      case 11:
        return closeEdit();
      case 12:
        return workDayEdit();
      case 13:
        return turnoutEdit();
      case 14:
        return pinEdit();
      case 15:
        return closureEdit();
      case 16:
        return plannedJobEdit();
      default:
        return tickEdit();
    }
  }

  Change someChange() {
    Change change{Sentence{phrase("Test", "Step %1"), {std::int64_t{taken}}}, {}};
    for (int i = pick(3); i >= 0; --i) change.edits.push_back(someEdit());
    return change;
  }

  std::string path_;
  SqliteOrchardFiles files_;
  OpenedOrchard opened_;
  std::unique_ptr<Workbench> bench_;
  std::mt19937 random_{20270406};
  std::uint64_t ids_ = 0;
};

TEST(RandomWalk, MemoryAndDiskStayTheSameThroughAThousandSteps) {
  const testing::TemporaryFolder folder;
  Walk walk{folder.file("creek.topwire")};
  for (int step = 1; step <= 1000; ++step) {
    walk.step();
    if (step % 20 == 0) {
      ASSERT_EQ(walk.memory(), walk.disk()) << step;
    }
    if (step % 125 == 0) walk.reopen();
    if (::testing::Test::HasFailure()) return;
  }
  EXPECT_EQ(walk.memory(), walk.disk());
  EXPECT_GT(walk.taken, 400);
  EXPECT_GT(walk.refused, 50);
  RecordProperty("taken", walk.taken);
  RecordProperty("refused", walk.refused);
}

}  // namespace
}  // namespace topwire
