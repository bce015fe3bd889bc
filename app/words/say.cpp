#include "app/words/say.h"

#include "core/calendar/iso_week.h"

#include <QCoreApplication>
#include <QDate>
#include <QTranslator>

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

namespace topwire {

namespace {

QDate dateOf(Day day) {
  const CivilDate c = civil(day);
  return {static_cast<int>(c.year()),
          static_cast<int>(static_cast<unsigned>(c.month())),
          static_cast<int>(static_cast<unsigned>(c.day()))};
}

Language languageOf(const QLocale& locale) {
  return locale.language() == QLocale::Spanish ? Language::spanish : Language::english;
}

/// Months in the language spoken: a German locale still reads English pages.
QLocale dayLocaleFor(Language language, const QLocale& locale) {
  const auto wanted = language == Language::spanish ? QLocale::Spanish : QLocale::English;
  if (locale.language() == wanted) return locale;
  return language == Language::spanish
             ? QLocale{QLocale::Spanish}
             : QLocale{QLocale::English, QLocale::UnitedKingdom};
}

bool monthFirst(const QLocale& locale) {
  return locale.dateFormat(QLocale::ShortFormat).startsWith(u'M');
}

std::shared_ptr<QTranslator> translatorFor(Language language) {
  if (language == Language::english) return nullptr;
  auto translator = std::make_shared<QTranslator>();
  if (!translator->load(QStringLiteral(":/translations/topwire_es.qm"))) return nullptr;
  return translator;
}

QString withoutZeros(QString text, QChar decimalSign) {
  if (!text.contains(decimalSign)) return text;
  while (text.endsWith(u'0')) text.chop(1);
  if (text.endsWith(decimalSign)) text.chop(1);
  return text;
}

QChar decimalSignOf(const QLocale& locale) {
  const QString sign = locale.decimalPoint();
  return sign.isEmpty() ? QChar{u'.'} : sign.front();
}

Phrase leafPhrase(int leaf) {
  static constexpr std::array words{phrase("Leaf", "first leaf"),
                                    phrase("Leaf", "second leaf"),
                                    phrase("Leaf", "third leaf"),
                                    phrase("Leaf", "fourth leaf"),
                                    phrase("Leaf", "fifth leaf"),
                                    phrase("Leaf", "sixth leaf"),
                                    phrase("Leaf", "seventh leaf"),
                                    phrase("Leaf", "eighth leaf"),
                                    phrase("Leaf", "ninth leaf"),
                                    phrase("Leaf", "tenth leaf"),
                                    phrase("Leaf", "eleventh leaf"),
                                    phrase("Leaf", "twelfth leaf")};
  if (leaf < 1) return phrase("Leaf", "before planting");
  if (leaf <= static_cast<int>(words.size()))
    return words.at(static_cast<std::size_t>(leaf - 1));
  const int tens = leaf / 10 % 10;
  const int ones = tens == 1 ? 0 : leaf % 10;
  if (ones == 1) return phrase("Leaf", "%1st leaf");
  if (ones == 2) return phrase("Leaf", "%1nd leaf");
  if (ones == 3) return phrase("Leaf", "%1rd leaf");
  return phrase("Leaf", "%1th leaf");
}

Phrase vigourPhrase(Vigour vigour) {
  switch (vigour) {
    case Vigour::weak:
      return phrase("Vigour", "weak");
    case Vigour::moderate:
      return phrase("Vigour", "moderate");
    case Vigour::strong:
      break;
  }
  return phrase("Vigour", "strong");
}

Phrase statePhrase(TaskState state) {
  switch (state) {
    case TaskState::waiting:
      return phrase("State", "waiting");
    case TaskState::open:
      return phrase("State", "open");
    case TaskState::closing:
      return phrase("State", "closing");
    case TaskState::late:
      return phrase("State", "late");
    case TaskState::lapsed:
      return phrase("State", "lapsed");
    case TaskState::done:
      return phrase("State", "done");
    case TaskState::setAside:
      break;
  }
  return phrase("State", "set aside");
}

/// The application's voice, and the translator the widgets' own texts come from.
struct Spoken {
  Voice voice{languageOf(QLocale{}), QLocale{}};
  std::shared_ptr<QTranslator> installed;
};

Spoken& spoken() {
  static Spoken one;
  return one;
}

}  // namespace

Voice::Voice(Language language, const QLocale& locale)
    : language_(language)
    , locale_(locale)
    , dayLocale_(dayLocaleFor(language, locale))
    , translator_(translatorFor(language)) {}

QString Voice::value(const Value& value) const {
  struct Written {
    const Voice& voice;

    QString operator()(const std::string& text) const {
      return QString::fromStdString(text);
    }

    /// A year or a row is no quantity, so nothing is set apart below ten thousand.
    QString operator()(std::int64_t number) const {
      return number < 10'000 ? QString::number(number) : voice.count(number);
    }

    QString operator()(Figure figure) const {
      return voice.figure(figure.value, figure.decimals);
    }

    QString operator()(Day day) const { return voice.day(day); }

    QString operator()(const Words& words) const { return voice.say(words); }
  };

  return std::visit(Written{*this}, value);
}

QString Voice::say(const Sentence& sentence) const {
  QString text;
  if (translator_)
    text = translator_->translate(sentence.context.c_str(), sentence.text.c_str());
  if (text.isEmpty()) text = QString::fromStdString(sentence.text);
  std::vector<std::string> values;
  values.reserve(sentence.values.size());
  for (const Value& each : sentence.values) values.push_back(value(each).toStdString());
  return QString::fromStdString(fillIn(text.toStdString(), values));
}

QString Voice::say(const Problem& problem) const {
  QString text = say(problem.sentence);
  if (!problem.place.empty())
    text.prepend(QString::fromStdString(problem.place) + QStringLiteral(": "));
  return text;
}

QString Voice::say(const Words& words) const {
  return QString::fromStdString(words.in(language_));
}

QString Voice::figure(double value, int decimals) const {
  QLocale plain = locale_;
  plain.setNumberOptions(QLocale::OmitGroupSeparator);
  return plain.toString(value, 'f', decimals);
}

QString Voice::monthOf(Day day) const {
  return dayLocale_.toString(dateOf(day), QStringLiteral("MMMM"));
}

QString Voice::day(Day day) const {
  const QString year = QString::number(yearOf(day));
  if (language_ == Language::spanish)
    return dayOfYear(day) + QStringLiteral(" de ") + year;
  return dayOfYear(day)
         + (monthFirst(dayLocale_) ? QStringLiteral(", ") : QStringLiteral(" ")) + year;
}

QString Voice::dayOfYear(Day day) const {
  const QString number = QString::number(dateOf(day).day());
  if (language_ == Language::spanish)
    return number + QStringLiteral(" de ") + monthOf(day);
  return monthFirst(dayLocale_) ? monthOf(day) + u' ' + number
                                : number + u' ' + monthOf(day);
}

QString Voice::beforeDay(const QString& weekday) const {
  const bool comma = language_ == Language::english && monthFirst(dayLocale_);
  return weekday + (comma ? QStringLiteral(", ") : QStringLiteral(" "));
}

QString Voice::shortDay(Day day) const {
  QString name = dayLocale_.dayName(isoWeekday(day), QLocale::ShortFormat);
  if (name.endsWith(u'.')) name.chop(1);
  return beforeDay(name) + dayOfYear(day);
}

QString Voice::weekday(Day day) const {
  return beforeDay(dayLocale_.dayName(isoWeekday(day), QLocale::LongFormat))
         + dayOfYear(day);
}

QString Voice::month(Day day) const {
  const QString year = QString::number(yearOf(day));
  const QString name = monthOf(day);
  return language_ == Language::spanish
             ? name.left(1).toUpper() + name.mid(1) + QStringLiteral(" de ") + year
             : name + u' ' + year;
}

QString Voice::monthName(Day day, QLocale::FormatType length) const {
  QString name = dayLocale_.standaloneMonthName(dateOf(day).month(), length);
  if (name.endsWith(u'.')) name.chop(1);
  return name;
}

QString Voice::span(DaySpan days) const {
  const QDate first = dateOf(days.first);
  const QDate last = dateOf(days.last);
  if (first == last) return dayOfYear(days.first);
  if (first.month() != last.month() || first.year() != last.year())
    return dayOfYear(days.first) + QStringLiteral(" – ") + dayOfYear(days.last);
  const QString from = QString::number(first.day()) + u'–';
  if (language_ == Language::english && monthFirst(dayLocale_))
    return monthOf(days.first) + u' ' + from + QString::number(last.day());
  return from + dayOfYear(days.last);
}

QString Voice::spanWithYear(DaySpan days) const {
  if (yearOf(days.first) != yearOf(days.last))
    return day(days.first) + QStringLiteral(" – ") + day(days.last);
  const QString year = QString::number(yearOf(days.last));
  if (language_ == Language::spanish) return span(days) + QStringLiteral(" de ") + year;
  return span(days)
         + (monthFirst(dayLocale_) ? QStringLiteral(", ") : QStringLiteral(" ")) + year;
}

QString Voice::count(std::int64_t number) const {
  return locale_.toString(static_cast<qlonglong>(number));
}

QString Voice::hours(double hours) const {
  constexpr std::int64_t fewMinutes = 10;
  const std::int64_t minutes = std::llround(hours * 60);
  if (hours > 0 && minutes < fewMinutes)
    return say(
        Sentence{phrase("Length", "%1 min"), {std::max<std::int64_t>(1, minutes)}});
  const QString text = hours >= 100
                           ? figure(hours, 0)
                           : withoutZeros(figure(hours, 1), decimalSignOf(locale_));
  return text + QStringLiteral(" h");
}

QString Voice::say(Length length, UnitSystem units) const {
  const bool metric = units == UnitSystem::metric;
  const QString text = withoutZeros(
      figure(metric ? length.inMetres() : length.inFeet(), 2), decimalSignOf(locale_));
  return say(Sentence{metric ? phrase("Length", "%1 m") : phrase("Length", "%1 ft"),
                      {text.toStdString()}});
}

QString Voice::nameOf(Vigour vigour) const {
  return say(Sentence{vigourPhrase(vigour)});
}

QString Voice::nameOf(TaskState state) const {
  return say(Sentence{statePhrase(state)});
}

QString Voice::leaf(int leaf) const {
  return say(Sentence{leafPhrase(leaf), {std::int64_t{leaf}}});
}

Voice voiceIn(Language language) {
  const Voice& own = spoken().voice;
  if (own.language() == language) return own;
  const auto wanted = language == Language::spanish ? QLocale::Spanish : QLocale::English;
  return Voice{language, QLocale{wanted, QLocale{}.territory()}};
}

void speak(const QString& locale) {
  const QLocale wanted = locale.isEmpty() ? QLocale::system() : QLocale{locale};
  QLocale::setDefault(wanted);
  Spoken& now = spoken();
  if (now.installed) QCoreApplication::removeTranslator(now.installed.get());
  now.voice = Voice{languageOf(wanted), wanted};
  now.installed = translatorFor(now.voice.language());
  if (now.installed) QCoreApplication::installTranslator(now.installed.get());
}

QString say(const Sentence& sentence) {
  return spoken().voice.say(sentence);
}

QString say(const Problem& problem) {
  return spoken().voice.say(problem);
}

QString say(const Words& words) {
  return spoken().voice.say(words);
}

Language language() {
  return spoken().voice.language();
}

QString dayText(Day day) {
  return spoken().voice.day(day);
}

QString shortDayText(Day day) {
  return spoken().voice.shortDay(day);
}

QString briefDay(Day day) {
  const bool spanish = language() == Language::spanish;
  const QLocale names{spanish ? QLocale::Spanish : QLocale::English};
  const QString order = QLocale{}.dateFormat(QLocale::ShortFormat);
  const bool monthFirst = !spanish && order.startsWith(QLatin1Char('M'));
  return names.toString(dateOf(day),
                        monthFirst ? QStringLiteral("MMM d") : QStringLiteral("d MMM"));
}

QString weekdayBrief(Day day) {
  const QLocale names{language() == Language::spanish ? QLocale::Spanish
                                                      : QLocale::English};
  return names.dayName(isoWeekday(day), QLocale::ShortFormat);
}

QString weekdayText(Day day) {
  return spoken().voice.weekday(day);
}

QString monthText(Day day) {
  return spoken().voice.month(day);
}

QString hoursText(double hours) {
  return spoken().voice.hours(hours);
}

QString say(Length length, UnitSystem units) {
  return spoken().voice.say(length, units);
}

QString nameOf(Vigour vigour) {
  return spoken().voice.nameOf(vigour);
}

QString nameOf(TaskState state) {
  return spoken().voice.nameOf(state);
}

QString leafText(int leaf) {
  return spoken().voice.leaf(leaf);
}

}  // namespace topwire
