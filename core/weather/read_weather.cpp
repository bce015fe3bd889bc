#include "core/weather/read_weather.h"

#include "core/exchange/delimited_text.h"
#include "core/weather/ghcn_reader.h"
#include "core/weather/table_reader.h"

#include <algorithm>
#include <utility>

namespace topwire {

namespace {

bool isSpreadsheet(std::string_view text) {
  return text.starts_with("PK\x03\x04") || text.starts_with("\xd0\xcf\x11\xe0");
}

bool isUtf16(std::string_view text) {
  return text.starts_with("\xff\xfe") || text.starts_with("\xfe\xff");
}

/// Why the bytes are no text that could be looked into.
std::optional<Sentence> whyNoText(std::string_view text) {
  if (text.find_first_not_of(" \t\r\n") == std::string_view::npos)
    return phrase("Weather file", "The file is empty.");
  if (isSpreadsheet(text))
    return phrase("Weather file",
                  "This is a spreadsheet or an archive, not text; save the table as CSV "
                  "and import that.");
  if (text.starts_with("\x1f\x8b"))
    return phrase("Weather file",
                  "The file is compressed; unpack it and import what comes out.");
  if (isUtf16(text))
    return phrase("Weather file", "The file is in UTF-16; save it again as UTF-8.");
  constexpr std::size_t lookedAt = 4096;
  if (text.substr(0, lookedAt).find('\0') != std::string_view::npos)
    return phrase("Weather file",
                  "The file is not text; weather is read from text files such as CSV.");
  return std::nullopt;
}

/// The format whose lines most of the first ones are; a table where neither has most.
WeatherFormat formatOf(std::string_view text) {
  constexpr int lookedAt = 20;
  int seen = 0;
  int fixedWidth = 0;
  int byStation = 0;
  TextLines lines{text};
  while (const auto line = lines.next()) {
    if (trimmed(*line).empty()) continue;
    fixedWidth += isFixedWidthLine(*line) ? 1 : 0;
    byStation += isByStationLine(*line) ? 1 : 0;
    if (++seen == lookedAt) break;
  }
  if (fixedWidth * 2 > seen) return WeatherFormat::ghcnFixedWidth;
  if (byStation * 2 >= seen && byStation > 0) return WeatherFormat::ghcnByStation;
  return WeatherFormat::plainTable;
}

Result<bool> readAs(WeatherFormat format,
                    std::string_view text,
                    const std::string& file,
                    const WeatherReading& reading,
                    ReadingPace& pace,
                    WeatherCollector& collector) {
  collector.report().format = format;
  if (format == WeatherFormat::ghcnFixedWidth)
    return readFixedWidth(text, reading, pace, collector);
  if (format == WeatherFormat::ghcnByStation)
    return readByStation(text, reading, pace, collector);
  const auto columns = findColumns(text, file);
  if (!columns) return tl::unexpected{columns.error()};
  collector.report().format = columns->isDailySummaries() ? WeatherFormat::dailySummaries
                                                          : WeatherFormat::plainTable;
  return readTable(text, file, *columns, reading, pace, collector);
}

}  // namespace

Checked<std::optional<WeatherFile>> readWeather(std::string_view text,
                                                const std::string& file,
                                                const WeatherReading& reading,
                                                const ReadingProgress& progress) {
  text = withoutByteOrderMark(text);
  if (auto why = whyNoText(text))
    return tl::unexpected{Problems{{std::move(*why), file, {}}}};
  WeatherCollector collector{file, reading};
  ReadingPace pace{progress, text.size()};
  const WeatherFormat format = reading.format ? *reading.format : formatOf(text);
  const auto whole = readAs(format, text, file, reading, pace, collector);
  if (!whole) return tl::unexpected{Problems{whole.error()}};
  if (!*whole) return std::optional<WeatherFile>{};
  return collector.finish().map(
      [](WeatherFile&& read) { return std::optional{std::move(read)}; });
}

}  // namespace topwire
