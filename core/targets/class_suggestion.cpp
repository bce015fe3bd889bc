#include "core/targets/class_suggestion.h"

#include "core/orchard/measure_text.h"
#include "core/orchard/measurements.h"
#include "core/targets/vigour_words.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace topwire {

namespace {

constexpr double farBeyond = 0.5;

/// The days in which a season's growth can be measured as a whole.
DaySpan dormancyAfter(Season season, Hemisphere hemisphere) {
  return {growthEnds(season, hemisphere),
          plusDays(localSeasonDay(season.plus(1), hemisphere, 4, 15), -1)};
}

void judge(GrowthReading& reading, const ShootGrowth& table) {
  reading.wantedFrom = table.targetFrom;
  reading.wantedTo = table.targetTo;
  const double mean = reading.mean.inMetres();
  const double weak = table.weakBelow.inMetres();
  const double strong = table.strongAbove.inMetres();
  if (mean < weak)
    reading.says = Vigour::weak;
  else if (mean > strong)
    reading.says = Vigour::strong;
  else if (table.targetFrom <= reading.mean && reading.mean <= table.targetTo)
    reading.says = Vigour::moderate;
  reading.farOff = mean < weak * (1 - farBeyond) || mean > strong * (1 + farBeyond);
}

std::vector<GrowthReading> readingsOf(const Orchard& orchard,
                                      const TradeTables& tables,
                                      const Planting& planting,
                                      Season season,
                                      Day today) {
  std::vector<GrowthReading> readings;
  const int leaf = leafOf(orchard, planting, season);
  DaySpan days = dormancyAfter(season, orchard.settings.hemisphere());
  days.last = std::min(days.last, today);
  const auto measurements = measurementsOf(orchard, planting.id);
  for (const Measure measure : {Measure::leaderGrowth, Measure::shootGrowth}) {
    const ShootGrowth* table = tables.targets.growth(measure, leaf);
    const auto mean = lastMean(measurements, measure, days);
    if (!table || !mean) continue;
    GrowthReading reading;
    reading.season = season;
    reading.measure = measure;
    reading.mean = Length::micrometres(std::llround(mean->value));
    reading.day = mean->day;
    judge(reading, *table);
    readings.push_back(reading);
  }
  return readings;
}

/// What the measures of one season say together; nothing where they differ.
struct Verdict {
  std::optional<Vigour> says;
  bool farOff = false;
  bool disagree = false;
};

Verdict verdictOf(const std::vector<GrowthReading>& readings) {
  Verdict verdict;
  for (const GrowthReading& reading : readings) {
    if (!reading.says) continue;
    verdict.disagree = verdict.disagree || (verdict.says && verdict.says != reading.says);
    verdict.says = reading.says;
    verdict.farOff = verdict.farOff || reading.farOff;
  }
  if (verdict.disagree) return {std::nullopt, false, true};
  return verdict;
}

int sideOf(std::optional<Vigour> says, Vigour current) {
  if (!says) return 0;
  return (*says > current) - (*says < current);
}

Vigour oneStep(Vigour from, int side) {
  return static_cast<Vigour>(static_cast<int>(from) + side);
}

void decide(ClassSuggestion& suggestion, const Verdict& last, const Verdict& before) {
  using Basis = ClassSuggestion::Basis;
  const int side = sideOf(last.says, suggestion.current);
  if (side == 0) {
    suggestion.basis = last.disagree ? Basis::measuresDisagree : Basis::asItIs;
    return;
  }
  suggestion.basis = Basis::oneWinter;
  if (sideOf(before.says, suggestion.current) == side)
    suggestion.basis = Basis::twoWinters;
  if (last.farOff) suggestion.basis = Basis::farOff;
  if (suggestion.basis != Basis::oneWinter)
    suggestion.suggested = oneStep(suggestion.current, side);
}

Phrase verdictPhrase(ClassSuggestion::Basis basis) {
  using Basis = ClassSuggestion::Basis;
  switch (basis) {
    case Basis::nothingMeasured:
      return phrase("Targets",
                    "No growth of last season was measured in dormancy, so nothing "
                    "speaks for another class than %1. Measure leaders and shoots on ten "
                    "to twenty ordinary trees.");
    case Basis::asItIs:
      return phrase("Targets", "Growth speaks for the class as it is: %1.");
    case Basis::measuresDisagree:
      return phrase("Targets",
                    "Leaders and shoots say different things, so the class stays %1.");
    case Basis::oneWinter:
      return phrase("Targets",
                    "One winter outside the class is not enough to leave %1; a second "
                    "one would be.");
    case Basis::twoWinters:
      return phrase("Targets",
                    "Two winters running say so: from %1 to %2. You have the last word.");
    case Basis::farOff:
      break;
  }
  return phrase("Targets",
                "More than half outside the class: from %1 to %2. You have the last "
                "word.");
}

Sentence sentenceOf(const GrowthReading& reading,
                    Hemisphere hemisphere,
                    UnitSystem units) {
  const auto text = [&](Length length) {
    return measuredText(
        static_cast<double>(length.inMicrometres()), reading.measure, units);
  };
  return {phrase("Targets", "Season %1, %2: %3; a moderate tree makes %4 to %5."),
          {nameOf(reading.season, hemisphere),
           nameOf(reading.measure),
           text(reading.mean),
           text(reading.wantedFrom),
           text(reading.wantedTo)}};
}

}  // namespace

Season grownSeason(Day day, Hemisphere hemisphere) {
  const Season season = seasonOf(day, hemisphere);
  return day < localSeasonDay(season, hemisphere, 4, 15) ? season.plus(-1) : season;
}

ClassSuggestion suggestClass(const Orchard& orchard,
                             const TradeTables& tables,
                             const Planting& planting,
                             Day today) {
  const Hemisphere hemisphere = orchard.settings.hemisphere();
  Season last = grownSeason(today, hemisphere);
  if (today < growthEnds(last, hemisphere)) last = last.plus(-1);
  ClassSuggestion suggestion;
  suggestion.from = last.plus(1);
  const VigourBasis basis = vigourIn(suggestion.from, orchard, tables, planting);
  suggestion.current = suggestion.suggested = basis.vigour;
  const auto readings = [&](Season season) {
    const bool spent = basis.since && season < *basis.since;
    return spent ? std::vector<GrowthReading>{}
                 : readingsOf(orchard, tables, planting, season, today);
  };
  suggestion.readings = readings(last);
  if (suggestion.readings.empty()) return suggestion;
  const auto before = readings(last.plus(-1));
  decide(suggestion, verdictOf(suggestion.readings), verdictOf(before));
  suggestion.readings.insert(suggestion.readings.end(), before.begin(), before.end());
  return suggestion;
}

std::vector<Sentence> reasonsOf(const ClassSuggestion& suggestion,
                                Hemisphere hemisphere,
                                UnitSystem units) {
  std::vector<Sentence> told;
  for (const GrowthReading& reading : suggestion.readings)
    told.push_back(sentenceOf(reading, hemisphere, units));
  told.emplace_back(
      verdictPhrase(suggestion.basis),
      std::vector<Value>{wordsOf(suggestion.current), wordsOf(suggestion.suggested)});
  return told;
}

}  // namespace topwire
