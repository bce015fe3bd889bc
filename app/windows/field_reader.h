#pragma once

#include "core/base/result.h"
#include "core/calendar/day.h"
#include "core/orchard/row_set.h"
#include "core/units/length.h"

#include <QString>

#include <optional>
#include <string>
#include <vector>

namespace topwire {

/// Turns the texts of a form into values and gathers what could not be read, each with
/// its field as the place. What a value means is checked by the deed it is for.
class FieldReader {
public:
  explicit FieldReader(UnitSystem units) : units_(units) {}

  std::string text(const QString& text) const;
  /// Required: an empty field is a problem. `before` is what the field was filled from;
  /// its text left alone gives back just that, whatever showing it rounded off.
  Length length(const char* place, const QString& text, Length before);
  std::optional<Length> lengthIfAny(const char* place,
                                    const QString& text,
                                    std::optional<Length> before);
  std::optional<int> countIfAny(const char* place, const QString& text);
  double number(const char* place, const QString& text);
  std::optional<double> numberIfAny(const char* place, const QString& text);
  /// None or more.
  int days(const char* place, const QString& text);
  /// None or more of whatever the field counts.
  int whole(const char* place, const QString& text);
  /// Minutes from midnight.
  int timeOfDay(const char* place, const QString& text);
  /// Names with commas between.
  std::vector<std::string> names(const QString& text) const;
  /// As daySpansText writes them.
  std::vector<DaySpan> daySpans(const char* place, const QString& text);
  /// A difference of temperatures in degrees C, typed in the form's units or with the
  /// unit's letter; an empty field is none. `before` as for a length.
  double correction(const char* place, const QString& text, double before);
  /// Degrees C, typed in the form's units. `before` as for a length.
  std::optional<double> temperatureIfAny(const char* place,
                                         const QString& text,
                                         std::optional<double> before);
  /// Millimetres, typed in the form's millimetres or inches.
  std::optional<double> rainIfAny(const char* place,
                                  const QString& text,
                                  std::optional<double> before);
  RowSet rows(const char* place, const QString& text);

  const Problems& problems() const { return problems_; }

private:
  void fault(const char* place, Sentence sentence);

  UnitSystem units_;
  Problems problems_;
};

/// "-1.5 °C", or the same difference as "-2.7 °F"; empty for none.
QString correctionText(double celsius, UnitSystem units);

/// "2027-05-03, 2027-07-05 – 2027-07-17".
QString daySpansText(const std::vector<DaySpan>& spans);
/// With commas between.
QString namesText(const std::vector<std::string>& names);

/// Why a text is no set of rows.
Sentence rowFaultSentence(const RowFault& fault);

/// Both lists, without a second problem for a field the first has one for.
Problems firstOfEach(const Problems& first, const Problems& second);

}  // namespace topwire
