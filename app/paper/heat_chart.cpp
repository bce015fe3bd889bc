#include "app/paper/heat_chart.h"

#include <QStringList>

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace topwire {

namespace {

constexpr int daysPastLast = 16;
constexpr int daysPastToday = 7;

Day dayOf(const HeatSample& sample) {
  return sample.day;
}

/// Between the samples on either side; nothing outside of them.
std::optional<double> sumIn(const std::vector<HeatSample>& samples, Day day) {
  if (samples.empty() || day < samples.front().day || samples.back().day < day)
    return std::nullopt;
  const auto after = std::ranges::lower_bound(samples, day, {}, dayOf);
  if (after->day == day) return after->sum;
  const auto before = std::prev(after);
  const double part = static_cast<double>(daysBetween(before->day, day))
                      / daysBetween(before->day, after->day);
  return before->sum + (after->sum - before->sum) * part;
}

std::optional<HeatBand> bandOn(const SeasonHeat& heat, Day day) {
  const auto found = std::ranges::lower_bound(heat.past, day, {}, &HeatBand::day);
  if (found == heat.past.end() || found->day != day) return std::nullopt;
  return *found;
}

std::string figureText(double sum, const Voice& voice) {
  return voice.count(std::llround(sum)).toStdString();
}

QString bandText(const SeasonHeat& heat, const Voice& voice) {
  if (heat.pastYears == 0)
    return voice.say(Sentence{
        phrase("HeatChart", "The band is of an average year, from monthly averages.")});
  return voice.say(Sentence{counted(heat.pastYears,
                                    phrase("HeatChart", "The band is of %1 past year."),
                                    phrase("HeatChart", "The band is of %1 past years.")),
                            {std::int64_t{heat.pastYears}}});
}

QString stageText(const HeatStage& stage, const Voice& voice) {
  const std::string name = stage.name.toStdString();
  const std::string day = voice.dayOfYear(stage.date).toStdString();
  if (stage.seen)
    return voice.say(Sentence{phrase("HeatChart", "%1: seen on %2."), {name, day}});
  return voice.say(
      Sentence{phrase("HeatChart", "%1: expected on %2, eight years in ten %3."),
               {name, day, voice.span(stage.span).toStdString()}});
}

}  // namespace

DaySpan daysOfChart(DaySpan season, const std::vector<HeatStage>& stages, Day today) {
  Day last = plusDays(season.first, daysPastLast);
  for (const HeatStage& stage : stages)
    last = std::max({last, stage.span.last, plusDays(stage.date, daysPastLast)});
  if (season.contains(today)) last = std::max(last, plusDays(today, daysPastToday));
  return {season.first, std::min(last, season.last)};
}

std::optional<HeatReading> readHeat(const SeasonHeat& heat, Day day) {
  const std::array sources{std::pair{HeatSource::measured, &heat.measured},
                           std::pair{HeatSource::forecast, &heat.forecast},
                           std::pair{HeatSource::likely, &heat.likely}};
  for (const auto& [source, samples] : sources)
    if (const auto sum = sumIn(*samples, day))
      return HeatReading{source, *sum, bandOn(heat, day)};
  return std::nullopt;
}

double HeatChart::x(Day day) const {
  const int last = std::max(1, days.length() - 1);
  return plot.left() + plot.width() * daysBetween(days.first, day) / last;
}

double HeatChart::y(double sum) const {
  return plot.bottom() - plot.height() * sum / top;
}

Day HeatChart::dayAt(double x) const {
  const int last = days.length() - 1;
  const double part = plot.width() > 0 ? (x - plot.left()) / plot.width() : 0;
  return plusDays(days.first,
                  static_cast<int>(std::lround(std::clamp(part, 0.0, 1.0) * last)));
}

Words nameOf(HeatMeasure measure) {
  if (measure == HeatMeasure::heatUnits) return {"heat units", "unidades de calor"};
  return {"degree days", "grados día"};
}

QString toTheMiddleText(const SeasonHeat& heat, const Voice& voice) {
  const std::int64_t days = std::abs(heat.daysAhead);
  if (days == 0)
    return voice.say(Sentence{heat.pastYears == 0
                                  ? phrase("HeatChart", "level with an average year")
                                  : phrase("HeatChart", "level with the middle year")});
  const bool ahead = heat.daysAhead > 0;
  const Phrase one = heat.pastYears == 0
                         ? (ahead ? phrase("HeatChart", "%1 day ahead of an average year")
                                  : phrase("HeatChart", "%1 day behind an average year"))
                         : (ahead ? phrase("HeatChart", "%1 day ahead of the middle year")
                                  : phrase("HeatChart", "%1 day behind the middle year"));
  const Phrase many =
      heat.pastYears == 0
          ? (ahead ? phrase("HeatChart", "%1 days ahead of an average year")
                   : phrase("HeatChart", "%1 days behind an average year"))
          : (ahead ? phrase("HeatChart", "%1 days ahead of the middle year")
                   : phrase("HeatChart", "%1 days behind the middle year"));
  return voice.say(Sentence{counted(days, one, many), {days}});
}

QString describe(const HeatScene& scene, const Voice& voice) {
  QStringList lines;
  if (hasWeather(scene.heat)) {
    lines << voice.say(Sentence{phrase("HeatChart", "%1 %2 so far, %3."),
                                {figureText(scene.heat.today, voice),
                                 nameOf(scene.heat.measure),
                                 toTheMiddleText(scene.heat, voice).toStdString()}});
  } else {
    lines << voice.say(
        Sentence{phrase("HeatChart", "No weather yet: the line is an average year.")});
  }
  lines << bandText(scene.heat, voice);
  for (const HeatStage& stage : scene.stages) lines << stageText(stage, voice);
  return lines.join(QLatin1Char(' '));
}

}  // namespace topwire
