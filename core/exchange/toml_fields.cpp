#include "core/exchange/toml_fields.h"

#include "core/exchange/nearest.h"

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

/// The library leads its descriptions with a fixed phrase that says nothing.
std::string whatIsWrong(const toml::parse_error& fault) {
  std::string_view text = fault.description();
  constexpr std::string_view lead = "Error while parsing ";
  if (text.starts_with(lead)) text.remove_prefix(lead.size());
  return std::string{text};
}

std::optional<Day> dayFrom(const toml::date& date) {
  const CivilDate civilDate{
      date::year{date.year}, date::month{date.month}, date::day{date.day}};
  return civilDate.ok() ? std::optional{Day{civilDate}} : std::nullopt;
}

std::optional<Length> lengthFrom(double number, UnitSystem units) {
  const double micrometres = number * (units == UnitSystem::metric ? 1e6 : 304'800);
  if (!(std::abs(micrometres) < 1e11)) return std::nullopt;
  return Length::micrometres(std::llround(micrometres));
}

Phrase phraseOf(RowFault::Kind kind) {
  switch (kind) {
    case RowFault::Kind::backwards:
      return phrase("Orchard file",
                    R"("%1" has the rows "%2" backwards; write the lower one first.)");
    case RowFault::Kind::outOfBounds:
      return phrase("Orchard file",
                    R"("%1" has the rows "%2"; row numbers go from 1 to 9999.)");
    case RowFault::Kind::twice:
      return phrase("Orchard file",
                    R"("%1" names rows of "%2" twice; name each row once.)");
    case RowFault::Kind::notRows:
      break;
  }
  return phrase("Orchard file",
                R"("%1" has "%2" where rows belong; write them like "1-12, 15".)");
}

}  // namespace

void FileFaults::add(int line, Sentence sentence) {
  found_.emplace_back(line, std::move(sentence));
}

Problems FileFaults::inOrder() const {
  auto sorted = found_;
  std::ranges::stable_sort(
      sorted, {}, [](const std::pair<int, Sentence>& fault) { return fault.first; });
  Problems problems;
  for (const auto& [line, sentence] : sorted)
    problems.push_back({sentence, file_ + ':' + std::to_string(line), {}});
  return problems;
}

std::optional<toml::table> parseToml(std::string_view text, FileFaults& faults) {
  try {
    return toml::parse(text);
  } catch (const toml::parse_error& fault) {
    faults.add(static_cast<int>(fault.source().begin.line),
               {phrase("Orchard file",
                       "This line is not TOML (%1); mend it and read the file again."),
                {whatIsWrong(fault)}});
    return std::nullopt;
  }
}

int TableFields::line() const {
  return static_cast<int>(table_->source().begin.line);
}

int TableFields::lineOf(std::string_view key) const {
  const toml::node* node = table_->get(key);
  return node == nullptr ? line() : static_cast<int>(node->source().begin.line);
}

void TableFields::fault(std::string_view key, Sentence sentence) {
  faulty_.emplace(key);
  faults_->add(lineOf(key), std::move(sentence));
}

const toml::node* TableFields::find(std::string_view key) {
  asked_.emplace(key);
  return table_->get(key);
}

void TableFields::missing(std::string_view key, std::string_view example) {
  fault(key,
        {phrase("Orchard file", "This %1 has no \"%2\"; add a line such as %2 = %3."),
         {title_, std::string{key}, std::string{example}}});
}

std::optional<std::string> TableFields::text(std::string_view key) {
  const toml::node* node = find(key);
  if (node == nullptr) return std::nullopt;
  if (auto text = node->value_exact<std::string>()) return text;
  fault(key,
        {phrase("Orchard file", "\"%1\" takes text; put what it says in quotes."),
         {std::string{key}}});
  return std::nullopt;
}

std::optional<int> TableFields::whole(std::string_view key, int least, int most) {
  const toml::node* node = find(key);
  if (node == nullptr) return std::nullopt;
  const auto number = node->value_exact<std::int64_t>();
  if (number && *number >= least && *number <= most) return static_cast<int>(*number);
  fault(key,
        {phrase("Orchard file", "\"%1\" takes a whole number from %2 to %3."),
         {std::string{key}, std::int64_t{least}, std::int64_t{most}}});
  return std::nullopt;
}

std::optional<double> TableFields::number(std::string_view key) {
  const toml::node* node = find(key);
  if (node == nullptr) return std::nullopt;
  const auto number = node->is_number() ? node->value<double>() : std::nullopt;
  if (number && std::isfinite(*number)) return number;
  fault(key,
        {phrase("Orchard file", "\"%1\" takes a number, without quotes."),
         {std::string{key}}});
  return std::nullopt;
}

std::optional<Day> TableFields::day(std::string_view key) {
  const toml::node* node = find(key);
  if (node == nullptr) return std::nullopt;
  const auto text = node->value_exact<std::string>();
  const auto date = node->value_exact<toml::date>();
  const auto day = text ? parseDay(*text) : date ? dayFrom(*date) : std::nullopt;
  if (day) return day;
  fault(key,
        {text ? phrase("Orchard file",
                       "\"%1\" is \"%2\", which is no day of the calendar; write one "
                       "that is, like 2027-04-14.")
              : phrase("Orchard file", "\"%1\" takes a day, written like 2027-04-14."),
         {std::string{key}, text.value_or("")}});
  return std::nullopt;
}

std::optional<Length> TableFields::length(std::string_view key, UnitSystem units) {
  const toml::node* node = find(key);
  if (node == nullptr) return std::nullopt;
  const auto text = node->value_exact<std::string>();
  const auto number = node->is_number() ? node->value<double>() : std::nullopt;
  const auto length = text     ? parseLength(*text, units)
                      : number ? lengthFrom(*number, units)
                               : std::nullopt;
  if (length) return length;
  fault(key,
        {phrase("Orchard file",
                R"("%1" takes a length, such as "11 ft", "36 in" or "0.9 m".)"),
         {std::string{key}}});
  return std::nullopt;
}

std::optional<std::size_t> TableFields::choice(std::string_view key,
                                               const std::vector<std::string>& names) {
  const auto chosen = text(key);
  if (!chosen) return std::nullopt;
  const auto found = std::ranges::find(names, *chosen);
  if (found != names.end()) return static_cast<std::size_t>(found - names.begin());
  std::string list;
  for (const std::string& name : names) list += (list.empty() ? "" : ", ") + name;
  fault(key,
        {phrase("Orchard file", R"("%1" is "%2"; it takes one of: %3.)"),
         {std::string{key}, *chosen, list}});
  return std::nullopt;
}

void TableFields::notRows(std::string_view key, const RowFault& rowFault) {
  fault(key, {phraseOf(rowFault.kind), {std::string{key}, rowFault.part}});
}

std::optional<RowSet> TableFields::rows(std::string_view key) {
  const toml::node* node = find(key);
  if (node == nullptr) return std::nullopt;
  const auto number = node->value_exact<std::int64_t>();
  const auto text =
      number ? std::to_string(*number) : node->value_exact<std::string>().value_or("");
  const ParsedRows read = parseRows(text);
  if (!read.fault && !read.rows.empty()) return read.rows;
  notRows(key, read.fault.value_or(RowFault{RowFault::Kind::notRows, text}));
  return std::nullopt;
}

std::vector<double> TableFields::numbers(std::string_view key) {
  const toml::node* node = find(key);
  if (node == nullptr) return {};
  std::vector<double> all;
  if (const toml::array* array = node->as_array()) {
    for (const toml::node& element : *array)
      if (element.is_number()) all.push_back(element.value<double>().value_or(0));
    if (all.size() == array->size()) return all;
  }
  fault(key,
        {phrase("Orchard file", "\"%1\" takes numbers in square brackets."),
         {std::string{key}}});
  return {};
}

std::vector<std::string> TableFields::texts(std::string_view key) {
  const toml::node* node = find(key);
  if (node == nullptr) return {};
  std::vector<std::string> all;
  if (const toml::array* array = node->as_array()) {
    for (const toml::node& element : *array)
      if (auto text = element.value_exact<std::string>()) all.push_back(std::move(*text));
    if (all.size() == array->size()) return all;
  }
  fault(key,
        {phrase("Orchard file", "\"%1\" takes texts in square brackets, each in quotes."),
         {std::string{key}}});
  return {};
}

std::vector<const toml::table*> TableFields::tables(std::string_view key) {
  const toml::node* node = find(key);
  if (node == nullptr) return {};
  std::vector<const toml::table*> all;
  if (const toml::array* array = node->as_array()) {
    for (const toml::node& element : *array)
      if (const toml::table* table = element.as_table()) all.push_back(table);
    if (all.size() == array->size()) return all;
  }
  fault(key,
        {phrase("Orchard file",
                "\"%1\" is a list of tables; head each with [[%1]], in two brackets."),
         {std::string{key}}});
  return {};
}

const toml::table* TableFields::oneTable(std::string_view key) {
  const toml::node* node = find(key);
  if (node == nullptr) return nullptr;
  if (const toml::table* table = node->as_table()) return table;
  fault(key,
        {phrase("Orchard file", "\"%1\" is one table; head it with [%1]."),
         {std::string{key}}});
  return nullptr;
}

void TableFields::refuseOthers() {
  const std::vector<std::string> known{asked_.begin(), asked_.end()};
  for (const auto& [key, node] : *table_) {
    const std::string name{key.str()};
    if (asked_.contains(name)) continue;
    const std::string nearest = nearestName(name, known);
    faulty_.insert(nearest.empty() ? name : nearest);
    const int at = static_cast<int>(key.source().begin.line);
    if (nearest.empty())
      faults_->add(
          at,
          {phrase("Orchard file", "\"%2\" is no field of this %1; take the line out."),
           {title_, name}});
    else
      faults_->add(at,
                   {phrase("Orchard file", R"("%2" is no field of this %1; write "%3".)"),
                    {title_, name, nearest}});
  }
}

}  // namespace topwire
