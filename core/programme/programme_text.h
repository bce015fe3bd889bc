#pragma once

#include "core/base/result.h"
#include "core/programme/programme.h"
#include "core/programme/toml_text.h"

#include <optional>
#include <string>
#include <string_view>

namespace topwire {

/// Edits in a programme's text that leave all else as it was: comments, order, spacing.
/// Each reads the edited text again and answers it, or everything that would be wrong
/// with it. A fault of the field that was edited has the field as its place ("opens",
/// "how"); of anything else, the programme's id and the line.

/// The whole programme under another id and name.
Checked<std::string> copyOf(std::string_view text,
                            const std::string& id,
                            const Words& name);

/// Makes the operation of that id say what `edited` says; fields that say so already are
/// not touched, so that doing it twice changes nothing.
Checked<std::string> withOperation(std::string_view text, const Operation& edited);

/// Sets one field, or takes it out. What hangs on its meaning is left to the reader.
Checked<std::string> withField(std::string_view text,
                               const std::string& operation,
                               const std::string& field,
                               const std::optional<TomlValue>& value);

/// A further operation behind the one it is copied from.
Checked<std::string> withCopiedOperation(std::string_view text,
                                         const std::string& from,
                                         const std::string& id,
                                         const Words& name);

/// With the comment lines right above it. Refused while another one hangs on it.
Checked<std::string> withoutOperation(std::string_view text,
                                      const std::string& operation);

/// What a line of a programme's text belongs to; empty where it stands above the first
/// operation, or holds no field.
struct ProgrammePlace {
  std::string operation;
  std::string field;
};

ProgrammePlace programmePlace(std::string_view text, int line);

}  // namespace topwire
