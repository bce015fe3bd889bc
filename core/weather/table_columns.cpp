#include "core/weather/table_columns.h"

#include "core/exchange/delimited_text.h"

namespace topwire {

namespace {

/// Some programs write a title and a few remarks above the headings.
constexpr std::size_t linesLookedAt = 40;

void noteValues(TableColumns& columns,
                Element element,
                const Heading& heading,
                std::size_t at,
                std::string_view text) {
  auto& values = columns.values[indexOf(element)];
  if (heading.attributes) {
    if (!values.attributes) values.attributes = at;
    return;
  }
  if (values.column) return;
  values.column = at;
  values.heading = excerpt(undoubled(text));
  if (heading.temperatureUnit)
    columns.temperatureUnits.push_back(*heading.temperatureUnit);
  if (heading.rainUnit) columns.rainUnit = heading.rainUnit;
}

void noteFirst(std::optional<std::size_t>& column, std::size_t at) {
  if (!column) column = at;
}

void note(TableColumns& columns, std::size_t at, std::string_view text) {
  const auto heading = understand(text);
  if (!heading) return;
  if (heading->attributes && heading->kind > ColumnKind::rain) return;
  switch (heading->kind) {
    case ColumnKind::date:
      if (!columns.date) columns.dateHeading = std::string{text};
      return noteFirst(columns.date, at);
    case ColumnKind::minimum:
      return noteValues(columns, Element::minimum, *heading, at, text);
    case ColumnKind::maximum:
      return noteValues(columns, Element::maximum, *heading, at, text);
    case ColumnKind::rain:
      return noteValues(columns, Element::rain, *heading, at, text);
    case ColumnKind::forecast:
      return noteFirst(columns.forecast, at);
    case ColumnKind::station:
      return noteFirst(columns.station, at);
    case ColumnKind::name:
      return noteFirst(columns.name, at);
  }
}

TableColumns columnsOf(std::string_view line, char separator) {
  std::vector<std::string_view> fields;
  splitFields(line, separator, fields);
  TableColumns columns;
  columns.separator = separator;
  for (std::size_t i = 0; i < fields.size(); ++i) note(columns, i, fields[i]);
  return columns;
}

Sentence whatIsMissing(const TableColumns& nearest) {
  if (!nearest.date && !nearest.of(Element::minimum).column
      && !nearest.of(Element::maximum).column)
    return phrase("Weather file",
                  "This is none of the weather files that can be read: GHCN-Daily of "
                  "fixed width or by station, daily summaries, or a CSV with headings "
                  "for a date, a minimum and a maximum, such as \"date,tmin,tmax\".");
  if (!nearest.date)
    return phrase("Weather file",
                  "No heading names the date; call that column \"date\" or \"fecha\".");
  return {nearest.of(Element::minimum).column
              ? phrase("Weather file",
                       "No heading names the maximum temperature; call that column "
                       "\"tmax\".")
              : phrase("Weather file",
                       "No heading names the minimum temperature; call that column "
                       "\"tmin\".")};
}

int parts(const TableColumns& columns) {
  return (columns.date ? 1 : 0) + (columns.of(Element::minimum).column ? 1 : 0)
         + (columns.of(Element::maximum).column ? 1 : 0);
}

}  // namespace

bool TableColumns::isDailySummaries() const {
  return dateHeading == "DATE" && of(Element::minimum).heading == "TMIN"
         && of(Element::maximum).heading == "TMAX" && (station || name);
}

Result<TableColumns> findColumns(std::string_view text, const std::string& file) {
  TextLines lines{text};
  TableColumns nearest;
  while (const auto line = lines.next()) {
    if (lines.number() > linesLookedAt) break;
    for (const char separator : {',', ';', '\t'}) {
      TableColumns columns = columnsOf(*line, separator);
      columns.headerLine = lines.number();
      if (columns.complete()) return columns;
      if (parts(columns) > parts(nearest)) nearest = std::move(columns);
    }
  }
  // A lone word such as "day" or "min" in some other text is no heading.
  return refuse(whatIsMissing(parts(nearest) > 1 ? nearest : TableColumns{}), file);
}

}  // namespace topwire
