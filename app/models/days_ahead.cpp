#include "app/models/days_ahead.h"

#include "app/words/say.h"
#include "core/weather/normals.h"

#include <QStringList>

namespace topwire {

namespace {

constexpr double millimetresInInch = 25.4;

WeatherDay correctedFor(const Orchard& orchard,
                        const Planting& planting,
                        WeatherDay weather) {
  const double lapse =
      lapseCorrection(elevationOf(orchard, planting), orchard.settings.stationElevation);
  const Block& block = blockOf(orchard, planting);
  if (weather.minimum) *weather.minimum += lapse + block.minimumCorrection;
  if (weather.maximum) *weather.maximum += lapse + block.maximumCorrection;
  return weather;
}

QString degrees(const std::optional<double>& celsius, UnitSystem units) {
  if (!celsius) return QStringLiteral("–");
  const double shown = units == UnitSystem::metric ? *celsius : *celsius * 9 / 5 + 32;
  return QLocale().toString(qRound(shown));
}

}  // namespace

std::vector<DayAhead> daysAhead(const Session& session,
                                const Planting& planting,
                                int count) {
  const Orchard& orchard = session.orchard();
  const Outlook& outlook = session.outlooks().at(planting.id);
  std::vector<DayAhead> days;
  for (int i = 0; i < count; ++i) {
    DayAhead ahead;
    ahead.day = plusDays(session.today(), i);
    if (const WeatherDay* known = weatherOn(orchard, ahead.day))
      ahead.weather = correctedFor(orchard, planting, *known);
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
  return range
         + (units == UnitSystem::metric ? QStringLiteral(" °C") : QStringLiteral(" °F"));
}

QString rainText(const WeatherDay& weather, UnitSystem units) {
  if (!weather.rain || *weather.rain <= 0) return {};
  if (units == UnitSystem::metric)
    return QLocale().toString(*weather.rain, 'f', 1) + QStringLiteral(" mm");
  return QLocale().toString(*weather.rain / millimetresInInch, 'f', 2)
         + QStringLiteral(" in");
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
