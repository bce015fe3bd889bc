#include "core/exchange/crew_reader.h"

#include "core/calendar/clock_time.h"
#include "core/exchange/nearest.h"

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

constexpr int mostMinutes = 1'000'000;

const std::vector<std::string>& weekdayNames() {
  static const std::vector<std::string> names{
      "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"};
  return names;
}

/// "2027-05-03", or "2027-05-03 to 2027-05-09".
std::optional<DaySpan> parseSpan(std::string_view text) {
  constexpr std::string_view between = " to ";
  const auto at = text.find(between);
  const auto first = parseDay(text.substr(0, at));
  const auto last =
      at == std::string_view::npos ? first : parseDay(text.substr(at + between.size()));
  return first && last ? std::optional{DaySpan{*first, *last}} : std::nullopt;
}

std::vector<DaySpan> readDaysOff(TableFields& fields) {
  constexpr std::string_view key = "days-off";
  std::vector<DaySpan> spans;
  for (const std::string& text : fields.texts(key)) {
    if (const auto span = parseSpan(text))
      spans.push_back(*span);
    else
      fields.fault(key,
                   {phrase("Orchard file",
                           "\"%1\" has \"%2\" where days belong; write \"2027-05-03\" "
                           "or \"2027-05-03 to 2027-05-09\"."),
                    {std::string{key}, text}});
  }
  return spans;
}

void readWorkdays(TableFields& fields, Settings& settings) {
  constexpr std::string_view key = "workdays";
  if (!fields.has(key)) {
    fields.texts(key);
    return;
  }
  settings.workdays = {};
  for (const std::string& name : fields.texts(key)) {
    const auto found = std::ranges::find(weekdayNames(), name);
    if (found != weekdayNames().end())
      settings.workdays.at(static_cast<std::size_t>(found - weekdayNames().begin())) =
          true;
    else
      fields.fault(key,
                   {phrase("Orchard file",
                           "\"%1\" has \"%2\", which is no day of the week; write "
                           "\"monday\", \"tuesday\" and so on."),
                    {std::string{key}, name}});
  }
}

void readStart(TableFields& fields, Settings& settings) {
  const auto typed = fields.text("start");
  if (!typed) return;
  if (const auto minute = parseClock(*typed))
    settings.startMinute = *minute;
  else
    fields.fault(
        "start",
        {phrase("Orchard file", "\"%1\" is \"%2\"; write a time of day like \"06:30\"."),
         {std::string{"start"}, *typed}});
}

/// The record among `records` with that name; a fault tells the nearest one.
template <class Map>
std::optional<typename Map::key_type> idNamed(TableFields& fields,
                                              std::string_view key,
                                              const Map& records,
                                              std::string_view example) {
  const auto name = fields.required(key, fields.text(key), example);
  if (fields.isFaulty(key)) return std::nullopt;
  std::vector<std::string> names;
  for (const auto& [id, record] : records) {
    if (record.name == name) return id;
    names.push_back(record.name);
  }
  const std::string nearest = nearestName(name, names);
  fields.fault(
      key,
      {nearest.empty() ? phrase(
           "Orchard file", "\"%1\" is \"%2\", and nothing in this file is called so.")
                       : phrase("Orchard file",
                                R"(Nothing above is called "%2"; the nearest is "%3".)"),
       {std::string{key}, name, nearest}});
  return std::nullopt;
}

/// "2027-04-09 06:00", or a day alone, at whose end the block opens.
void readUntil(TableFields& fields, BlockClosure& closure) {
  constexpr std::size_t dayLength = 10;
  constexpr int endOfDay = 24 * 60;
  const auto typed =
      fields.required("until", fields.text("until"), "\"2027-04-09 06:00\"");
  if (fields.isFaulty("until")) return;
  const std::string_view text = typed;
  const auto day = parseDay(text.substr(0, dayLength));
  const bool whole = text.size() == dayLength;
  const bool timed = text.size() > dayLength && text[dayLength] == ' ';
  const int minute =
      whole
          ? endOfDay
          : (timed ? parseClock(text.substr(dayLength + 1)) : std::nullopt).value_or(-1);
  if (!day || minute < 0)
    return fields.fault("until",
                        {phrase("Orchard file",
                                "\"%1\" is \"%2\"; write a day and a time like "
                                "\"2027-04-09 06:00\"."),
                         {std::string{"until"}, typed}});
  closure.until = *day;
  closure.untilMinute = minute;
}

void readPinKind(TableFields& fields, const Orchard& orchard, Pin& pin) {
  const auto notBefore = fields.day("not-before");
  const bool ofCrew = fields.has("crew") || fields.has("day");
  if (ofCrew && fields.has("not-before"))
    fields.fault("not-before",
                 {phrase("Orchard file",
                         "A pin has either \"crew\" and \"day\" or \"not-before\"; keep "
                         "the one that is meant.")});
  if (fields.has("not-before")) {
    fields.text("crew");
    fields.day("day");
    pin.kind = PinKind::notBefore;
    pin.day = notBefore.value_or(Day{});
    return;
  }
  pin.crew = idNamed(fields, "crew", orchard.crews, "\"Heron\"");
  pin.day = fields.required("day", fields.day("day"), "2027-04-06");
}

}  // namespace

Crew readCrew(TableFields& fields) {
  Crew crew;
  crew.name = fields.required("name", fields.text("name"), "\"Heron\"");
  crew.workers = fields.required("workers", fields.whole("workers", 1, 999), "6");
  crew.hoursPerDay = fields.number("hours-per-day").value_or(crew.hoursPerDay);
  crew.skills = fields.texts("skills");
  crew.members = fields.texts("members");
  crew.daysOff = readDaysOff(fields);
  const double minutes = fields.number("young-hours").value_or(0) * 60;
  // Out of bounds either way, the deed refuses it.
  crew.youngMinutes =
      static_cast<int>(std::lround(std::clamp<double>(minutes, -1, mostMinutes)));
  return crew;
}

void readWorkingDay(TableFields& fields, Settings& settings) {
  readWorkdays(fields, settings);
  readStart(fields, settings);
  settings.moveMinutes =
      fields.whole("move-minutes", 0, 240).value_or(settings.moveMinutes);
  settings.moveMinutesPerKm =
      fields.whole("move-minutes-per-km", 0, 60).value_or(settings.moveMinutesPerKm);
  settings.keepTogether =
      fields.whole("keep-together", 0, 100).value_or(settings.keepTogether);
  settings.gangAtMost =
      fields.whole("gang-at-most", 1, 200).value_or(settings.gangAtMost);
}

void readPlaceOf(TableFields& fields, Block& block) {
  block.workersAtMost = fields.whole("workers-at-most", 1, 999);
  block.latitude = fields.number("latitude");
  block.longitude = fields.number("longitude");
}

WorkDay readWorkDay(TableFields& fields) {
  WorkDay work;
  work.day = fields.required("day", fields.day("day"), "2027-05-31");
  work.percent = fields.required("percent", fields.whole("percent", 0, 100), "0");
  work.reason = fields.text("reason").value_or("");
  fields.refuseOthers();
  return work;
}

Turnout readTurnout(TableFields& fields, const Orchard& orchard) {
  Turnout turnout;
  turnout.of.crew =
      idNamed(fields, "crew", orchard.crews, "\"Heron\"").value_or(CrewId{});
  turnout.of.day = fields.required("day", fields.day("day"), "2027-04-06");
  turnout.workers = fields.required("workers", fields.whole("workers", 0, 999), "5");
  fields.refuseOthers();
  return turnout;
}

BlockClosure readClosure(TableFields& fields, const Orchard& orchard) {
  BlockClosure closure;
  closure.block =
      idNamed(fields, "block", orchard.blocks, "\"Creek 1\"").value_or(BlockId{});
  closure.from = fields.required("from", fields.day("from"), "2027-04-08");
  readUntil(fields, closure);
  closure.reason = fields.text("reason").value_or("");
  fields.refuseOthers();
  return closure;
}

WantedPin readPin(TableFields& fields, const Orchard& orchard) {
  WantedPin wanted;
  wanted.task =
      fields.required("task", fields.text("task"), "\"creek-1-gala:rub-rivals:2027:1\"");
  readPinKind(fields, orchard, wanted.pin);
  wanted.pin.reason = fields.text("reason").value_or("");
  wanted.line = fields.lineOf("task");
  fields.refuseOthers();
  return wanted;
}

}  // namespace topwire
