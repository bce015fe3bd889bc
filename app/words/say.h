#pragma once

#include "core/base/result.h"
#include "core/planning/progress.h"

#include <QString>

namespace topwire {

/// A sentence of core's in the language and locale the application runs in. Looks the
/// phrase up among the translations, then puts the values in: days by `dayText`, figures
/// with the locale's decimal sign.
QString say(const Sentence& sentence);
/// The sentence, led by its place if it has one.
QString say(const Problem& problem);
QString say(const Words& words);

/// The language the application speaks, from its translator.
Language language();
/// Installs translations and the default QLocale. `locale` is a name such as "es_MX"; the
/// system's where empty.
void speak(const QString& locale);

/// "6 April 2027", "April 6, 2027" or "6 de abril de 2027".
QString dayText(Day day);
/// "Tue 6 April", without the year.
QString shortDayText(Day day);
/// "Thursday 8 April".
QString weekdayText(Day day);
/// "April 2027".
QString monthText(Day day);
/// "8.5 h"
QString hoursText(double hours);
QString lengthText(Length length, UnitSystem units);

QString nameOf(Vigour vigour);
QString nameOf(TaskState state);
/// "third leaf", "12th leaf", "planting in 2029" before the first.
QString leafText(int leaf);

}  // namespace topwire
