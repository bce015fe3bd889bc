#pragma once

#include "core/calendar/day.h"

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

namespace topwire {

enum class Language { english, spanish };

/// The same words in each language Topwire speaks; names and instructions in a programme.
struct Words {
  std::string en;
  std::string es;

  const std::string& in(Language language) const {
    return language == Language::spanish ? es : en;
  }

  friend bool operator==(const Words&, const Words&) = default;
};

/// An English sentence as it stands in the source, with %1 to %9 where values go. Kept
/// apart from its values so that the window can look it up in another language.
struct Phrase {
  const char* context;
  const char* text;
};

/// Written as a call so that the translation tools find it.
constexpr Phrase phrase(const char* context, const char* text) {
  return {context, text};
}

/// A number shown with a fixed count of decimals.
struct Figure {
  double value;
  int decimals;

  friend bool operator==(const Figure&, const Figure&) = default;
};

/// What may stand in a sentence; each is written in the reader's language and locale.
using Value = std::variant<std::string, std::int64_t, Figure, Day, Words>;

/// A phrase with its values: what core says to a person. Data, so that it can be stored
/// in the journal and spoken in whichever language the reader has chosen.
struct Sentence {
  std::string context;
  std::string text;
  std::vector<Value> values;

  Sentence() = default;
  // NOLINTNEXTLINE(google-explicit-constructor): a phrase alone is a whole sentence.
  Sentence(Phrase spoken, std::vector<Value> filledWith = {});
  friend bool operator==(const Sentence&, const Sentence&) = default;
};

/// `one` when the count is 1, else `many`. English and Spanish need no more forms.
constexpr Phrase counted(std::int64_t count, Phrase one, Phrase many) {
  return count == 1 ? one : many;
}

/// The sentence in English: days as "6 April 2027", figures with a point.
std::string inEnglish(const Sentence& sentence);
std::string inEnglish(const Value& value);

/// `text` with each %1 to %9 replaced by the matching element of `values`; a placeholder
/// without a value stays as it is.
std::string fillIn(const std::string& text, const std::vector<std::string>& values);

}  // namespace topwire
