#include "app/models/weather_days.h"

#include "app/look/look.h"
#include "app/words/say.h"
#include "core/units/conversions.h"

#include <QBrush>

#include <algorithm>
#include <array>

namespace topwire {

namespace {

/// The last day of which anything is known, no earlier than `today`.
Day lastKnown(const Orchard& orchard, Day today) {
  Day last = today;
  for (auto month = orchard.weather.rbegin(); month != orchard.weather.rend(); ++month) {
    const auto& days = month->second.days;
    for (unsigned i = static_cast<unsigned>(days.size()); i > 0; --i)
      if (days[i - 1])
        return std::max(last, dayOf(month->first.year, month->first.month, i));
  }
  return last;
}

}  // namespace

std::vector<DayFigures> dayFigures(const Orchard& orchard, Day first, Day today) {
  std::vector<DayFigures> days;
  for (Day day = lastKnown(orchard, today); day >= first; day = plusDays(day, -1)) {
    DayFigures figures;
    figures.day = day;
    if (const WeatherDay* known = weatherOn(orchard, day)) figures.weather = *known;
    figures.isGap = day < today && !(figures.weather && figures.weather->whole());
    days.push_back(std::move(figures));
  }
  return days;
}

QString temperatureText(double celsius, UnitSystem units) {
  const double shown = units == UnitSystem::metric ? celsius : toFahrenheit(celsius);
  return QLocale().toString(shown + 0.0, 'f', 1);
}

QString rainAmountText(double millimetres, UnitSystem units) {
  return units == UnitSystem::metric
             ? QLocale().toString(millimetres, 'f', 1)
             : QLocale().toString(millimetres / millimetresPerInch, 'f', 2);
}

QString temperatureUnit(UnitSystem units) {
  return units == UnitSystem::metric ? QStringLiteral("°C") : QStringLiteral("°F");
}

QString rainUnit(UnitSystem units) {
  return units == UnitSystem::metric ? QStringLiteral("mm") : QStringLiteral("in");
}

QString nameOf(WeatherSource source) {
  const auto word = [source] {
    switch (source) {
      case WeatherSource::forecast:
        return phrase("Weather", "forecast");
      case WeatherSource::typed:
        return phrase("Weather", "typed");
      case WeatherSource::measured:
        break;
    }
    return phrase("Weather", "measured");
  };
  return say(Sentence{word()});
}

void WeatherDaysModel::setDays(std::vector<DayFigures> days,
                               UnitSystem units,
                               Day today) {
  if (days == days_ && units == units_ && today == today_) return;
  beginResetModel();
  days_ = std::move(days);
  units_ = units;
  today_ = today;
  endResetModel();
}

int WeatherDaysModel::rowOf(Day wanted) const {
  const auto found = std::ranges::find(days_, wanted, &DayFigures::day);
  return found == days_.end() ? -1 : static_cast<int>(found - days_.begin());
}

int WeatherDaysModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(days_.size());
}

int WeatherDaysModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : columns;
}

QString WeatherDaysModel::text(const DayFigures& figures, int column) const {
  if (column == day)
    return weekdayBrief(figures.day) + QLatin1Char(' ') + briefDay(figures.day);
  if (column == source)
    return figures.isGap     ? tr("missing")
           : figures.weather ? nameOf(figures.weather->source)
                             : QString{};
  if (!figures.weather) return {};
  const WeatherDay& known = *figures.weather;
  if (column == rain) return known.rain ? rainAmountText(*known.rain, units_) : QString{};
  const auto& temperature = column == minimum ? known.minimum : known.maximum;
  return temperature ? temperatureText(*temperature, units_) : QString{};
}

QVariant WeatherDaysModel::data(const QModelIndex& index, int role) const {
  const DayFigures& figures = at(index.row());
  const BaseColours& base = baseColours(currentTheme());
  switch (role) {
    case Qt::DisplayRole:
      return text(figures, index.column());
    case Qt::TextAlignmentRole:
      return index.column() == minimum || index.column() == maximum
                     || index.column() == rain
                 ? QVariant{Qt::AlignRight | Qt::AlignVCenter}
                 : QVariant{Qt::AlignLeft | Qt::AlignVCenter};
    case Qt::FontRole:
      return fontOf(TypeSize::small, figures.day == today_);
    case Qt::ForegroundRole:
      return index.column() == source && !figures.isGap ? base.muted : base.text;
    case Qt::BackgroundRole:
      if (figures.isGap && index.column() != day)
        return QBrush{base.hairline, Qt::BDiagPattern};
      return {};
    case Qt::AccessibleTextRole:
      return index.column() == day && figures.isGap
                 ? tr("%1, missing").arg(text(figures, day))
                 : text(figures, index.column());
    default:
      return {};
  }
}

QVariant WeatherDaysModel::headerData(int section,
                                      Qt::Orientation orientation,
                                      int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole)
    return section == day || section == source
               ? QVariant{Qt::AlignLeft | Qt::AlignVCenter}
               : QVariant{Qt::AlignRight | Qt::AlignVCenter};
  if (role == Qt::FontRole) return fontOf(TypeSize::small);
  if (role != Qt::DisplayRole) return {};
  switch (section) {
    case day:
      return tr("Day");
    case minimum:
      return tr("Lowest");
    case maximum:
      return tr("Highest");
    case rain:
      return tr("Rain");
    default:
      return tr("From");
  }
}

}  // namespace topwire
