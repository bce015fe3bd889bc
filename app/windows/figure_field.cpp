#include "app/windows/figure_field.h"

#include <QLocale>

#include <cmath>

namespace topwire {

namespace {

constexpr int minutesPerHour = 60;
constexpr double mostHours = 10'000;

std::optional<double> readFigure(const QString& text) {
  bool read = false;
  const double local = QLocale{}.toDouble(text, &read);
  if (read) return local;
  const double plain = QLocale::c().toDouble(text, &read);
  return read ? std::optional{plain} : std::nullopt;
}

}  // namespace

std::optional<int> readHours(const QString& text) {
  const auto hours = readFigure(text.trimmed());
  if (!hours || !(*hours >= 0) || *hours > mostHours) return std::nullopt;
  return static_cast<int>(std::lround(*hours * minutesPerHour));
}

Sentence noHoursSentence(const QString& text) {
  return {phrase("TickPanel", "“%1” is no number of hours. Write it like %2."),
          {text.toStdString(), QLocale{}.toString(4.5, 'f', 1).toStdString()}};
}

}  // namespace topwire
