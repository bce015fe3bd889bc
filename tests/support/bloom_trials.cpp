#include "tests/support/bloom_trials.h"

#include "core/exchange/delimited_text.h"
#include "core/phenology/stage.h"
#include "core/phenology/weather_forecaster.h"
#include "tests/support/builders.h"
#include "tests/support/weather.h"

#include <algorithm>
#include <cmath>
#include <string_view>

namespace topwire::testing {

namespace {

constexpr int fewestSeasons = 10;

MonthlyNormals meansOf(const std::vector<DatedWeather>& days) {
  MonthlyNormals means;
  std::array<int, 12> count{};
  for (const auto& [day, weather] : days) {
    if (!weather.whole()) continue;
    const std::size_t month = monthOf(day).month - 1;
    means.minimum[month] += *weather.minimum;
    means.maximum[month] += *weather.maximum;
    ++count[month];
  }
  for (std::size_t month = 0; month < 12; ++month) {
    means.minimum[month] /= std::max(1, count[month]);
    means.maximum[month] /= std::max(1, count[month]);
  }
  return means;
}

Day dayIn(int year, int dayOfYear) {
  return plusDays(dayOf(year, 1, 1), dayOfYear - 1);
}

void enter(Orchard& orchard, const std::string& cultivar, Day day) {
  PastStage past;
  past.id = {1, orchard.pastStages.size() + 1};
  past.cultivar = cultivar;
  past.bbch = stages::firstBloom;
  past.day = day;
  orchard.pastStages.emplace(past.id, past);
}

/// What the grower knows in the trial, the bloom to be found left out.
Orchard known(const BloomRecord& record, const BloomTrial& trial, int year) {
  Orchard orchard = record.orchard;
  if (!trial.otherSeasons)
    std::erase_if(orchard.weather,
                  [&](const auto& month) { return month.first.year != year; });
  for (const auto& [cultivar, dates] : record.blooms)
    for (const auto& [past, dayOfYear] : dates)
      if (past != year && trial.hasOwnDates(cultivar))
        enter(orchard, cultivar, dayIn(past, dayOfYear));
  return orchard;
}

BloomScore scoreOf(const BloomRecord& record,
                   const BloomTrial& trial,
                   const std::string& cultivar) {
  const WeatherForecaster forecaster{trialTables()};
  BloomScore score{.cultivar = cultivar};
  double squares = 0;
  for (const auto& [year, dayOfYear] : record.blooms.at(cultivar)) {
    Orchard orchard = known(record, trial, year);
    Planting& planting = orchard.plantings.begin()->second;
    planting.cultivar = cultivar;
    const auto forecast = forecaster.over(orchard, dayOf(year, trial.month, trial.day));
    const StageEstimate bloom =
        *forecast->outlook(planting, Season{year}).find(stages::firstBloom);
    const Day observed = dayIn(year, dayOfYear);
    const double error = daysBetween(observed, bloom.date);
    squares += error * error;
    score.bias += error;
    score.held += DaySpan{bloom.early, bloom.late}.contains(observed) ? 1 : 0;
    ++score.seasons;
  }
  score.rmse = std::sqrt(squares / score.seasons);
  score.bias /= score.seasons;
  return score;
}

}  // namespace

Blooms readBlooms(const std::string& csv) {
  TextLines lines{csv};
  std::vector<std::string_view> row;
  splitFields(lines.next().value_or(""), ',', row);
  const auto column = [&row](const char* name) {
    return static_cast<std::size_t>(std::ranges::find(row, name) - row.begin());
  };
  const auto cultivar = column("cultivar");
  const auto year = column("year");
  const auto day = column("first_bloom_doy");
  Blooms blooms;
  while (const auto line = lines.next()) {
    splitFields(*line, ',', row);
    if (row.size() > std::max({cultivar, year, day}))
      blooms[std::string{row[cultivar]}][parseWhole(row[year]).value()] =
          parseWhole(row[day]).value();
  }
  return blooms;
}

BloomRecord::BloomRecord(Blooms observed, std::vector<DatedWeather> days, double latitude)
    : blooms(std::move(observed)) {
  Settings settings = northernSettings();
  settings.latitude = latitude;
  settings.elevation = settings.stationElevation = Length{};
  settings.normals = meansOf(days);
  orchard = orchardOfOne(settings, dayOf(1900, 4, 1));
  for (const auto& [day, weather] : days) put(orchard, day, weather);
}

/// Days of full bloom against Golden Delicious in the same seasons, Klein-Altendorf,
/// 1958-2020.
const TradeTables& trialTables() {
  static const TradeTables tables = [] {
    TradeTables made = shippedTables();
    const std::pair<const char*, double> offsets[] = {{"Roter Boskoop", -3.2},
                                                      {"Topaz", -2.6},
                                                      {"James Grieve", -1.9},
                                                      {"Berlepsch", -1.5},
                                                      {"Cox Orange", 0.4}};
    for (const auto& [name, days] : offsets) {
      Cultivar cultivar;
      cultivar.name = name;
      cultivar.bloomShiftDays = days;
      cultivar.bloomToHarvestDays = 150;
      made.cultivars.push_back(cultivar);
    }
    return made;
  }();
  return tables;
}

std::vector<BloomScore> scoresOf(const BloomRecord& record, const BloomTrial& trial) {
  std::vector<BloomScore> scores;
  for (const auto& [cultivar, dates] : record.blooms)
    scores.push_back(scoreOf(record, trial, cultivar));
  return scores;
}

BloomScore meanOf(const std::vector<BloomScore>& scores) {
  BloomScore mean{.cultivar = "mean"};
  int cultivars = 0;
  for (const BloomScore& score : scores) {
    if (score.seasons < fewestSeasons) continue;
    mean.rmse += score.rmse;
    mean.bias += score.bias;
    mean.held += score.held;
    mean.seasons += score.seasons;
    ++cultivars;
  }
  mean.rmse /= std::max(1, cultivars);
  mean.bias /= std::max(1, cultivars);
  return mean;
}

}  // namespace topwire::testing
