#pragma once

#include "core/base/result.h"
#include "core/planning/progress.h"

#include <QLocale>
#include <QString>

#include <memory>

class QTranslator;

namespace topwire {

/// A language together with the way its readers write days and figures. The windows speak
/// with one voice, a printed sheet may speak with another.
class Voice {
public:
  /// The locale says how figures and days are written; months are named in `language`.
  Voice(Language language, const QLocale& locale);

  Language language() const { return language_; }

  /// Looks the phrase up among the translations, then puts the values in.
  QString say(const Sentence& sentence) const;
  /// The sentence, led by its place if it has one.
  QString say(const Problem& problem) const;
  QString say(const Words& words) const;

  /// "6 April 2027", "April 6, 2027" or "6 de abril de 2027".
  QString day(Day day) const;
  /// "6 April", "April 6" or "6 de abril".
  QString dayOfYear(Day day) const;
  /// "Tue 6 April", "Tue, April 6" or "mar 6 de abril".
  QString shortDay(Day day) const;
  /// "Thursday 8 April", "Thursday, April 8" or "jueves 8 de abril".
  QString weekday(Day day) const;
  /// "April" or "abril", as it stands alone; "Apr" or "abr" where short.
  QString monthName(Day day, QLocale::FormatType length = QLocale::LongFormat) const;
  /// "April 2027"; a heading, so it begins with a capital in Spanish too.
  QString month(Day day) const;
  /// "5–11 April", "29 March – 4 April", without the year.
  QString span(DaySpan days) const;
  /// "5–11 April 2027".
  QString spanWithYear(DaySpan days) const;
  /// With the thousands set apart as the locale does: "4,320".
  QString count(std::int64_t number) const;
  /// "8.5 h"; whole hours from 100 on, minutes below ten of them, never nothing for some.
  QString hours(double hours) const;
  QString say(Length length, UnitSystem units) const;

  QString nameOf(Vigour vigour) const;
  QString nameOf(TaskState state) const;
  /// "third leaf", "13th leaf"; "before planting" below 1.
  QString leaf(int leaf) const;

private:
  QString value(const Value& value) const;
  QString figure(double value, int decimals) const;
  QString monthOf(Day day) const;
  QString beforeDay(const QString& weekday) const;

  Language language_;
  QLocale locale_;     ///< of figures
  QLocale dayLocale_;  ///< of days: the same where it speaks the language
  std::shared_ptr<QTranslator> translator_;
};

/// A voice in that language for a page: the application's own where it speaks it, else
/// the language as it is written in the same country.
Voice voiceIn(Language language);

/// Installs the translator for the widgets' own texts, sets the default QLocale and the
/// voice of the functions below. `locale` is a name such as "es_MX"; the system's where
/// empty. Any language but Spanish is answered in English, with the locale's figures.
void speak(const QString& locale);

// The same in the language and locale the application runs in.
QString say(const Sentence& sentence);
QString say(const Problem& problem);
QString say(const Words& words);
/// "0.9 m" or "3.5 ft"; core's lengthText is the one for files.
QString say(Length length, UnitSystem units);
Language language();
QString dayText(Day day);
QString shortDayText(Day day);
/// "24 Apr", or "Apr 24" where the locale writes the month first.
QString briefDay(Day day);
/// "Sat".
QString weekdayBrief(Day day);
QString weekdayText(Day day);
QString monthText(Day day);
QString hoursText(double hours);
QString nameOf(Vigour vigour);
QString nameOf(TaskState state);
QString leafText(int leaf);

}  // namespace topwire
