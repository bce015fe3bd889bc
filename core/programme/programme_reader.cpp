#include "core/programme/programme_reader.h"

#include "core/programme/check_needs.h"
#include "core/programme/check_programme.h"
#include "core/programme/operation_reader.h"
#include "core/programme/programme_fields.h"

#include <algorithm>
#include <set>

namespace topwire {

namespace {

constexpr int knownFormat = 1;

std::optional<toml::table> parsed(std::string_view text, ProgrammeFaults& faults) {
  try {
    return toml::parse(text);
  } catch (const toml::parse_error& stop) {
    faults.add(static_cast<int>(stop.source().begin.line),
               Sentence{phrase("Programme",
                               "From here on the text is not TOML (%1); correct this "
                               "line, then read the file again."),
                        {std::string{stop.description()}}});
    return std::nullopt;
  }
}

std::string requiredText(ProgrammeFields& fields,
                         std::string_view key,
                         std::string_view example) {
  if (!fields.has(key)) fields.missing(key, example);
  return fields.text(key).value_or("");
}

Words requiredWords(ProgrammeFields& fields,
                    std::string_view key,
                    std::string_view example) {
  if (!fields.has(key)) fields.missing(key, example);
  return fields.words(key).value_or(Words{});
}

void checkFormat(ProgrammeFields& fields) {
  if (!fields.has("format")) return fields.missing("format", "format = 1");
  const auto format = fields.whole("format", 0, 9999);
  if (!format || *format == knownFormat) return;
  fields.fault("format",
               phrase("Programme",
                      "In %1, %2 is %3, and this Topwire reads format 1; use a newer "
                      "Topwire or a programme of format 1."),
               {std::int64_t{*format}});
}

std::vector<ReadOperation> readOperations(ProgrammeFields& fields,
                                          ProgrammeFaults& faults) {
  const toml::node* node = fields.node("operation");
  const toml::array* list = node == nullptr ? nullptr : node->as_array();
  if (list == nullptr || !list->is_homogeneous<toml::table>()) {
    fields.fault("operation",
                 phrase("Programme",
                        "In %1, there is no %2; begin each one with a line that says "
                        "[[operation]]."));
    return {};
  }
  std::vector<ReadOperation> read;
  for (const toml::node& entry : *list)
    read.push_back(
        readOperation(*entry.as_table(), static_cast<int>(read.size()) + 1, faults));
  return read;
}

Programme readWhole(const toml::table& table, ProgrammeFaults& faults) {
  ProgrammeFields fields{table, {"the programme", "el programa"}, {}, faults};
  checkFormat(fields);
  Programme programme;
  programme.id = requiredText(fields, "id", "id = \"tall-spindle-apple\"");
  programme.name = requiredWords(fields, "name", "name.en = \"Tall spindle apple\"");
  programme.summary = requiredWords(fields, "summary", "summary.en = \"A narrow cone\"");
  auto operations = readOperations(fields, faults);
  fields.refuseOthers();
  checkOperations(operations, faults);
  checkNeeds(operations, faults);
  for (ReadOperation& read : operations)
    programme.operations.push_back(std::move(read.operation));
  return programme;
}

class AnchorOrder {
public:
  explicit AnchorOrder(const Programme& programme) : programme_(programme) {}

  std::vector<const Operation*> all() {
    for (const Operation& operation : programme_.operations) add(operation);
    return std::move(ordered_);
  }

private:
  void add(const Operation& operation) {
    if (!seen_.insert(&operation).second) return;
    addFirst(operation.opens);
    addFirst(operation.closes);
    if (operation.cutOff) addFirst(operation.cutOff->anchor);
    ordered_.push_back(&operation);
  }

  void addFirst(const Anchor& anchor) {
    const auto* completion = std::get_if<OnCompletion>(&anchor.point);
    const Operation* other =
        completion == nullptr ? nullptr : programme_.find(completion->operation);
    if (other != nullptr) add(*other);
  }

  const Programme& programme_;
  std::set<const Operation*> seen_;
  std::vector<const Operation*> ordered_;
};

}  // namespace

Checked<Programme> readProgramme(std::string_view toml, const std::string& file) {
  ProgrammeFaults faults{file};
  Programme programme;
  if (const auto table = parsed(toml, faults)) programme = readWhole(*table, faults);
  if (!faults.none()) return tl::unexpected<Problems>{faults.inOrder()};
  return programme;
}

std::vector<const Operation*> inAnchorOrder(const Programme& programme) {
  return AnchorOrder{programme}.all();
}

}  // namespace topwire
