#include "core/calendar/clock_time.h"

namespace topwire {

namespace {

constexpr int minutesOfDay = 24 * 60;

std::string twoDigits(int number) {
  return (number < 10 ? "0" : "") + std::to_string(number);
}

/// One or two digits, nothing else.
std::optional<int> readDigits(std::string_view text) {
  if (text.empty() || text.size() > 2) return std::nullopt;
  int number = 0;
  for (const char c : text) {
    if (c < '0' || c > '9') return std::nullopt;
    number = number * 10 + (c - '0');
  }
  return number;
}

}  // namespace

std::string clockText(int minute) {
  return twoDigits(minute / 60) + ':' + twoDigits(minute % 60);
}

std::optional<int> parseClock(std::string_view text) {
  const auto colon = text.find(':');
  if (colon == std::string_view::npos || text.size() - colon != 3) return std::nullopt;
  const auto hours = readDigits(text.substr(0, colon));
  const auto minutes = readDigits(text.substr(colon + 1));
  if (!hours || !minutes || *minutes > 59) return std::nullopt;
  const int minute = *hours * 60 + *minutes;
  return minute <= minutesOfDay ? std::optional{minute} : std::nullopt;
}

}  // namespace topwire
