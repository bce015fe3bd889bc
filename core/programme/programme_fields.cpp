#include "core/programme/programme_fields.h"

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

bool blank(std::string_view text) {
  return text.find_first_not_of(" \t\n") == std::string_view::npos;
}

}  // namespace

const toml::node* ProgrammeFields::node(std::string_view key) {
  asked_.emplace(key);
  return table_->get(key);
}

std::optional<std::string> ProgrammeFields::text(std::string_view key) {
  const toml::node* found = node(key);
  if (found == nullptr) return std::nullopt;
  auto value = found->value_exact<std::string>();
  if (!value) {
    fault(key, phrase("Programme", "In %1, %2 is not text; put it in quotes."));
    return std::nullopt;
  }
  if (!blank(*value)) return value;
  fault(key, phrase("Programme", "In %1, %2 is empty; fill it in or take it out."));
  return std::nullopt;
}

std::optional<int> ProgrammeFields::whole(std::string_view key, int least, int most) {
  const toml::node* found = node(key);
  if (found == nullptr) return std::nullopt;
  const auto value = found->value_exact<std::int64_t>();
  if (!value) {
    fault(key,
          phrase("Programme",
                 "In %1, %2 is not a whole number; write it without quotes or a point."));
    return std::nullopt;
  }
  if (*value >= least && *value <= most) return static_cast<int>(*value);
  fault(key,
        phrase("Programme", "In %1, %2 is %3; write a number from %4 to %5."),
        {*value, std::int64_t{least}, std::int64_t{most}});
  return std::nullopt;
}

std::optional<double> ProgrammeFields::positive(std::string_view key) {
  const toml::node* found = node(key);
  if (found == nullptr) return std::nullopt;
  const auto value =
      found->is_number() ? found->value<double>() : std::optional<double>{};
  if (value && std::isfinite(*value) && *value > 0) return value;
  fault(key,
        phrase("Programme",
               "In %1, %2 is not a number above zero; write it without quotes, such as "
               "0.5."));
  return std::nullopt;
}

/// A bare number would be read by whichever unit is in use, so two readings that differ
/// tell that the unit is missing.
std::optional<Length> ProgrammeFields::length(std::string_view key) {
  const auto written = text(key);
  if (!written) return std::nullopt;
  const auto metric = parseLength(*written, UnitSystem::metric);
  const bool unitGiven = metric == parseLength(*written, UnitSystem::usCustomary);
  if (metric && unitGiven && *metric > Length{}) return metric;
  fault(key,
        phrase("Programme",
               "In %1, %2 says “%3”, which is no length with its unit; write it like "
               "\"15 in\", \"10 ft\" or \"38 cm\"."),
        {*written});
  return std::nullopt;
}

std::optional<bool> ProgrammeFields::flag(std::string_view key) {
  const toml::node* found = node(key);
  if (found == nullptr) return std::nullopt;
  const auto value = found->value_exact<bool>();
  if (!value)
    fault(key,
          phrase("Programme",
                 "In %1, %2 is neither true nor false; write one of them without "
                 "quotes."));
  return value;
}

std::vector<std::string> ProgrammeFields::texts(std::string_view key) {
  const toml::node* found = node(key);
  if (found == nullptr) return {};
  if (const auto one = found->value_exact<std::string>(); one && !blank(*one))
    return {*one};
  std::vector<std::string> all;
  if (const toml::array* list = found->as_array())
    for (const toml::node& entry : *list)
      if (const auto value = entry.value_exact<std::string>(); value && !blank(*value))
        all.push_back(*value);
  const toml::array* list = found->as_array();
  if (list != nullptr && !list->empty() && all.size() == list->size()) return all;
  fault(key,
        phrase("Programme",
               "In %1, %2 is not a list of texts; write each in quotes, all of them in "
               "square brackets."));
  return {};
}

std::string ProgrammeFields::spoken(std::string_view language) {
  const toml::node* found = node(language);
  const auto value =
      found == nullptr ? std::optional<std::string>{} : found->value_exact<std::string>();
  if (found != nullptr && !value) return text(language).value_or("");
  if (value && !blank(*value)) return *value;
  fault(language,
        phrase("Programme",
               "In %1, %2 has no words; sheets are printed in English and in Spanish, "
               "so write both."));
  return {};
}

std::optional<Words> ProgrammeFields::words(std::string_view key) {
  if (node(key) == nullptr) return std::nullopt;
  const toml::table* languages = table_->get(key)->as_table();
  if (languages == nullptr) {
    fault(key,
          phrase("Programme",
                 "In %1, %2 is not given by language; write %2.en and %2.es."));
    return std::nullopt;
  }
  auto inner = table(key);
  const Words read{inner->spoken("en"), inner->spoken("es")};
  inner->refuseOthers();
  return read;
}

Words ProgrammeFields::ownWords() {
  const bool anySaid = node("en") != nullptr || node("es") != nullptr;
  return anySaid ? Words{spoken("en"), spoken("es")} : Words{};
}

std::vector<Words> ProgrammeFields::wordLists(std::string_view key) {
  auto inner = table(key);
  if (!inner) return {};
  for (const std::string_view language : {"en", "es"})
    if (!inner->has(language)) inner->spoken(language);
  const auto english = inner->texts("en");
  const auto spanish = inner->texts("es");
  inner->refuseOthers();
  if (english.size() != spanish.size() && !english.empty() && !spanish.empty())
    fault(key,
          phrase("Programme",
                 "In %1, %2 has %3 lines in English and %4 in Spanish; give each line in "
                 "both."),
          {static_cast<std::int64_t>(english.size()),
           static_cast<std::int64_t>(spanish.size())});
  std::vector<Words> lines;
  for (std::size_t i = 0; i < std::min(english.size(), spanish.size()); ++i)
    lines.push_back({english[i], spanish[i]});
  return lines;
}

std::optional<ProgrammeFields> ProgrammeFields::table(std::string_view key) {
  const toml::node* found = node(key);
  if (found == nullptr) return std::nullopt;
  if (const toml::table* inner = found->as_table()) {
    ProgrammeFields fields{*inner, owner_, pathTo(key), *faults_};
    fields.outerLine_ = line();
    return fields;
  }
  fault(key,
        phrase("Programme",
               "In %1, %2 is not a set of fields; write it in braces, such as { name = "
               "value }."));
  return std::nullopt;
}

std::vector<ProgrammeFields> ProgrammeFields::tables(std::string_view key) {
  const toml::node* found = node(key);
  if (found == nullptr) return {};
  std::vector<ProgrammeFields> all;
  const toml::array* list = found->as_array();
  bool tablesOnly = list != nullptr;
  for (std::size_t i = 0; tablesOnly && i < list->size(); ++i) {
    const toml::table* inner = list->get(i)->as_table();
    tablesOnly = inner != nullptr;
    if (!tablesOnly) break;
    all.emplace_back(*inner, owner_, pathTo(key), *faults_);
    all.back().outerLine_ = lineOf(key);
  }
  if (tablesOnly) return all;
  fault(key,
        phrase("Programme",
               "In %1, %2 is not a list of sets of fields; write each in braces, all of "
               "them in square brackets."));
  return {};
}

std::vector<std::string> ProgrammeFields::keys() const {
  std::vector<std::string> all;
  for (const auto& [key, value] : *table_) all.emplace_back(key.str());
  return all;
}

void ProgrammeFields::missing(std::string_view key, std::string_view example) {
  fault(key,
        phrase("Programme", "In %1, %2 is missing; add a line such as: %3"),
        {std::string{example}});
}

void ProgrammeFields::fault(std::string_view key,
                            Phrase phrase,
                            std::vector<Value> more) {
  std::vector<Value> values{owner_, pathTo(key)};
  values.insert(values.end(), more.begin(), more.end());
  faults_->add(lineOf(key), Sentence{phrase, std::move(values)});
}

void ProgrammeFields::notAmong(std::string_view key,
                               const std::string& typed,
                               const std::vector<std::string>& known) {
  const std::string meant = likeliestOf(known, typed);
  if (meant.empty())
    fault(key,
          phrase("Programme", "In %1, %2 says “%3”; write one of: %4."),
          {typed, joined(known)});
  else
    fault(key,
          phrase("Programme", "In %1, %2 says “%3”; did you mean “%4”?"),
          {typed, meant});
}

void ProgrammeFields::refuseOthers() {
  const std::vector<std::string> known{asked_.begin(), asked_.end()};
  for (const std::string& key : keys()) {
    if (asked_.contains(key)) continue;
    const std::string meant = likeliestOf(known, key);
    if (meant.empty())
      fault(key,
            phrase("Programme",
                   "In %1, there is no field %2; take it out or use one of: %3."),
            {joined(known)});
    else
      fault(key,
            phrase("Programme", "In %1, there is no field %2; did you mean %3?"),
            {pathTo(meant)});
  }
}

int ProgrammeFields::line() const {
  const auto written = static_cast<int>(table_->source().begin.line);
  return written > 0 ? written : outerLine_;
}

int ProgrammeFields::lineOf(std::string_view key) const {
  for (const auto& [name, value] : *table_) {
    const auto written = static_cast<int>(name.source().begin.line);
    if (name.str() == key && written > 0) return written;
  }
  return line();
}

std::string ProgrammeFields::pathTo(std::string_view key) const {
  return path_.empty() ? std::string{key} : path_ + '.' + std::string{key};
}

}  // namespace topwire
