#include "app/desktop/options.h"

#include <QCommandLineParser>
#include <QCoreApplication>

#include <utility>

namespace topwire {

namespace {

Problem unreadable(const QString& option, const QString& value, const QString& wanted) {
  return {Sentence{phrase("Desktop", "--%1 takes %2, not “%3”."),
                   {option.toStdString(), wanted.toStdString(), value.toStdString()}},
          {},
          {}};
}

Result<std::optional<Day>> dayOption(const QCommandLineParser& parser,
                                     const QString& name) {
  if (!parser.isSet(name)) return std::nullopt;
  const auto day = parseDay(parser.value(name).toStdString());
  if (day) return day;
  return tl::unexpected{
      unreadable(name, parser.value(name), QStringLiteral("a day such as 2027-04-06"))};
}

/// The choice behind a word, out of the few an option takes.
template <class T>
Result<std::optional<T>> choiceOption(const QCommandLineParser& parser,
                                      const QString& name,
                                      const std::vector<std::pair<QString, T>>& choices) {
  if (!parser.isSet(name)) return std::nullopt;
  QStringList words;
  for (const auto& [word, choice] : choices) {
    if (word == parser.value(name)) return choice;
    words << word;
  }
  return tl::unexpected{
      unreadable(name, parser.value(name), words.join(QStringLiteral(" or ")))};
}

Result<QSize> sizeOption(const QCommandLineParser& parser, QSize usual) {
  const QString name = QStringLiteral("size");
  if (!parser.isSet(name)) return usual;
  const QStringList sides = parser.value(name).split(QLatin1Char('x'));
  const QSize size{sides.value(0).toInt(), sides.value(1).toInt()};
  if (sides.size() == 2 && !size.isEmpty()) return size;
  return tl::unexpected{
      unreadable(name, parser.value(name), QStringLiteral("a size such as 1280x800"))};
}

void describe(QCommandLineParser& parser) {
  parser.setApplicationDescription(
      QStringLiteral("Dated field tasks for high-density apple blocks."));
  parser.addPositionalArgument(QStringLiteral("FILE"),
                               QStringLiteral("The orchard file; the last one if none."),
                               QStringLiteral("[FILE]"));
  const auto add = [&parser](const char* name, const char* help, const char* value) {
    parser.addOption({QLatin1String(name), QLatin1String(help), QLatin1String(value)});
  };
  add("today", "Take this day for today.", "YYYY-MM-DD");
  add("language", "Speak this language: en or es, or a locale such as es_MX.", "LOCALE");
  add("theme", "light or dark; the chosen one if not given.", "THEME");
  add("page",
      "Start on this page: today, calendar, labour, blocks, weather, material, "
      "programme, closing or settings.",
      "PAGE");
  add("day", "Show this day on the calendar.", "YYYY-MM-DD");
  add("grab", "Write a PNG of the window and end.", "OUT.png");
  add("size", "The window's size when grabbed.", "WxH");
  parser.addHelpOption();
  parser.addVersionOption();
}

}  // namespace

Result<DesktopOptions> readOptions(const QStringList& arguments) {
  QCommandLineParser parser;
  describe(parser);
  parser.process(arguments);
  DesktopOptions options;
  options.file = parser.positionalArguments().value(0);
  options.language = parser.value(QStringLiteral("language"));
  options.grabTo = parser.value(QStringLiteral("grab"));
  const auto today = dayOption(parser, QStringLiteral("today"));
  if (!today) return tl::unexpected{today.error()};
  const auto day = dayOption(parser, QStringLiteral("day"));
  if (!day) return tl::unexpected{day.error()};
  const auto theme = choiceOption<Theme>(
      parser,
      QStringLiteral("theme"),
      {{QStringLiteral("light"), Theme::light}, {QStringLiteral("dark"), Theme::dark}});
  if (!theme) return tl::unexpected{theme.error()};
  const auto page =
      choiceOption<RailPage>(parser,
                             QStringLiteral("page"),
                             {{QStringLiteral("today"), RailPage::today},
                              {QStringLiteral("calendar"), RailPage::calendar},
                              {QStringLiteral("labour"), RailPage::labour},
                              {QStringLiteral("blocks"), RailPage::blocks},
                              {QStringLiteral("weather"), RailPage::weather},
                              {QStringLiteral("material"), RailPage::material},
                              {QStringLiteral("closing"), RailPage::closing},
                              {QStringLiteral("programme"), RailPage::programme},
                              {QStringLiteral("settings"), RailPage::settings}});
  if (!page) return tl::unexpected{page.error()};
  const auto size = sizeOption(parser, options.size);
  if (!size) return tl::unexpected{size.error()};
  options.today = *today;
  options.day = *day;
  options.theme = *theme;
  options.page = *page;
  options.size = *size;
  return options;
}

}  // namespace topwire
