#include "core/planning/day_cautions.h"

#include "core/units/conversions.h"
#include "core/weather/site_correction.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace topwire {

namespace {

/// Rain that wets open flowers enough for fire blight: 0.2 to 0.25 mm on the day or 2.5
/// mm the day before (Steiner 1990, as told by Biggs and Turechek, Plant Health Progress
/// 2010).
constexpr double wettingRain = 0.2;
constexpr double soakingRain = 2.5;

/// The day's mean, 60 F, in the same published set of conditions. Blossoms, warmth summed
/// since bloom and the rest of it are left out: no risk is worked out here.
constexpr double blightMean = 15.6;

/// No published figure was found. Nova Scotia's growers are told (January 2023) to pause
/// pruning before swings of about 20 degrees to near -20; the rest is ours.
constexpr double hardColdAt = -18;
constexpr double sharpDrop = 20;
constexpr double sharpDropTo = -12;
constexpr int daysAfterCuts = 3;

/// 90 and 100 F, from which Washington State asks for longer rests in outdoor work (WAC
/// 296-62-09547).
constexpr double hotAt = toCelsius(90);
constexpr double veryHotAt = toCelsius(100);

/// Above the temperature that kills one bud in ten: thermometers and sites differ by as
/// much. Ours.
constexpr double nearFrost = 1;

/// Small fruit is taken to stand as much cold as at petal fall until the June drop, where
/// the published table ends. Ours.
constexpr int frostEnds = stages::juneDrop;

/// Cuts catch canker most easily at leaf fall and on young trees (New Zealand and East
/// Malling work; the days and the leaf are ours).
constexpr int daysAfterLeafFall = 30;
constexpr int lastYoungLeaf = 3;

/// Records come in tenths of a degree, published limits in whole degrees Fahrenheit.
constexpr double rounding = 0.05;

bool atOrBelow(double value, double limit) {
  return value <= limit + rounding;
}

bool atOrAbove(double value, double limit) {
  return value >= limit - rounding;
}

/// The station's record as it holds at one planting.
class WeatherThere {
public:
  WeatherThere(const Orchard& orchard, const Planting& planting)
      : orchard_(&orchard), correction_(correctionOf(orchard, planting)) {}

  std::optional<WeatherDay> on(Day day) const {
    const WeatherDay* atStation = weatherOn(*orchard_, day);
    if (atStation == nullptr) return std::nullopt;
    return correction_.at(*atStation);
  }

private:
  const Orchard* orchard_;
  SiteCorrection correction_;
};

/// What fell, where it was not snow: that is dry to work in.
double rainOf(const std::optional<WeatherDay>& weather) {
  if (!weather || (weather->maximum && *weather->maximum <= 0)) return 0;
  return weather->rain.value_or(0);
}

bool isWet(const std::optional<WeatherDay>& weather) {
  return rainOf(weather) >= wettingRain;
}

/// How figures are written in the orchard's units, rounded so that what reads the same is
/// the same.
class Figures {
public:
  explicit Figures(UnitSystem units) : metric_(units == UnitSystem::metric) {}

  Value degrees(double celsius) const {
    return metric_ ? rounded(celsius, 1) : rounded(toFahrenheit(celsius), 0);
  }

  Value degreeUnit() const { return std::string{metric_ ? "°C" : "°F"}; }

  Value rain(double millimetres) const {
    return metric_ ? rounded(millimetres, 1)
                   : rounded(millimetres / millimetresPerInch, 2);
  }

  Value rainUnit() const { return std::string{metric_ ? "mm" : "in"}; }

private:
  static Figure rounded(double value, int decimals) {
    const double steps = std::pow(10, decimals);
    return {std::round(value * steps) / steps + 0.0, decimals};
  }

  bool metric_;
};

class CautionMaker {
public:
  CautionMaker(const Orchard& orchard,
               const TradeTables& tables,
               const Planting& planting,
               const Outlook& outlook,
               Day day)
      : tables_(&tables)
      , outlook_(&outlook)
      , weather_(orchard, planting)
      , say_(orchard.settings.units)
      , day_(day)
      , today_(weather_.on(day))
      , standing_(planting.planted <= day)
      , young_(leafOf(orchard, planting, seasonOf(day, orchard.settings.hemisphere()))
               <= lastYoungLeaf) {}

  std::vector<DayCaution> made() && {
    if (standing_) {
      if (!lookForFrost()) lookForFreezing();
      lookForHardCold();
      lookForBlightWeather();
    }
    if (isWet(today_))
      lookForRain();
    else if (standing_)
      lookForDampness();
    lookForHeat();
    std::ranges::stable_sort(made_, std::greater{}, &DayCaution::severity);
    return std::move(made_);
  }

private:
  void add(CautionKind kind,
           Severity severity,
           WeatherSource source,
           double extent,
           Sentence sentence,
           Sentence advice) {
    made_.push_back(
        {day_, kind, severity, source, extent, std::move(sentence), std::move(advice)});
  }

  /// Reached by the end of `day_`, counted from `days` after it.
  bool isPast(int bbch, int days = 0) const {
    const StageEstimate* stage = outlook_->find(bbch);
    return stage != nullptr && plusDays(stage->date, days) <= day_;
  }

  bool isGrowing() const { return isPast(stages::greenTip) && !isPast(stages::leafFall); }

  const FrostKill* killNow() const {
    if (isPast(frostEnds)) return nullptr;
    const FrostKill* kill = nullptr;
    for (const FrostKill& row : tables_->frostKills)
      if (isPast(row.bbch) && (kill == nullptr || row.bbch > kill->bbch)) kill = &row;
    return kill;
  }

  bool lookForFrost() {
    const FrostKill* kill = killNow();
    if (kill == nullptr || !today_ || !today_->minimum) return false;
    const double minimum = *today_->minimum;
    const auto tell = [&](Severity severity, Phrase what, Phrase advice) {
      add(CautionKind::frost,
          severity,
          today_->source,
          -minimum,
          {what,
           {say_.degrees(minimum), say_.degreeUnit(), stageByCode(kill->bbch)->name}},
          {advice,
           {say_.degrees(kill->oneInTen),
            say_.degrees(kill->nineInTen),
            say_.degreeUnit()}});
      return true;
    };
    const Phrase both = phrase(
        "Caution", "About one flower bud in ten dies at %1 %3, nine in ten at %2 %3.");
    if (atOrBelow(minimum, kill->nineInTen))
      return tell(Severity::grave,
                  phrase("Caution", "Killing frost, down to %1 %2 at %3."),
                  both);
    if (atOrBelow(minimum, kill->oneInTen))
      return tell(
          Severity::serious, phrase("Caution", "Frost, down to %1 %2 at %3."), both);
    if (atOrBelow(minimum, kill->oneInTen + nearFrost))
      return tell(Severity::low,
                  phrase("Caution", "Close to harmful frost, down to %1 %2 at %3."),
                  both);
    return false;
  }

  void lookForFreezing() {
    if (!today_ || !today_->minimum || !atOrBelow(*today_->minimum, 0)) return;
    if (!isPast(stages::silverTip) || isPast(stages::leafFall)) return;
    add(CautionKind::freezing,
        Severity::low,
        today_->source,
        -*today_->minimum,
        {phrase("Caution", "Frosty morning, down to %1 %2."),
         {say_.degrees(*today_->minimum), say_.degreeUnit()}},
        phrase("Caution", "Buds and young wood are brittle until it has thawed."));
  }

  /// Cold on the days after, or a sharp drop to it from the warmest of the days before.
  void lookForHardCold() {
    if (isGrowing()) return;
    std::optional<double> warmest;
    WeatherSource source = WeatherSource::measured;
    for (int after = 0; after <= daysAfterCuts; ++after) {
      const Day day = plusDays(day_, after);
      const auto weather = weather_.on(day);
      if (!weather) continue;
      source = std::min(source, weather->source);
      if (weather->minimum && atOrBelow(*weather->minimum, hardColdAt))
        return tellHardCold(day, *weather->minimum, source);
      if (weather->minimum && warmest && atOrBelow(*weather->minimum, sharpDropTo)
          && atOrAbove(*warmest - *weather->minimum, sharpDrop))
        return tellSharpDrop(day, *warmest, *weather->minimum, source);
      if (weather->maximum)
        warmest = std::max(warmest.value_or(*weather->maximum), *weather->maximum);
    }
  }

  void tellHardCold(Day day, double minimum, WeatherSource source) {
    addHardCold(minimum,
                source,
                {phrase("Caution", "Hard cold, down to %1 %2 on %3."),
                 {say_.degrees(minimum), say_.degreeUnit(), day}});
  }

  void tellSharpDrop(Day day, double from, double to, WeatherSource source) {
    addHardCold(to,
                source,
                {phrase("Caution", "Sharp drop, from %1 to %2 %3 by %4."),
                 {say_.degrees(from), say_.degrees(to), say_.degreeUnit(), day}});
  }

  void addHardCold(double minimum, WeatherSource source, Sentence sentence) {
    add(CautionKind::hardCold,
        Severity::serious,
        source,
        -minimum,
        std::move(sentence),
        phrase("Caution",
               "Leave pruning cuts until it has passed, and take the youngest trees "
               "last."));
  }

  /// The coming 48 hours: this day and the next.
  void lookForBlightWeather() {
    if (!isGrowing()) return;
    double sum = 0;
    double rain = 0;
    int days = 0;
    WeatherSource source = WeatherSource::measured;
    for (int after = 0; after <= 1; ++after) {
      const auto weather = weather_.on(plusDays(day_, after));
      if (!weather) continue;
      source = std::min(source, weather->source);
      rain += rainOf(weather);
      if (!weather->whole()) continue;
      sum += (*weather->minimum + *weather->maximum) / 2;
      ++days;
    }
    if (days == 0 || rain < wettingRain || !atOrAbove(sum / days, blightMean)) return;
    add(CautionKind::blightWeather,
        Severity::serious,
        source,
        sum / days,
        {phrase("Caution",
                "Warm and wet on this day and the next, %1 %2 on average, rain %3 %4."),
         {say_.degrees(sum / days), say_.degreeUnit(), say_.rain(rain), say_.rainUnit()}},
        phrase("Caution",
               "Leave cuts for dry weather: fire blight enters fresh wounds. This is no "
               "measure of risk."));
  }

  void lookForRain() {
    add(CautionKind::wet,
        Severity::low,
        today_->source,
        rainOf(today_),
        {phrase("Caution", "Rain, %1 %2."), {say_.rain(rainOf(today_)), say_.rainUnit()}},
        phrase("Caution", "Disease spreads in wet trees, and rungs slip."));
  }

  void lookForDampness() {
    const bool open =
        isPast(stages::greenTip) && !isPast(stages::leafFall, daysAfterLeafFall);
    if (!open && !young_) return;
    const auto tell = [&](const WeatherDay& weather, Phrase what, Phrase advice) {
      add(CautionKind::damp,
          Severity::low,
          weather.source,
          *weather.rain,
          {what, {say_.rain(*weather.rain), say_.rainUnit()}},
          advice);
    };
    const auto before = weather_.on(plusDays(day_, -1));
    const auto after = weather_.on(plusDays(day_, 1));
    if (rainOf(before) >= soakingRain)
      tell(*before,
           phrase("Caution", "Rain the day before, %1 %2."),
           phrase("Caution", "Begin no cuts until the trees are dry."));
    else if (isWet(after))
      tell(*after,
           phrase("Caution", "Rain the day after, %1 %2."),
           phrase("Caution", "Fresh cuts want a second dry day."));
  }

  void lookForHeat() {
    if (!today_ || !today_->maximum || !atOrAbove(*today_->maximum, hotAt)) return;
    const bool very = atOrAbove(*today_->maximum, veryHotAt);
    add(CautionKind::heat,
        very ? Severity::serious : Severity::low,
        today_->source,
        *today_->maximum,
        {very ? phrase("Caution", "Very hot, up to %1 %2.")
              : phrase("Caution", "Hot, up to %1 %2."),
         {say_.degrees(*today_->maximum), say_.degreeUnit()}},
        very ? phrase("Caution",
                      "Water, shade and a rest every hour: people fall ill, and bared "
                      "fruit burns.")
             : phrase("Caution", "Water, shade and rest; heavy work early in the day."));
  }

  const TradeTables* tables_;
  const Outlook* outlook_;
  WeatherThere weather_;
  Figures say_;
  Day day_;
  std::optional<WeatherDay> today_;
  bool standing_;
  bool young_;
  std::vector<DayCaution> made_;
};

}  // namespace

bool isWetDay(const WeatherDay& weather) {
  return isWet(weather);
}

std::vector<DayCaution> cautionsFor(const Orchard& orchard,
                                    const TradeTables& tables,
                                    const Planting& planting,
                                    const Outlook& outlook,
                                    Day day) {
  return CautionMaker{orchard, tables, planting, outlook, day}.made();
}

}  // namespace topwire
