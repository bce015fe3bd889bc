#include "core/base/phrase.h"

#include <array>
#include <cstdio>
#include <utility>

namespace topwire {

namespace {

std::string longDay(Day day) {
  static constexpr std::array months{"January",
                                     "February",
                                     "March",
                                     "April",
                                     "May",
                                     "June",
                                     "July",
                                     "August",
                                     "September",
                                     "October",
                                     "November",
                                     "December"};
  const CivilDate c = civil(day);
  return std::to_string(static_cast<unsigned>(c.day())) + ' '
         + months[static_cast<unsigned>(c.month()) - 1] + ' '
         + std::to_string(static_cast<int>(c.year()));
}

struct EnglishValue {
  std::string operator()(const std::string& text) const { return text; }

  std::string operator()(std::int64_t number) const { return std::to_string(number); }

  std::string operator()(Figure figure) const {
    char text[64];
    std::snprintf(text, sizeof text, "%.*f", figure.decimals, figure.value);
    return text;
  }

  std::string operator()(Day day) const { return longDay(day); }

  std::string operator()(const Words& words) const { return words.en; }
};

}  // namespace

Sentence::Sentence(Phrase spoken, std::vector<Value> filledWith)
    : context(spoken.context), text(spoken.text), values(std::move(filledWith)) {}

std::string inEnglish(const Value& value) {
  return std::visit(EnglishValue{}, value);
}

std::string inEnglish(const Sentence& sentence) {
  std::vector<std::string> values;
  values.reserve(sentence.values.size());
  for (const Value& value : sentence.values) values.push_back(inEnglish(value));
  return fillIn(sentence.text, values);
}

std::string fillIn(const std::string& text, const std::vector<std::string>& values) {
  std::string filled;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool marked =
        text[i] == '%' && i + 1 < text.size() && text[i + 1] >= '1' && text[i + 1] <= '9';
    const std::size_t index = marked ? static_cast<std::size_t>(text[i + 1] - '1') : 0;
    if (marked && index < values.size()) {
      filled += values[index];
      ++i;
    } else {
      filled += text[i];
    }
  }
  return filled;
}

}  // namespace topwire
