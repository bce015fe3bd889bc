#include "app/console/output.h"

#include "app/words/say.h"

namespace topwire {

std::string tableIn(Format format, const Table& table) {
  switch (format) {
    case Format::csv:
      return toCsv(table);
    case Format::json:
      return toJson(table);
    case Format::text:
      break;
  }
  return toText(table);
}

std::string spoken(const Sentence& sentence, Language language) {
  if (language == Language::english) return inEnglish(sentence);
  static const Voice spanish{Language::spanish, QLocale{QLocale::Spanish}};
  return spanish.say(sentence).toStdString();
}

}  // namespace topwire
