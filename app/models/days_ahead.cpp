#include "app/models/days_ahead.h"

#include "app/models/weather_days.h"
#include "app/words/say.h"
#include "core/units/conversions.h"
#include "core/weather/site_correction.h"

#include <QStringList>

namespace topwire {

namespace {

QString degrees(const std::optional<double>& celsius, UnitSystem units) {
  if (!celsius) return QStringLiteral("–");
  const double shown = units == UnitSystem::metric ? *celsius : toFahrenheit(*celsius);
  return QLocale().toString(qRound(shown));
}

}  // namespace

std::vector<DayAhead> daysAhead(const Session& session,
                                const Planting& planting,
                                int count) {
  const Orchard& orchard = session.orchard();
  const Outlook& outlook = session.outlooks().at(planting.id);
  const SiteCorrection correction = correctionOf(orchard, planting);
  std::vector<DayAhead> days;
  for (int i = 0; i < count; ++i) {
    DayAhead ahead;
    ahead.day = plusDays(session.today(), i);
    if (const WeatherDay* known = weatherOn(orchard, ahead.day))
      ahead.weather = correction.at(*known);
    ahead.cautions = cautionsFor(orchard, session.tables(), planting, outlook, ahead.day);
    days.push_back(std::move(ahead));
  }
  return days;
}

QString nameOf(CautionKind kind) {
  const auto word = [kind] {
    switch (kind) {
      case CautionKind::frost:
        return phrase("Caution", "frost");
      case CautionKind::freezing:
        return phrase("Caution", "frosty");
      case CautionKind::hardCold:
        return phrase("Caution", "hard cold");
      case CautionKind::blightWeather:
        return phrase("Caution", "warm, wet");
      case CautionKind::wet:
        return phrase("Caution", "rain");
      case CautionKind::damp:
        return phrase("Caution", "damp");
      case CautionKind::heat:
        break;
    }
    return phrase("Caution", "heat");
  };
  return say(Sentence{word()});
}

QString rangeText(const WeatherDay& weather, UnitSystem units, bool bare) {
  if (!weather.minimum && !weather.maximum) return {};
  const QString range = QStringLiteral("%1 / %2").arg(degrees(weather.minimum, units),
                                                      degrees(weather.maximum, units));
  if (bare) return range;
  return range + QLatin1Char(' ') + temperatureUnit(units);
}

QString rainText(const WeatherDay& weather, UnitSystem units) {
  if (!weather.rain || *weather.rain <= 0) return {};
  return rainAmountText(*weather.rain, units) + QLatin1Char(' ') + rainUnit(units);
}

QString describe(const DayAhead& day, UnitSystem units) {
  QStringList parts{weekdayText(day.day)};
  if (!day.weather) {
    parts << say(Sentence{phrase("Weather", "nothing known yet")});
  } else {
    for (const QString& figures :
         {rangeText(*day.weather, units, false), rainText(*day.weather, units)})
      if (!figures.isEmpty()) parts << figures;
  }
  QString text = parts.join(QStringLiteral(", ")) + QLatin1Char('.');
  for (const DayCaution& caution : day.cautions)
    text += QLatin1Char(' ') + say(caution.sentence);
  return text;
}

}  // namespace topwire
