#include "app/models/programme_draft.h"

#include "core/base/contract.h"
#include "core/programme/programme_reader.h"
#include "core/programme/programme_text.h"

namespace topwire {

ProgrammeDraft::ProgrammeDraft(OwnProgramme own)
    : base_(std::move(own)), text_(base_.text) {
  auto read = readProgramme(text_, base_.id);
  TOPWIRE_REQUIRE(read.has_value());
  programme_ = std::move(*read);
}

Problems ProgrammeDraft::take(const Checked<std::string>& text) {
  if (!text) return text.error();
  auto read = readProgramme(*text, base_.id);
  if (!read) return read.error();
  text_ = *text;
  programme_ = std::move(*read);
  return {};
}

Problems ProgrammeDraft::take(const Operation& edited) {
  return take(withOperation(text_, edited));
}

Problems ProgrammeDraft::remove(const std::string& operation) {
  return take(withoutOperation(text_, operation));
}

Result<std::string> ProgrammeDraft::copy(const std::string& operation) {
  const Operation* original = programme_.find(operation);
  TOPWIRE_REQUIRE(original != nullptr);
  std::string id;
  int number = 2;
  do id = operation + '-' + std::to_string(number++);
  while (programme_.find(id) != nullptr);
  const Words name{original->name.en + ", again", original->name.es + ", otra vez"};
  const Problems problems = take(withCopiedOperation(text_, operation, id, name));
  if (!problems.empty()) return tl::unexpected{problems.front()};
  return id;
}

}  // namespace topwire
