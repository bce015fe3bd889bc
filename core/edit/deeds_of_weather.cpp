#include "core/edit/deed_checks.h"
#include "core/edit/weather_deeds.h"

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

/// The day of two that stands, completed from the other.
WeatherDay together(const WeatherDay& standing, const WeatherDay& other) {
  if (other.source == WeatherSource::forecast
      && standing.source != WeatherSource::forecast)
    return standing;
  WeatherDay day = standing;
  if (!day.minimum) day.minimum = other.minimum;
  if (!day.maximum) day.maximum = other.maximum;
  if (day.whole() && *day.minimum > *day.maximum) day = standing;
  if (!day.rain) day.rain = other.rain;
  return day;
}

/// Works on copies of the months it touches.
class Merging {
public:
  explicit Merging(const Orchard& orchard) : orchard_(&orchard) {}

  void dropForecast();
  void put(const DatedWeather& dated);

  void remove(Day day) { monthOf(day).on(day).reset(); }

  MergedWeather take() &&;

private:
  WeatherMonth& monthOf(Day day);
  void count(const WeatherDay* before, const WeatherDay& put, const WeatherDay& after);
  void edit(const WeatherMonth& month);

  const Orchard* orchard_;
  std::map<MonthOfYear, WeatherMonth> months_;
  MergedWeather merged_;
};

WeatherMonth& Merging::monthOf(Day day) {
  const MonthOfYear key = topwire::monthOf(day);
  const auto [place, isNew] = months_.try_emplace(key);
  if (!isNew) return place->second;
  const WeatherMonth* held = lookUp(orchard_->weather, key);
  return place->second = held ? *held : WeatherMonth{key, {}};
}

bool isForecast(const std::optional<WeatherDay>& day) {
  return day && day->source == WeatherSource::forecast;
}

void Merging::dropForecast() {
  for (const auto& [key, held] : orchard_->weather) {
    if (std::ranges::none_of(held.days, isForecast)) continue;
    WeatherMonth& month = months_.insert_or_assign(key, held).first->second;
    for (auto& day : month.days)
      if (isForecast(day)) day.reset();
  }
}

void Merging::put(const DatedWeather& dated) {
  if (!dated.weather.known()) return;
  auto& day = monthOf(dated.day).on(dated.day);
  const WeatherDay& put = dated.weather;
  if (!day)
    day = put;
  else
    day = put.source < day->source ? together(*day, put) : together(put, *day);
  count(weatherOn(*orchard_, dated.day), put, *day);
}

void Merging::count(const WeatherDay* before,
                    const WeatherDay& put,
                    const WeatherDay& after) {
  if (!before)
    ++merged_.added;
  else if (*before != after)
    ++merged_.replaced;
  else if (put.source < after.source)
    ++merged_.keptBecauseWeightier;
  else
    ++merged_.unchanged;
}

void Merging::edit(const WeatherMonth& month) {
  const WeatherMonth* held = lookUp(orchard_->weather, month.month);
  Edit<WeatherMonth> edit;
  if (held) edit.before = *held;
  if (isSound(month)) edit.after = month;
  if (edit.before == edit.after) return;
  for (std::size_t i = 0; held && i < month.days.size(); ++i)
    if (isForecast(held->days[i]) && !month.days[i]) ++merged_.forecastDropped;
  merged_.edits.emplace_back(std::move(edit));
}

MergedWeather Merging::take() && {
  merged_.edits.reserve(months_.size());
  for (const auto& [key, month] : months_) edit(month);
  return std::move(merged_);
}

bool isWithin(const std::optional<double>& figure, double least, double most) {
  return !figure || (*figure >= least && *figure <= most);
}

bool runsBack(const WeatherDay& day) {
  return day.whole() && *day.minimum > *day.maximum;
}

bool isYearOfRecords(Day day) {
  return yearOf(day) >= 1700 && yearOf(day) <= 2200;
}

/// Wider than anything measured on earth; what is merely unlikely is the reader's to say.
bool canBe(const DatedWeather& dated) {
  const WeatherDay& day = dated.weather;
  return isYearOfRecords(dated.day) && isWithin(day.minimum, -100, 100)
         && isWithin(day.maximum, -100, 100) && isWithin(day.rain, 0, 3000)
         && !runsBack(day);
}

/// A forecast counts as a whole, since all of the earlier one goes.
Sentence nameOfImport(std::span<const DatedWeather> days,
                      const MergedWeather& merged,
                      const std::string& fileName) {
  if (merged.edits.empty()) return {phrase("Deed", "No new weather in %1"), {fileName}};
  const bool forecast = std::ranges::all_of(days, [](const DatedWeather& dated) {
    return dated.weather.source == WeatherSource::forecast;
  });
  const std::int64_t count =
      forecast ? static_cast<std::int64_t>(days.size()) : merged.added + merged.replaced;
  const Phrase name =
      forecast ? counted(count,
                         phrase("Deed", "Forecast of %1 day from %2 brought in"),
                         phrase("Deed", "Forecast of %1 days from %2 brought in"))
               : counted(count,
                         phrase("Deed", "Weather of %1 day from %2 brought in"),
                         phrase("Deed", "Weather of %1 days from %2 brought in"));
  return {name, {count, fileName}};
}

void checkTemperature(Faults& faults,
                      const std::string& place,
                      const std::optional<double>& degrees) {
  if (!isWithin(degrees, -60, 60))
    faults.add(place,
               phrase("Deed",
                      "A temperature lies between -60 and 60 degrees Celsius (-76 and "
                      "140 Fahrenheit); check it."));
}

bool hasTemperature(const WeatherDay* day) {
  return day && day->source != WeatherSource::forecast && (day->minimum || day->maximum);
}

void checkFigures(Faults& faults, const Orchard& orchard, const DatedWeather& typed) {
  const WeatherDay& day = typed.weather;
  const bool neither = !day.minimum && !day.maximum;
  if (!day.known() || (neither && !hasTemperature(weatherOn(orchard, typed.day))))
    faults.add("minimum",
               phrase("Deed", "Both temperatures are missing; type at least one."));
  checkTemperature(faults, "minimum", day.minimum);
  checkTemperature(faults, "maximum", day.maximum);
  if (runsBack(day) && !faults.any())
    faults.add("minimum",
               phrase("Deed", "The minimum is above the maximum; swap or correct them."));
  if (!isWithin(day.rain, 0, 2000))
    faults.add("rain",
               phrase("Deed",
                      "Rain of one day lies between 0 and 2,000 mm (79 inches); check "
                      "it."));
}

void checkTypedDay(Faults& faults, const DatedWeather& typed, Day today) {
  const bool forecast = typed.weather.source == WeatherSource::forecast;
  if (!isYearOfRecords(typed.day))
    faults.add("day",
               phrase("Deed", "Weather of %1 can't be right; check the day."),
               {typed.day});
  else if (typed.day > today && !forecast)
    faults.add(
        "day",
        phrase("Deed", "%1 is still to come, so its weather can only be a forecast."),
        {typed.day});
  else if (typed.day <= today && forecast)
    faults.add("day",
               phrase("Deed", "%1 is not ahead any more, so it can't be forecast."),
               {typed.day});
}

Sentence nameOfTyping(const DatedWeather& typed) {
  const bool forecast = typed.weather.source == WeatherSource::forecast;
  return {forecast ? phrase("Deed", "Forecast for %1 typed in")
                   : phrase("Deed", "Weather of %1 typed in"),
          {typed.day}};
}

Sentence nameOfRemoval(DaySpan days) {
  if (days.first == days.last)
    return {phrase("Deed", "Weather of %1 removed"), {days.first}};
  return {phrase("Deed", "Weather from %1 to %2 removed"), {days.first, days.last}};
}

}  // namespace

MergedWeather mergeWeather(const Orchard& orchard, std::span<const DatedWeather> days) {
  Merging merging{orchard};
  const bool forecast = std::ranges::any_of(days, [](const DatedWeather& dated) {
    return dated.weather.source == WeatherSource::forecast;
  });
  if (forecast) merging.dropForecast();
  for (const DatedWeather& dated : days) merging.put(dated);
  return std::move(merging).take();
}

Checked<Change> importWeather(const Orchard& orchard,
                              std::span<const DatedWeather> days,
                              const std::string& fileName) {
  if (days.empty())
    return refusal(fileName, phrase("Deed", "There is no day of weather in this file."));
  const auto odd = std::ranges::find_if_not(days, canBe);
  if (odd != days.end())
    return refusal(fileName,
                   phrase("Deed",
                          "The figures of %1 can't be; correct that day and bring the "
                          "file in again."),
                   {odd->day});
  MergedWeather merged = mergeWeather(orchard, days);
  return Change{nameOfImport(days, merged, fileName), std::move(merged.edits)};
}

Checked<Change> typeWeather(const Orchard& orchard,
                            const DatedWeather& typed,
                            Day today) {
  DatedWeather held = typed;
  if (held.weather.source == WeatherSource::measured)
    held.weather.source = WeatherSource::typed;
  Faults faults;
  checkTypedDay(faults, held, today);
  checkFigures(faults, orchard, held);
  if (faults.any()) return std::move(faults).asRefusal();
  Merging merging{orchard};
  merging.put(held);
  MergedWeather merged = std::move(merging).take();
  if (merged.keptBecauseWeightier > 0)
    return refusal("day",
                   phrase("Deed",
                          "Figures measured on %1 are on record and weigh more; remove "
                          "them first if they are wrong."),
                   {held.day});
  return Change{nameOfTyping(held), std::move(merged.edits)};
}

Checked<Change> removeWeather(const Orchard& orchard, DaySpan days) {
  Merging merging{orchard};
  for (const auto& [key, month] : orchard.weather) {
    const DaySpan span = spanOf(key);
    if (!span.overlaps(days)) continue;
    const Day last = std::min(span.last, days.last);
    for (Day day = std::max(span.first, days.first); day <= last; day = plusDays(day, 1))
      merging.remove(day);
  }
  MergedWeather merged = std::move(merging).take();
  if (merged.edits.empty())
    return refusal("day", phrase("Deed", "No weather is on record for these days."));
  return Change{nameOfRemoval(days), std::move(merged.edits)};
}

}  // namespace topwire
