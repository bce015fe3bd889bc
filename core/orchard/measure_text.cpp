#include "core/orchard/measure_text.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>

namespace topwire {

namespace {

struct Named {
  Measure measure;
  const char* code;
  Words name;
};

const std::array<Named, 8>& named() {
  static const std::array<Named, 8> all{{
      {Measure::trunkDiameter,
       "trunk-diameter",
       {"trunk diameter", "diámetro del tronco"}},
      {Measure::trunkGirth, "trunk-girth", {"trunk girth", "contorno del tronco"}},
      {Measure::leaderHeight, "leader-height", {"leader height", "altura de la guía"}},
      {Measure::leaderGrowth,
       "leader-growth",
       {"leader growth", "crecimiento de la guía"}},
      {Measure::shootGrowth,
       "shoot-growth",
       {"shoot growth", "crecimiento de los brotes"}},
      {Measure::fruitPerTree, "fruit-per-tree", {"fruit per tree", "frutas por árbol"}},
      {Measure::spaceFilled, "space-filled", {"space filled", "espacio ocupado"}},
      {Measure::missingTrees, "missing-trees", {"missing trees", "árboles faltantes"}},
  }};
  return all;
}

struct Unit {
  const char* text;
  double size;  ///< in what is kept
  int decimals;
};

constexpr Unit millimetre{"mm", 1'000, 1};
constexpr Unit centimetre{"cm", 10'000, 0};
constexpr Unit metre{"m", 1'000'000, 2};
constexpr Unit inch{"in", 25'400, 2};
constexpr Unit inchOfGrowth{"in", 25'400, 1};
constexpr Unit foot{"ft", 304'800, 1};
constexpr Unit count{"", 1, 1};
constexpr Unit percent{"%", 1, 0};

Unit unitOf(Measure measure, UnitSystem units) {
  const bool metric = units == UnitSystem::metric;
  switch (measure) {
    case Measure::trunkDiameter:
    case Measure::trunkGirth:
      return metric ? millimetre : inch;
    case Measure::leaderHeight:
      return metric ? metre : foot;
    case Measure::leaderGrowth:
    case Measure::shootGrowth:
      return metric ? centimetre : inchOfGrowth;
    case Measure::spaceFilled:
      return percent;
    case Measure::fruitPerTree:
    case Measure::missingTrees:
      break;
  }
  return count;
}

/// What may stand behind a number; longer names before those they begin with.
struct TypedUnit {
  std::string_view name;
  double size;
};

constexpr TypedUnit lengthUnits[] = {{"mm", 1'000},
                                     {"cm", 10'000},
                                     {"m", 1'000'000},
                                     {"inches", 25'400},
                                     {"inch", 25'400},
                                     {"in", 25'400},
                                     {"pulg", 25'400},
                                     {"\"", 25'400},
                                     {"feet", 304'800},
                                     {"foot", 304'800},
                                     {"ft", 304'800},
                                     {"pies", 304'800},
                                     {"pie", 304'800},
                                     {"'", 304'800}};
constexpr TypedUnit percentUnits[] = {{"%", 1}};

std::span<const TypedUnit> unitsFor(Measure measure) {
  if (isLength(measure)) return lengthUnits;
  if (measure == Measure::spaceFilled) return percentUnits;
  return {};
}

bool isDigit(char c) {
  return c >= '0' && c <= '9';
}

bool isBlank(char c) {
  return std::isspace(static_cast<unsigned char>(c)) != 0;
}

struct Term {
  double number = 0;
  double unit = 0;       ///< 0 where none is typed
  bool follows = false;  ///< with only blanks between it and the term before
};

/// Takes the text apart into numbers with their units.
class Lexer {
public:
  Lexer(std::string_view text, std::span<const TypedUnit> units)
      : text_(text), units_(units) {}

  /// Nothing where something else stands in it; `rest` is what could not be read.
  std::optional<std::vector<Term>> terms() {
    std::vector<Term> all;
    bool follows = skipBetween();
    while (!text_.empty()) {
      auto number = takeNumber();
      if (!number) return std::nullopt;
      const double unit = takeUnit();
      all.push_back({*number, unit, follows && !all.empty()});
      if (!text_.empty() && !isBetween(text_.front()) && !isDigit(text_.front()))
        return std::nullopt;
      follows = skipBetween();
    }
    return all;
  }

  std::string rest() const {
    const auto end = std::ranges::find_if(text_, isBetween);
    return {text_.begin(), end};
  }

private:
  static bool isBetween(char c) { return isBlank(c) || c == ',' || c == ';'; }

  /// Whether there were but blanks.
  bool skipBetween() {
    bool onlyBlanks = true;
    while (!text_.empty() && isBetween(text_.front())) {
      onlyBlanks = onlyBlanks && text_.front() != ',' && text_.front() != ';'
                   && text_.front() != '\n';
      text_.remove_prefix(1);
    }
    return onlyBlanks;
  }

  std::optional<std::int64_t> takeWhole() {
    std::size_t length = 0;
    while (length < text_.size() && isDigit(text_[length])) ++length;
    if (length == 0 || length > 9) return std::nullopt;
    std::int64_t value = 0;
    for (const char c : text_.substr(0, length)) value = value * 10 + (c - '0');
    text_.remove_prefix(length);
    return value;
  }

  /// Where the point or comma of the number at the front stands; 0 for none. A run with
  /// several commas, or with points and commas, is a list to its end.
  std::size_t decimalMark() {
    std::size_t length = 0;
    while (length < text_.size()
           && (isDigit(text_[length]) || text_[length] == '.' || text_[length] == ','))
      ++length;
    std::string_view run = text_.substr(0, length);
    while (!run.empty() && !isDigit(run.back())) run.remove_suffix(1);
    const auto commas = std::ranges::count(run, ',');
    const bool mixed = commas > 0 && run.find('.') != std::string_view::npos;
    const bool inList = text_.size() > listEnd_;
    if (commas > 1 || mixed) listEnd_ = std::min(listEnd_, text_.size() - run.size());
    const bool isList = inList || commas > 1 || mixed;
    const auto at = run.find(isList ? '.' : commas == 1 ? ',' : '.');
    return at == std::string_view::npos || run.find(',') < at ? 0 : at;
  }

  std::optional<double> takeNumber() {
    const std::size_t mark = decimalMark();
    const auto whole = takeWhole();
    if (!whole) return std::nullopt;
    if (mark > 0) return takeDecimals(static_cast<double>(*whole));
    if (!text_.empty() && text_.front() == '/') return takeDivisor(*whole);
    return static_cast<double>(*whole) + takeFraction();
  }

  std::optional<double> takeDecimals(double whole) {
    text_.remove_prefix(1);
    const std::size_t before = text_.size();
    const auto decimals = takeWhole();
    if (!decimals) return std::nullopt;
    const auto places = static_cast<int>(before - text_.size());
    return whole + static_cast<double>(*decimals) / std::pow(10, places);
  }

  std::optional<double> takeDivisor(std::int64_t dividend) {
    text_.remove_prefix(1);
    const auto divisor = takeWhole();
    if (!divisor || *divisor == 0) return std::nullopt;
    return static_cast<double>(dividend) / static_cast<double>(*divisor);
  }

  /// The 5/8 of 1 5/8; 0 where no proper fraction follows.
  double takeFraction() {
    const std::string_view before = text_;
    while (!text_.empty() && text_.front() == ' ') text_.remove_prefix(1);
    const auto dividend = text_ == before ? std::nullopt : takeWhole();
    if (dividend && !text_.empty() && text_.front() == '/') {
      const auto value = takeDivisor(*dividend);
      if (value && *value < 1) return *value;
    }
    text_ = before;
    return 0;
  }

  double takeUnit() {
    const std::string_view before = text_;
    while (!text_.empty() && text_.front() == ' ') text_.remove_prefix(1);
    for (const TypedUnit& unit : units_) {
      if (!text_.starts_with(unit.name)) continue;
      const std::string_view after = text_.substr(unit.name.size());
      if (!after.empty() && std::isalpha(static_cast<unsigned char>(after.front())) != 0)
        continue;
      text_ = after;
      if (text_.starts_with('.') && unit.size > 1) text_.remove_prefix(1);
      return unit.size;
    }
    text_ = before;
    return 0;
  }

  std::string_view text_;
  std::span<const TypedUnit> units_;
  /// How much of the text is left where the list being read ends.
  std::size_t listEnd_ = std::string_view::npos;
};

/// A unit holds for the bare numbers before it, the last one for those after it, too.
void fillUnits(std::vector<Term>& terms, double usual) {
  double unit = 0;
  for (auto term = terms.rbegin(); term != terms.rend(); ++term)
    if (term->unit > 0)
      unit = term->unit;
    else
      term->unit = unit;
  unit = usual;
  for (Term& term : terms)
    if (term.unit > 0)
      unit = term.unit;
    else
      term.unit = unit;
}

/// Feet and the inches right behind them are one length.
std::vector<std::int64_t> valuesOf(const std::vector<Term>& terms) {
  std::vector<std::int64_t> values;
  bool afterFeet = false;
  for (const Term& term : terms) {
    const std::int64_t value = std::llround(term.number * term.unit);
    if (afterFeet && term.follows && term.unit == inch.size)
      values.back() += value;
    else
      values.push_back(value);
    afterFeet = term.unit == foot.size && !(afterFeet && term.follows);
  }
  return values;
}

Sentence unreadable(Measure measure, const std::string& rest) {
  if (isLength(measure))
    return {phrase("Measure",
                   "\"%1\" can't be read as lengths; type them like 38 36 41 mm, or like "
                   "1 1/2, 1 5/8 in."),
            {rest}};
  return {phrase("Measure",
                 "\"%1\" can't be read as whole numbers; type them like 28 31 25."),
          {rest}};
}

std::string trimmed(double value, int decimals) {
  std::string text = inEnglish(Value{Figure{value, decimals}});
  if (decimals == 0) return text;
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text;
}

}  // namespace

std::span<const Measure> allMeasures() {
  static constexpr std::array all{Measure::trunkDiameter,
                                  Measure::trunkGirth,
                                  Measure::leaderHeight,
                                  Measure::leaderGrowth,
                                  Measure::shootGrowth,
                                  Measure::fruitPerTree,
                                  Measure::spaceFilled,
                                  Measure::missingTrees};
  return all;
}

std::string codeOf(Measure measure) {
  return std::ranges::find(named(), measure, &Named::measure)->code;
}

std::optional<Measure> measureByCode(std::string_view code) {
  for (const Named& each : named())
    if (each.code == code) return each.measure;
  return std::nullopt;
}

Words nameOf(Measure measure) {
  return std::ranges::find(named(), measure, &Named::measure)->name;
}

bool isLength(Measure measure) {
  switch (measure) {
    case Measure::fruitPerTree:
    case Measure::spaceFilled:
    case Measure::missingTrees:
      return false;
    default:
      return true;
  }
}

Result<std::vector<std::int64_t>> readMeasured(std::string_view text,
                                               Measure measure,
                                               UnitSystem units) {
  Lexer lexer{text, unitsFor(measure)};
  auto terms = lexer.terms();
  if (!terms) return refuse(unreadable(measure, lexer.rest()), "values");
  fillUnits(*terms, unitOf(measure, units).size);
  for (const Term& term : *terms)
    if (!isLength(measure) && term.number != std::floor(term.number))
      return refuse(unreadable(measure, trimmed(term.number, 2)), "values");
  return valuesOf(*terms);
}

std::string measuredText(double value, Measure measure, UnitSystem units) {
  const Unit unit = unitOf(measure, units);
  const std::string number = trimmed(value / unit.size, unit.decimals);
  return unit.text[0] == '\0' ? number : number + ' ' + unit.text;
}

double shownValue(double value, Measure measure, UnitSystem units) {
  return value / unitOf(measure, units).size;
}

std::string unitText(Measure measure, UnitSystem units) {
  return unitOf(measure, units).text;
}

}  // namespace topwire
