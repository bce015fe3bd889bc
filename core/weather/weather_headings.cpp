#include "core/weather/weather_headings.h"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

namespace topwire {

namespace {

enum class Meaning {
  date,
  minimum,
  maximum,
  rain,
  forecast,
  station,
  name,
  attributes,
  temperature,
  celsius,
  fahrenheit,
  tenths,
  millimetres,
  inches,
  filler,
};

struct KnownWord {
  std::string_view word;
  Meaning meaning;
};

constexpr std::array knownWords{KnownWord{"date", Meaning::date},
                                KnownWord{"day", Meaning::date},
                                KnownWord{"datetime", Meaning::date},
                                KnownWord{"fecha", Meaning::date},
                                KnownWord{"dia", Meaning::date},
                                KnownWord{"min", Meaning::minimum},
                                KnownWord{"tmin", Meaning::minimum},
                                KnownWord{"tn", Meaning::minimum},
                                KnownWord{"minimum", Meaning::minimum},
                                KnownWord{"minima", Meaning::minimum},
                                KnownWord{"minimo", Meaning::minimum},
                                KnownWord{"low", Meaning::minimum},
                                KnownWord{"lowest", Meaning::minimum},
                                KnownWord{"max", Meaning::maximum},
                                KnownWord{"tmax", Meaning::maximum},
                                KnownWord{"tx", Meaning::maximum},
                                KnownWord{"maximum", Meaning::maximum},
                                KnownWord{"maxima", Meaning::maximum},
                                KnownWord{"maximo", Meaning::maximum},
                                KnownWord{"high", Meaning::maximum},
                                KnownWord{"highest", Meaning::maximum},
                                KnownWord{"rain", Meaning::rain},
                                KnownWord{"rainfall", Meaning::rain},
                                KnownWord{"precipitation", Meaning::rain},
                                KnownWord{"precip", Meaning::rain},
                                KnownWord{"prcp", Meaning::rain},
                                KnownWord{"ppt", Meaning::rain},
                                KnownWord{"lluvia", Meaning::rain},
                                KnownWord{"precipitacion", Meaning::rain},
                                KnownWord{"forecast", Meaning::forecast},
                                KnownWord{"pronostico", Meaning::forecast},
                                KnownWord{"prevision", Meaning::forecast},
                                KnownWord{"station", Meaning::station},
                                KnownWord{"estacion", Meaning::station},
                                KnownWord{"location", Meaning::station},
                                KnownWord{"site", Meaning::station},
                                KnownWord{"lugar", Meaning::station},
                                KnownWord{"name", Meaning::name},
                                KnownWord{"nombre", Meaning::name},
                                KnownWord{"attributes", Meaning::attributes},
                                KnownWord{"temp", Meaning::temperature},
                                KnownWord{"temperature", Meaning::temperature},
                                KnownWord{"temperatura", Meaning::temperature},
                                KnownWord{"t", Meaning::temperature},
                                KnownWord{"c", Meaning::celsius},
                                KnownWord{"celsius", Meaning::celsius},
                                KnownWord{"centigrade", Meaning::celsius},
                                KnownWord{"f", Meaning::fahrenheit},
                                KnownWord{"fahrenheit", Meaning::fahrenheit},
                                KnownWord{"tenths", Meaning::tenths},
                                KnownWord{"decimas", Meaning::tenths},
                                KnownWord{"mm", Meaning::millimetres},
                                KnownWord{"millimetres", Meaning::millimetres},
                                KnownWord{"millimeters", Meaning::millimetres},
                                KnownWord{"milimetros", Meaning::millimetres},
                                KnownWord{"in", Meaning::inches},
                                KnownWord{"inch", Meaning::inches},
                                KnownWord{"inches", Meaning::inches},
                                KnownWord{"pulgadas", Meaning::inches},
                                KnownWord{"air", Meaning::filler},
                                KnownWord{"aire", Meaning::filler},
                                KnownWord{"daily", Meaning::filler},
                                KnownWord{"diaria", Meaning::filler},
                                KnownWord{"diario", Meaning::filler},
                                KnownWord{"total", Meaning::filler},
                                KnownWord{"deg", Meaning::filler},
                                KnownWord{"degree", Meaning::filler},
                                KnownWord{"degrees", Meaning::filler},
                                KnownWord{"grado", Meaning::filler},
                                KnownWord{"grados", Meaning::filler},
                                KnownWord{"of", Meaning::filler},
                                KnownWord{"the", Meaning::filler},
                                KnownWord{"is", Meaning::filler},
                                KnownWord{"id", Meaning::filler},
                                KnownWord{"m", Meaning::filler},
                                KnownWord{"de", Meaning::filler},
                                KnownWord{"del", Meaning::filler},
                                KnownWord{"la", Meaning::filler},
                                KnownWord{"a", Meaning::filler}};

/// Longer than any heading; what is longer is text, and not looked at further.
constexpr std::size_t longestHeading = 80;

struct FoldedLetter {
  unsigned char latin1;
  char plain;
};

/// The accented letters of Spanish. In UTF-8 they are 0xC3 and the Latin-1 code less
/// 0x40.
constexpr std::array foldedLetters{FoldedLetter{0xe1, 'a'},
                                   FoldedLetter{0xe9, 'e'},
                                   FoldedLetter{0xed, 'i'},
                                   FoldedLetter{0xf3, 'o'},
                                   FoldedLetter{0xfa, 'u'},
                                   FoldedLetter{0xf1, 'n'},
                                   FoldedLetter{0xfc, 'u'}};

/// A blank for what is no letter. Capitals of Latin-1 lie 0x20 below, as those of ASCII.
char plainLetter(unsigned char latin1) {
  for (const auto& [code, plain] : foldedLetters) {
    if (latin1 == code) return plain;
    if (latin1 == code - 0x20) return static_cast<char>(plain - 0x20);
  }
  return ' ';
}

/// Splits into lower-case words without accents; "minTemp" is two.
std::vector<std::string> wordsOf(std::string_view heading) {
  std::vector<std::string> words(1);
  bool afterLower = false;
  for (std::size_t i = 0; i < heading.size(); ++i) {
    const auto byte = static_cast<unsigned char>(heading[i]);
    if (byte == 0xc2) continue;  // leads signs such as the degree's
    char letter = heading[i];
    if (byte == 0xc3 && i + 1 < heading.size())
      letter = plainLetter(
          static_cast<unsigned char>((static_cast<unsigned char>(heading[++i]) + 0x40U)));
    else if (byte >= 0x80)
      letter = plainLetter(byte);
    const bool capital = letter >= 'A' && letter <= 'Z';
    const bool lower = letter >= 'a' && letter <= 'z';
    if ((!capital && !lower) || (capital && afterLower)) words.emplace_back();
    if (capital || lower)
      words.back() += capital ? static_cast<char>(letter - 'A' + 'a') : letter;
    afterLower = lower;
  }
  std::erase(words, std::string{});
  return words;
}

std::optional<Meaning> meaningOf(std::string_view word) {
  const auto known = std::ranges::find(knownWords, word, &KnownWord::word);
  return known == knownWords.end() ? std::nullopt : std::optional{known->meaning};
}

/// The meanings in a heading; "tempmax" is taken apart into two known words.
class Meanings {
public:
  /// False where the word is not known.
  bool add(std::string_view word) {
    if (const auto meaning = meaningOf(word)) return note(*meaning);
    for (std::size_t i = 1; i < word.size(); ++i) {
      const auto first = meaningOf(word.substr(0, i));
      const auto second = meaningOf(word.substr(i));
      if (first && second) return note(*first) && note(*second);
    }
    return false;
  }

  bool has(Meaning meaning) const {
    return std::ranges::find(all_, meaning) != all_.end();
  }

private:
  bool note(Meaning meaning) {
    all_.push_back(meaning);
    return true;
  }

  std::vector<Meaning> all_;
};

std::optional<ColumnKind> kindOf(const Meanings& meanings) {
  const bool minimum = meanings.has(Meaning::minimum);
  const bool maximum = meanings.has(Meaning::maximum);
  if (minimum && maximum) return std::nullopt;
  if (meanings.has(Meaning::forecast)) {
    // "forecast max" is no mark, and a "forecast day" may be the day it was made on.
    const bool alone = !minimum && !maximum && !meanings.has(Meaning::rain)
                       && !meanings.has(Meaning::date);
    return alone ? std::optional{ColumnKind::forecast} : std::nullopt;
  }
  if (minimum) return ColumnKind::minimum;
  if (maximum) return ColumnKind::maximum;
  if (meanings.has(Meaning::temperature)) return std::nullopt;
  if (meanings.has(Meaning::rain)) return ColumnKind::rain;
  if (meanings.has(Meaning::name)) return ColumnKind::name;
  if (meanings.has(Meaning::station)) return ColumnKind::station;
  if (meanings.has(Meaning::date)) return ColumnKind::date;
  return std::nullopt;
}

std::optional<TemperatureUnit> temperatureUnitOf(const Meanings& meanings) {
  if (meanings.has(Meaning::tenths)) return TemperatureUnit::tenthsOfCelsius;
  if (meanings.has(Meaning::celsius)) return TemperatureUnit::celsius;
  if (meanings.has(Meaning::fahrenheit)) return TemperatureUnit::fahrenheit;
  return std::nullopt;
}

std::optional<RainUnit> rainUnitOf(const Meanings& meanings) {
  if (meanings.has(Meaning::tenths)) return RainUnit::tenthsOfMillimetres;
  if (meanings.has(Meaning::millimetres)) return RainUnit::millimetres;
  if (meanings.has(Meaning::inches)) return RainUnit::inches;
  return std::nullopt;
}

}  // namespace

std::optional<Heading> understand(std::string_view heading) {
  if (heading.size() > longestHeading) return std::nullopt;
  Meanings meanings;
  for (const std::string& word : wordsOf(heading))
    if (!meanings.add(word)) return std::nullopt;
  const auto kind = kindOf(meanings);
  if (!kind) return std::nullopt;
  Heading understood;
  understood.kind = *kind;
  understood.attributes = meanings.has(Meaning::attributes);
  if (*kind == ColumnKind::rain)
    understood.rainUnit = rainUnitOf(meanings);
  else
    understood.temperatureUnit = temperatureUnitOf(meanings);
  return understood;
}

}  // namespace topwire
