#pragma once

#include "app/paper/heat_chart.h"
#include "core/phenology/stage.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace topwire::testing {

/// An invented spring: heat that gathers as it does where January is near freezing.
inline double inventedSum(int daysIn) {
  double sum = 0;
  for (int day = 0; day <= daysIn; ++day) {
    const double mean = 9.5 - 10.5 * std::cos(2 * std::numbers::pi * (day - 16) / 365);
    sum += std::max(0.0, mean - 4) + 0.2;
  }
  return sum;
}

/// A season of 200 days from `first`: measured to the day before `today`, then `forecast`
/// days ahead, then as it usually is. Nothing but the latter where today is before it.
inline SeasonHeat inventedHeat(Day first,
                               Day today,
                               int forecast = 7,
                               int pastYears = 12) {
  constexpr int length = 200;
  SeasonHeat heat;
  heat.measure = HeatMeasure::degreeDays;
  heat.pastYears = pastYears;
  const int measured = std::max(0, daysBetween(first, today));
  for (int day = 0; day < length; ++day) {
    const double sum = inventedSum(day);
    const HeatSample sample{plusDays(first, day), sum};
    if (day < measured) heat.measured.push_back(sample);
    if (measured > 0 && day >= measured - 1 && day < measured + forecast)
      heat.forecast.push_back(sample);
    if (measured == 0 || day >= measured + forecast - 1) heat.likely.push_back(sample);
    const double usual = 0.93 * sum;
    const double spread = 0.12 + 0.5 * std::exp(-day / 60.0);
    heat.past.push_back({sample.day,
                         usual * (1 - 1.3 * spread),
                         usual * (1 - 0.6 * spread),
                         usual,
                         usual * (1 + 0.6 * spread),
                         usual * (1 + 1.3 * spread)});
  }
  if (measured == 0) return heat;
  heat.today = heat.measured.back().sum;
  heat.daysAhead = 4;
  heat.measuredTo = heat.measured.back().day;
  return heat;
}

/// Ten stages of an invented planting, the likeliest days counted from `first`; seen
/// where they lie before `today`.
inline std::vector<HeatStage> inventedStages(Day first, Day today, Language language) {
  struct Row {
    int bbch;
    int day;
    int early;
    int late;
    bool lesser;
  };

  static constexpr Row rows[] = {{51, 78, 70, 86, true},
                                 {52, 88, 83, 93, false},
                                 {53, 96, 94, 99, false},
                                 {54, 104, 101, 108, false},
                                 {55, 111, 107, 116, false},
                                 {57, 118, 113, 123, false},
                                 {59, 122, 117, 128, true},
                                 {60, 125, 120, 131, true},
                                 {65, 130, 124, 136, false},
                                 {69, 137, 131, 145, false}};
  std::vector<HeatStage> stages;
  for (const Row& row : rows) {
    HeatStage stage;
    stage.bbch = row.bbch;
    stage.name = QString::fromStdString(stageByCode(row.bbch)->name.in(language));
    stage.date = plusDays(first, row.day);
    stage.seen = stage.date < today;
    stage.span = stage.seen
                     ? DaySpan{stage.date, stage.date}
                     : DaySpan{plusDays(first, row.early), plusDays(first, row.late)};
    stage.lesser = row.lesser;
    stages.push_back(stage);
  }
  return stages;
}

inline HeatScene inventedScene(Day first,
                               Day today,
                               Language language = Language::english) {
  HeatScene scene;
  scene.heat = inventedHeat(first, today);
  scene.today = today;
  scene.stages = inventedStages(first, today, language);
  scene.days = daysOfChart({first, plusDays(first, 364)}, scene.stages, today);
  return scene;
}

}  // namespace topwire::testing
