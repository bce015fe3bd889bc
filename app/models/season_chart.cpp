#include "app/models/season_chart.h"

#include "core/units/conversions.h"

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

SeasonHeat inFahrenheit(SeasonHeat heat) {
  for (auto* samples : {&heat.measured, &heat.forecast, &heat.likely})
    for (HeatSample& sample : *samples) sample.sum *= fahrenheitPerCelsius;
  for (HeatBand& band : heat.past)
    for (double* sum :
         {&band.low, &band.lowerQuarter, &band.middle, &band.upperQuarter, &band.high})
      *sum *= fahrenheitPerCelsius;
  heat.today *= fahrenheitPerCelsius;
  return heat;
}

/// Those whose dates follow the heat; what comes later stands in the list alone.
bool isOnChart(const StageEstimate& stage) {
  return stage.bbch <= stages::petalFall;
}

bool isLesser(int bbch) {
  return bbch == stages::budSwell || bbch == stages::fullPink
         || bbch == stages::firstBloom;
}

HeatStage heatStage(const StageEstimate& estimate) {
  HeatStage stage;
  stage.bbch = estimate.bbch;
  stage.name = say(stageByCode(estimate.bbch)->name);
  stage.date = estimate.date;
  stage.span = {estimate.early, estimate.late};
  stage.seen = estimate.kind == StageKind::observed;
  stage.lesser = isLesser(estimate.bbch);
  return stage;
}

/// When this cultivar reached the stage in the season before, as far as anyone noted.
std::optional<Day> lastSeason(const Session& session,
                              const Planting& planting,
                              int bbch) {
  const Orchard& orchard = session.orchard();
  const Hemisphere hemisphere = orchard.settings.hemisphere();
  const Season before = session.season().plus(-1);
  for (const auto& [id, seen] : orchard.observations)
    if (seen.planting == planting.id && seen.bbch == bbch
        && seasonOf(seen.day, hemisphere) == before)
      return seen.day;
  for (const auto& [id, past] : orchard.pastStages)
    if (past.cultivar == planting.cultivar && past.bbch == bbch
        && seasonOf(past.day, hemisphere) == before)
      return past.day;
  return std::nullopt;
}

QString againstLastSeason(const Session& session,
                          const Planting& planting,
                          const StageEstimate& stage) {
  const auto before = lastSeason(session, planting, stage.bbch);
  if (!before) return {};
  const Hemisphere hemisphere = session.orchard().settings.hemisphere();
  const Season season = session.season();
  const int later = daysBetween(firstDayOf(season, hemisphere), stage.date)
                    - daysBetween(firstDayOf(season.plus(-1), hemisphere), *before);
  const std::string name = nameOf(season.plus(-1), hemisphere);
  const std::int64_t days = std::abs(later);
  if (days == 0) return say(Sentence{phrase("Weather", "as in %1"), {name}});
  const Phrase words = later < 0
                           ? counted(days,
                                     phrase("Weather", "%1 day earlier than in %2"),
                                     phrase("Weather", "%1 days earlier than in %2"))
                           : counted(days,
                                     phrase("Weather", "%1 day later than in %2"),
                                     phrase("Weather", "%1 days later than in %2"));
  return say(Sentence{words, {days, name}});
}

QString expectationText(const StageEstimate& stage, const HeatScene& scene) {
  if (stage.kind == StageKind::byOffset)
    return say(Sentence{phrase("Weather", "by days from bloom")});
  const std::string span =
      voiceIn(language()).span({stage.early, stage.late}).toStdString();
  const auto reading = readHeat(scene.heat, stage.date);
  if (!reading) return QString::fromStdString(span);
  return say(Sentence{phrase("Weather", "%1, at %2"),
                      {span, std::int64_t{std::llround(reading->sum)}}});
}

QString heightText(const Settings& settings) {
  const Length height = settings.stationElevation;
  const bool metric = settings.units == UnitSystem::metric;
  const auto whole = std::llround(metric ? height.inMetres() : height.inFeet());
  return say(Sentence{metric ? phrase("Length", "%1 m") : phrase("Length", "%1 ft"),
                      {std::int64_t{whole}}});
}

QString stationText(const Settings& settings) {
  const std::string height = heightText(settings).toStdString();
  if (settings.station.empty()) return QString::fromStdString(height);
  return say(Sentence{phrase("Weather", "station %1, %2"), {settings.station, height}});
}

}  // namespace

HeatScene heatScene(const Session& session,
                    const Planting& planting,
                    HeatMeasure measure) {
  const Orchard& orchard = session.orchard();
  const Hemisphere hemisphere = orchard.settings.hemisphere();
  const Season season = session.season();
  HeatScene scene;
  scene.heat = seasonHeat(orchard, planting, season, session.today(), measure);
  if (measure == HeatMeasure::degreeDays && orchard.settings.units != UnitSystem::metric)
    scene.heat = inFahrenheit(std::move(scene.heat));
  scene.today = session.today();
  for (const StageEstimate& stage : session.outlooks().at(planting.id).stages)
    if (isOnChart(stage) && stageByCode(stage.bbch) != nullptr)
      scene.stages.push_back(heatStage(stage));
  scene.days =
      daysOfChart({firstDayOf(season, hemisphere), lastDayOf(season, hemisphere)},
                  scene.stages,
                  scene.today);
  return scene;
}

std::vector<StageLine> stageLines(const Session& session,
                                  const Planting& planting,
                                  const HeatScene& scene) {
  std::vector<StageLine> lines;
  for (const StageEstimate& stage : session.outlooks().at(planting.id).stages) {
    const Stage* known = stageByCode(stage.bbch);
    if (known == nullptr) continue;
    StageLine line;
    line.bbch = stage.bbch;
    line.name = say(known->name);
    line.seen = stage.kind == StageKind::observed;
    line.date = stage.date;
    line.when = line.seen ? say(Sentence{phrase("Weather", "seen %1"),
                                         {shortDayText(stage.date).toStdString()}})
                          : shortDayText(stage.date);
    line.details = line.seen ? againstLastSeason(session, planting, stage)
                             : expectationText(stage, scene);
    lines.push_back(std::move(line));
  }
  return lines;
}

std::optional<int> nextStage(const std::vector<StageLine>& lines, Day today) {
  // One overlooked among seen ones is past; what comes next follows the last seen.
  const auto seen = std::find_if(
      lines.rbegin(), lines.rend(), [](const StageLine& line) { return line.seen; });
  const auto next =
      std::min_element(seen.base(), lines.end(), [&](const auto& one, const auto& other) {
        return std::abs(daysBetween(today, one.date))
               < std::abs(daysBetween(today, other.date));
      });
  if (next == lines.end()) return std::nullopt;
  return next->bbch;
}

QString plantingName(const Orchard& orchard, const Planting& planting) {
  return QStringLiteral("%1: %2").arg(
      QString::fromStdString(blockOf(orchard, planting).name),
      QString::fromStdString(planting.cultivar));
}

QString measureText(const Orchard& orchard, HeatMeasure measure) {
  const Settings& settings = orchard.settings;
  const std::string station = stationText(settings).toStdString();
  if (measure == HeatMeasure::heatUnits)
    return say(Sentence{phrase("Weather", "Heat units, which the dates come from; %1"),
                        {station}});
  const bool metric = settings.units == UnitSystem::metric;
  const double base = metric ? baseOf(measure) : toFahrenheit(baseOf(measure));
  return say(Sentence{metric ? phrase("Weather", "Degree days above %1 °C; %2")
                             : phrase("Weather", "Degree days above %1 °F; %2"),
                      {Figure{base, metric ? 1 : 0}, station}});
}

QString coverageText(const SeasonHeat& heat) {
  QStringList parts;
  if (!heat.measuredTo) {
    parts << say(Sentence{phrase("Weather", "No measured days this season.")});
  } else {
    const std::int64_t missing = heat.missingDays;
    const Phrase words =
        missing == 0 ? phrase("Weather", "Measured to %2, no days missing.")
                     : counted(missing,
                               phrase("Weather", "Measured to %2, %1 day missing."),
                               phrase("Weather", "Measured to %2, %1 days missing."));
    parts << say(
        Sentence{words, {missing, shortDayText(*heat.measuredTo).toStdString()}});
  }
  if (heat.forecast.size() > 1)
    parts << say(Sentence{phrase("Weather", "Forecast to %1."),
                          {shortDayText(heat.forecast.back().day).toStdString()}});
  return parts.join(QLatin1Char(' '));
}

}  // namespace topwire
