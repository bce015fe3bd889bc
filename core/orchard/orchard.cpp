#include "core/orchard/orchard.h"

#include "core/base/contract.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <tuple>
#include <utility>

namespace topwire {

namespace {

bool isDigit(char c) {
  return c >= '0' && c <= '9';
}

char lower(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

/// Takes the digits off the front; leading zeros do not count.
std::string_view takeNumber(std::string_view& text) {
  std::size_t length = 0;
  while (length < text.size() && isDigit(text[length])) ++length;
  std::string_view number = text.substr(0, length);
  text.remove_prefix(length);
  number.remove_prefix(std::min(number.find_first_not_of('0'), number.size()));
  return number;
}

/// Numbers inside names compare as numbers, however long; capitals do not count.
bool comesBefore(std::string_view one, std::string_view other) {
  while (!one.empty() && !other.empty()) {
    if (isDigit(one.front()) && isDigit(other.front())) {
      const std::string_view left = takeNumber(one);
      const std::string_view right = takeNumber(other);
      if (left.size() != right.size()) return left.size() < right.size();
      if (left != right) return left < right;
      continue;
    }
    const auto left = static_cast<unsigned char>(lower(one.front()));
    const auto right = static_cast<unsigned char>(lower(other.front()));
    if (left != right) return left < right;
    one.remove_prefix(1);
    other.remove_prefix(1);
  }
  return one.empty() && !other.empty();
}

/// The plain letters for the accented ones of Western and Central Europe (UTF-8).
constexpr std::array<std::pair<std::string_view, std::string_view>, 56> plainLetters{
    {{"à", "a"},  {"á", "a"}, {"â", "a"}, {"ã", "a"}, {"ä", "a"},  {"å", "a"},
     {"æ", "ae"}, {"ç", "c"}, {"è", "e"}, {"é", "e"}, {"ê", "e"},  {"ë", "e"},
     {"ì", "i"},  {"í", "i"}, {"î", "i"}, {"ï", "i"}, {"ñ", "n"},  {"ò", "o"},
     {"ó", "o"},  {"ô", "o"}, {"õ", "o"}, {"ö", "o"}, {"ø", "o"},  {"ù", "u"},
     {"ú", "u"},  {"û", "u"}, {"ü", "u"}, {"ý", "y"}, {"À", "a"},  {"Á", "a"},
     {"Â", "a"},  {"Ã", "a"}, {"Ä", "a"}, {"Å", "a"}, {"Æ", "ae"}, {"Ç", "c"},
     {"È", "e"},  {"É", "e"}, {"Ê", "e"}, {"Ë", "e"}, {"Ì", "i"},  {"Í", "i"},
     {"Î", "i"},  {"Ï", "i"}, {"Ñ", "n"}, {"Ò", "o"}, {"Ó", "o"},  {"Ô", "o"},
     {"Õ", "o"},  {"Ö", "o"}, {"Ø", "o"}, {"Ù", "u"}, {"Ú", "u"},  {"Û", "u"},
     {"Ü", "u"},  {"ß", "ss"}}};

/// Lower-case letters and digits, everything between them as single hyphens.
std::string codeText(std::string_view name) {
  std::string code;
  while (!name.empty()) {
    const auto* accented = std::ranges::find_if(
        plainLetters, [name](const auto& pair) { return name.starts_with(pair.first); });
    if (accented != plainLetters.end()) {
      code += accented->second;
      name.remove_prefix(accented->first.size());
      continue;
    }
    const char c = lower(name.front());
    name.remove_prefix(1);
    if (isDigit(c) || (c >= 'a' && c <= 'z'))
      code += c;
    else if (!code.empty() && code.back() != '-')
      code += '-';
  }
  while (!code.empty() && code.back() == '-') code.pop_back();
  return code;
}

auto placeInBlock(const Planting& planting) {
  const int firstRow = planting.rows.empty() ? 0 : planting.rows.first();
  return std::tuple{planting.kind, firstRow, planting.id};
}

/// Trees of replants that stand in this planting's rows.
double replantedIn(const Orchard& orchard, const Planting& host) {
  double trees = 0;
  for (const auto& [id, other] : orchard.plantings) {
    if (other.block != host.block || other.kind != PlantingKind::replant) continue;
    const int shared = other.rows.inCommonWith(host.rows).count();
    if (shared > 0) trees += placesPerRow(orchard, other) * shared;
  }
  return trees;
}

}  // namespace

std::vector<const Block*> blocksInOrder(const Orchard& orchard) {
  std::vector<const Block*> blocks;
  blocks.reserve(orchard.blocks.size());
  for (const auto& [id, block] : orchard.blocks) blocks.push_back(&block);
  std::ranges::stable_sort(blocks, comesBefore, &Block::name);
  return blocks;
}

std::vector<const Crew*> crewsInOrder(const Orchard& orchard) {
  std::vector<const Crew*> crews;
  crews.reserve(orchard.crews.size());
  for (const auto& [id, crew] : orchard.crews) crews.push_back(&crew);
  std::ranges::stable_sort(crews, comesBefore, &Crew::name);
  return crews;
}

std::vector<const Planting*> plantingsOf(const Orchard& orchard, BlockId block) {
  std::vector<const Planting*> plantings;
  for (const auto& [id, planting] : orchard.plantings)
    if (planting.block == block) plantings.push_back(&planting);
  std::ranges::sort(
      plantings, {}, [](const Planting* planting) { return placeInBlock(*planting); });
  return plantings;
}

const Planting* plantingByCode(const Orchard& orchard, std::string_view code) {
  const auto found = std::ranges::find_if(
      orchard.plantings, [code](const auto& entry) { return entry.second.code == code; });
  return found == orchard.plantings.end() ? nullptr : &found->second;
}

const Block* blockByName(const Orchard& orchard, std::string_view name) {
  const auto found = std::ranges::find_if(
      orchard.blocks, [name](const auto& entry) { return entry.second.name == name; });
  return found == orchard.blocks.end() ? nullptr : &found->second;
}

const Block& blockOf(const Orchard& orchard, const Planting& planting) {
  const auto found = orchard.blocks.find(planting.block);
  TOPWIRE_REQUIRE(found != orchard.blocks.end());
  return found->second;
}

std::vector<std::string> placeNames(const Orchard& orchard,
                                    const std::vector<PlantingId>& plantings) {
  std::vector<std::string> names;
  for (const Block* block : blocksInOrder(orchard)) {
    std::string cultivars;
    bool whole = true;
    for (const Planting* planting : plantingsOf(orchard, block->id)) {
      const bool meant = std::ranges::find(plantings, planting->id) != plantings.end();
      if (meant) cultivars += (cultivars.empty() ? "" : ", ") + planting->cultivar;
      whole = whole && meant;
    }
    if (cultivars.empty()) continue;
    names.push_back(whole ? block->name : block->name + " (" + cultivars + ')');
  }
  return names;
}

double placesPerRow(const Orchard& orchard, const Planting& planting) {
  if (planting.trees) {
    const int rows = planting.rows.count();
    return rows == 0 ? 0 : static_cast<double>(*planting.trees) / rows;
  }
  if (planting.treesPerRow) return *planting.treesPerRow;
  const auto rowLength = blockOf(orchard, planting).rowLength;
  if (!rowLength || planting.treeSpacing <= Length{}) return 0;
  const std::int64_t wholeSpacings =
      rowLength->inMicrometres() / planting.treeSpacing.inMicrometres();
  return static_cast<double>(wholeSpacings);
}

double treesPerRow(const Orchard& orchard, const Planting& planting) {
  const int rows = planting.rows.count();
  const double places = placesPerRow(orchard, planting);
  if (rows == 0 || planting.kind == PlantingKind::replant) return places;
  return std::max(0.0, places - replantedIn(orchard, planting) / rows);
}

int treesIn(const Orchard& orchard, const Planting& planting) {
  const double trees = treesPerRow(orchard, planting) * planting.rows.count();
  return static_cast<int>(std::lround(trees));
}

Length elevationOf(const Orchard& orchard, const Planting& planting) {
  return blockOf(orchard, planting).elevation.value_or(orchard.settings.elevation);
}

int leafOf(const Orchard& orchard, const Planting& planting, Season season) {
  return leafIn(season, planting.planted, orchard.settings.hemisphere());
}

bool hasRecords(const Orchard& orchard, PlantingId planting) {
  const auto isAbout = [planting](const auto& entry) {
    return entry.second.task.planting == planting;
  };
  const auto isOf = [planting](const auto& entry) {
    return entry.second.planting == planting;
  };
  const auto isSettledFor = [planting](const auto& entry) {
    return entry.first.planting == planting;
  };
  return std::ranges::any_of(orchard.ticks, isAbout)
         || std::ranges::any_of(orchard.marks, isAbout)
         || std::ranges::any_of(orchard.observations, isOf)
         || std::ranges::any_of(orchard.measurements, isOf)
         || std::ranges::any_of(orchard.targets, isSettledFor);
}

const WeatherDay* weatherOn(const Orchard& orchard, Day day) {
  const auto month = orchard.weather.find(monthOf(day));
  if (month == orchard.weather.end()) return nullptr;
  const auto& held = month->second.on(day);
  return held ? &*held : nullptr;
}

std::string freshCode(const Orchard& orchard,
                      std::string_view blockName,
                      std::string_view cultivar) {
  std::string stem = codeText(blockName);
  const std::string fruit = codeText(cultivar);
  if (!stem.empty() && !fruit.empty()) stem += '-';
  stem += fruit;
  if (stem.empty()) stem = "planting";
  std::string code = stem;
  for (int number = 2; plantingByCode(orchard, code) != nullptr; ++number)
    code = stem + '-' + std::to_string(number);
  return code;
}

}  // namespace topwire
