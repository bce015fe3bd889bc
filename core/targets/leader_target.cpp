#include "core/targets/leader_target.h"

#include "core/orchard/measure_text.h"
#include "core/orchard/measurements.h"
#include "core/phenology/stage.h"
#include "core/targets/tree_figures.h"

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

/// From the fourth leaf on the leader keeps the height the block is to have.
constexpr int firstMatureLeaf = 4;
/// Sample trees of one row differ by more than this.
constexpr double asWantedWithin = 0.05;

struct Wanted {
  Length height;
  LeaderCourse::Aim aim = LeaderCourse::Aim::byTable;
  std::string source;
};

std::optional<Wanted> wantedAtEnd(const Orchard& orchard,
                                  const TradeTables& tables,
                                  const Planting& planting,
                                  Season season) {
  using Aim = LeaderCourse::Aim;
  const int leaf = leafOf(orchard, planting, season);
  const Vigour vigour = vigourIn(season, orchard, tables, planting).vigour;
  const LeaderHeight* row = tables.targets.leaderHeight(leaf, vigour);
  if (row == nullptr) return std::nullopt;
  const Block& block = blockOf(orchard, planting);
  if (leaf >= firstMatureLeaf && block.rowSpacing > Length{})
    return Wanted{matureHeight(block.rowSpacing).from, Aim::matureHeight, row->source};
  if (row->topWire) return Wanted{topWireOf(block), Aim::topWire, row->source};
  return Wanted{row->height, Aim::byTable, row->source};
}

std::string inUnits(Length height, UnitSystem units) {
  return measuredText(
      static_cast<double>(height.inMicrometres()), Measure::leaderHeight, units);
}

Phrase aimPhrase(LeaderCourse::Aim aim) {
  switch (aim) {
    case LeaderCourse::Aim::topWire:
      return phrase("Targets",
                    "The leader should be at the top wire, %1, by %2, when shoots set "
                    "their buds.");
    case LeaderCourse::Aim::matureHeight:
      return phrase("Targets",
                    "The leader keeps the height the block is to have, %1: nine tenths "
                    "of the row spacing, so that no row shades the next.");
    case LeaderCourse::Aim::byTable:
      break;
  }
  return phrase("Targets",
                "The leader should be at %1 by %2, when shoots set their buds.");
}

}  // namespace

Length LeaderCourse::wantedOn(Day day) const {
  const double days = std::max(1, daysBetween(growth.first, growth.last));
  const double share = std::clamp(daysBetween(growth.first, day) / days, 0.0, 1.0);
  const auto rise = static_cast<double>((end - start).inMicrometres());
  return start + Length::micrometres(std::llround(share * rise));
}

DaySpan growthDays(const Outlook& outlook, Season season, Hemisphere hemisphere) {
  const StageEstimate* bloom = outlook.find(stages::fullBloom);
  const StageEstimate* bud = outlook.find(stages::terminalBud);
  if (bloom && bud && bloom->date < bud->date) return {bloom->date, bud->date};
  return {localSeasonDay(season, hemisphere, 5, 1),
          localSeasonDay(season, hemisphere, 8, 15)};
}

std::optional<LeaderCourse> leaderCourse(const Orchard& orchard,
                                         const TradeTables& tables,
                                         StageForecast& forecast,
                                         const Planting& planting,
                                         Season season) {
  LeaderCourse course;
  course.season = season;
  course.leaf = leafOf(orchard, planting, season);
  if (course.leaf < 1) return std::nullopt;
  const auto start = wantedAtEnd(orchard, tables, planting, season.plus(-1));
  const auto end = wantedAtEnd(orchard, tables, planting, season);
  if (!start || !end) return std::nullopt;
  course.start = start->height;
  course.end = end->height;
  course.aim = end->aim;
  course.source = end->source;
  course.growth = growthDays(
      forecast.outlook(planting, season), season, orchard.settings.hemisphere());
  return course;
}

std::optional<LeaderStanding> leaderStanding(const Orchard& orchard,
                                             const TradeTables& tables,
                                             StageForecast& forecast,
                                             const Planting& planting,
                                             Day upTo) {
  const auto mean = lastMean(
      measurementsOf(orchard, planting.id), Measure::leaderHeight, {Day::min(), upTo});
  if (!mean) return std::nullopt;
  const Season season = seasonOf(mean->day, orchard.settings.hemisphere());
  const auto course = leaderCourse(orchard, tables, forecast, planting, season);
  if (!course) return std::nullopt;
  LeaderStanding standing;
  standing.measured = Length::micrometres(std::llround(mean->value));
  standing.day = mean->day;
  standing.wanted = course->wantedOn(mean->day);
  const double share = standing.measured.inMetres() / standing.wanted.inMetres();
  if (share < 1 - asWantedWithin) standing.standing = Standing::behind;
  if (share > 1 + asWantedWithin) standing.standing = Standing::ahead;
  return standing;
}

std::vector<Sentence> reasonsOf(const LeaderCourse& course, Day today, UnitSystem units) {
  std::vector<Sentence> told;
  told.emplace_back(aimPhrase(course.aim),
                    std::vector<Value>{inUnits(course.end, units), course.growth.last});
  if (course.start < course.end)
    told.emplace_back(
        phrase("Targets",
               "From %1 on %2 it rises evenly with the days, which makes %3 on %4."),
        std::vector<Value>{inUnits(course.start, units),
                           course.growth.first,
                           inUnits(course.wantedOn(today), units),
                           today});
  told.emplace_back(phrase("Targets", "Source: %1"), std::vector<Value>{course.source});
  return told;
}

Sentence sentenceOf(const LeaderStanding& standing, UnitSystem units) {
  const std::vector<Value> values{
      inUnits(standing.measured, units), standing.day, inUnits(standing.wanted, units)};
  switch (standing.standing) {
    case Standing::behind:
      return {phrase("Targets", "Measured %1 on %2, behind the %3 wanted then."), values};
    case Standing::ahead:
      return {phrase("Targets", "Measured %1 on %2, ahead of the %3 wanted then."),
              values};
    case Standing::asWanted:
      break;
  }
  return {phrase("Targets", "Measured %1 on %2, as wanted then (%3)."), values};
}

}  // namespace topwire
