#include "app/windows/field_reader.h"

#include "app/models/weather_days.h"
#include "core/calendar/clock_time.h"
#include "core/units/conversions.h"

#include <QLocale>
#include <QRegularExpression>

#include <algorithm>

namespace topwire {

namespace {

/// With a decimal point or comma, and either sign for minus.
std::optional<double> parseNumber(const QString& text) {
  QString plain = text.trimmed();
  plain.replace(QLatin1Char(','), QLatin1Char('.'));
  plain.replace(QChar(0x2212), QLatin1Char('-'));
  bool read = false;
  const double value = QLocale::c().toDouble(plain, &read);
  return read ? std::optional{value} : std::nullopt;
}

/// Takes "°C", "°F" or the letter alone off the end; nothing where there is none.
std::optional<UnitSystem> takeUnit(QString& text) {
  const bool celsius = text.endsWith(QLatin1Char('C'), Qt::CaseInsensitive);
  const bool fahrenheit = text.endsWith(QLatin1Char('F'), Qt::CaseInsensitive);
  if (!celsius && !fahrenheit) return std::nullopt;
  text = text.chopped(1).trimmed();
  if (text.endsWith(QChar(0xB0))) text.chop(1);
  return celsius ? UnitSystem::metric : UnitSystem::usCustomary;
}

QStringList partsAtCommas(const QString& text) {
  QStringList parts;
  for (const QString& part : text.split(QLatin1Char(',')))
    if (!part.trimmed().isEmpty()) parts << part.simplified();
  return parts;
}

/// A day, or two with a dash or a word for "to" between them.
std::optional<DaySpan> parseDaySpan(const QString& text) {
  static const QRegularExpression form{
      QStringLiteral("^(\\d{4}-\\d\\d-\\d\\d)"
                     "(?:\\s*(?:\u2013|-|to|al?|hasta)\\s*(\\d{4}-\\d\\d-\\d\\d))?$")};
  const auto match = form.match(text);
  if (!match.hasMatch()) return std::nullopt;
  const auto first = parseDay(match.captured(1).toStdString());
  const auto last =
      match.captured(2).isEmpty() ? first : parseDay(match.captured(2).toStdString());
  return first && last ? std::optional{DaySpan{*first, *last}} : std::nullopt;
}

}  // namespace

std::string FieldReader::text(const QString& text) const {
  return text.simplified().toStdString();
}

void FieldReader::fault(const char* place, Sentence sentence) {
  problems_.push_back({std::move(sentence), place, {}});
}

Length FieldReader::length(const char* place, const QString& text, Length before) {
  if (text.trimmed().isEmpty()) {
    fault(place,
          Sentence{phrase("Form", "A length is wanted here, such as 3 ft or 0.9 m.")});
    return {};
  }
  return lengthIfAny(place, text, before).value_or(Length{});
}

std::optional<Length> FieldReader::lengthIfAny(const char* place,
                                               const QString& text,
                                               std::optional<Length> before) {
  if (text.trimmed().isEmpty()) return std::nullopt;
  if (before && this->text(text) == lengthText(*before, units_)) return before;
  const auto read = parseLength(this->text(text), units_);
  if (!read)
    fault(place,
          Sentence{phrase("Form", "%1 is not a length. Write it as 3 ft or 0.9 m."),
                   {this->text(text)}});
  return read;
}

std::optional<int> FieldReader::countIfAny(const char* place, const QString& text) {
  if (text.trimmed().isEmpty()) return std::nullopt;
  bool read = false;
  const int count = QLocale().toInt(text.trimmed(), &read);
  if (read && count > 0) return count;
  fault(place,
        Sentence{phrase("Form", "%1 is not a count. Write a whole number above zero."),
                 {this->text(text)}});
  return std::nullopt;
}

double FieldReader::number(const char* place, const QString& text) {
  const auto value = parseNumber(text);
  if (!value)
    fault(place,
          Sentence{phrase("Form", "%1 is not a number. Write it as 46.5 or -33.4."),
                   {this->text(text)}});
  return value.value_or(0);
}

std::optional<double> FieldReader::numberIfAny(const char* place, const QString& text) {
  if (text.trimmed().isEmpty()) return std::nullopt;
  return number(place, text);
}

int FieldReader::days(const char* place, const QString& text) {
  bool read = false;
  const int count = QLocale::c().toInt(text.trimmed(), &read);
  if (!read || count < 0)
    fault(place,
          Sentence{phrase("Form", "Write a whole number of days here, such as 10.")});
  return read ? count : 0;
}

int FieldReader::whole(const char* place, const QString& text) {
  bool read = false;
  const int count = QLocale::c().toInt(text.trimmed(), &read);
  if (!read || count < 0)
    fault(place, Sentence{phrase("Form", "Write a whole number here, such as 20.")});
  return read ? count : 0;
}

int FieldReader::timeOfDay(const char* place, const QString& text) {
  const auto minute = parseClock(this->text(text));
  if (!minute)
    fault(place, Sentence{phrase("Form", "Write a time of day here, such as 06:30.")});
  return minute.value_or(0);
}

std::vector<std::string> FieldReader::names(const QString& text) const {
  std::vector<std::string> names;
  for (const QString& part : partsAtCommas(text)) names.push_back(part.toStdString());
  return names;
}

std::vector<DaySpan> FieldReader::daySpans(const char* place, const QString& text) {
  std::vector<DaySpan> spans;
  for (const QString& part : partsAtCommas(text)) {
    if (const auto span = parseDaySpan(part))
      spans.push_back(*span);
    else
      fault(place,
            Sentence{phrase("Form",
                            "%1 is no day. Write 2027-05-03, or 2027-07-05 – 2027-07-17 "
                            "for a span."),
                     {part.toStdString()}});
  }
  return spans;
}

double FieldReader::correction(const char* place, const QString& text, double before) {
  if (text.trimmed() == correctionText(before, units_)) return before;
  if (text.trimmed().isEmpty()) return 0;
  QString plain = text.trimmed();
  const UnitSystem unit = takeUnit(plain).value_or(units_);
  const auto value = parseNumber(plain);
  if (!value)
    fault(place,
          Sentence{phrase("Form",
                          "%1 is not a difference in degrees. Write it as -1.5 °C or "
                          "-3 °F."),
                   {this->text(text)}});
  return value.value_or(0) / (unit == UnitSystem::metric ? 1 : fahrenheitPerCelsius);
}

std::optional<double> FieldReader::temperatureIfAny(const char* place,
                                                    const QString& text,
                                                    std::optional<double> before) {
  if (text.trimmed().isEmpty()) return std::nullopt;
  if (before && text == temperatureText(*before, units_)) return before;
  const double typed = number(place, text);
  return units_ == UnitSystem::metric ? typed : toCelsius(typed);
}

std::optional<double> FieldReader::rainIfAny(const char* place,
                                             const QString& text,
                                             std::optional<double> before) {
  if (text.trimmed().isEmpty()) return std::nullopt;
  if (before && text == rainAmountText(*before, units_)) return before;
  const double typed = number(place, text);
  return units_ == UnitSystem::metric ? typed : typed * millimetresPerInch;
}

RowSet FieldReader::rows(const char* place, const QString& text) {
  const ParsedRows read = parseRows(this->text(text));
  if (read.fault) fault(place, rowFaultSentence(*read.fault));
  return read.rows;
}

QString correctionText(double celsius, UnitSystem units) {
  if (celsius == 0) return {};
  const bool metric = units == UnitSystem::metric;
  const double shown = metric ? celsius : celsius * fahrenheitPerCelsius;
  return QLocale::c().toString(shown, 'g', 3)
         + (metric ? QStringLiteral(" °C") : QStringLiteral(" °F"));
}

QString daySpansText(const std::vector<DaySpan>& spans) {
  QStringList parts;
  for (const DaySpan& span : spans) {
    const QString first = QString::fromStdString(isoText(span.first));
    const QString last = QString::fromStdString(isoText(span.last));
    parts << (span.first == span.last ? first
                                      : first + QStringLiteral(" \u2013 ") + last);
  }
  return parts.join(QStringLiteral(", "));
}

QString namesText(const std::vector<std::string>& names) {
  QStringList parts;
  for (const std::string& name : names) parts << QString::fromStdString(name);
  return parts.join(QStringLiteral(", "));
}

Sentence rowFaultSentence(const RowFault& fault) {
  switch (fault.kind) {
    case RowFault::Kind::backwards:
      return {phrase("Rows", "%1 runs backwards. Write the lower row first, as in 1-12."),
              {fault.part}};
    case RowFault::Kind::outOfBounds:
      return {phrase("Rows", "%1 is out of bounds. Rows are numbered from 1 to 9999."),
              {fault.part}};
    case RowFault::Kind::twice:
      return {phrase("Rows", "%1 names a row twice. Name each row once."), {fault.part}};
    case RowFault::Kind::notRows:
      break;
  }
  return {phrase("Rows", "“%1” is not a row or a span of rows. Write 1-12, 15."),
          {fault.part}};
}

Problems firstOfEach(const Problems& first, const Problems& second) {
  Problems all = first;
  for (const Problem& problem : second) {
    const bool told = std::ranges::any_of(
        first, [&problem](const Problem& other) { return other.place == problem.place; });
    if (!told) all.push_back(problem);
  }
  return all;
}

}  // namespace topwire
