#pragma once

#include "core/base/result.h"
#include "core/orchard/records.h"
#include "core/programme/programme.h"

#include <string>

namespace topwire {

/// A programme of the orchard's own as it is being changed, before anyone says yes. Every
/// step that is taken leaves a text that reads; a step that would not is refused.
class ProgrammeDraft {
public:
  /// The record has to read.
  explicit ProgrammeDraft(OwnProgramme own);

  const OwnProgramme& base() const { return base_; }

  const std::string& text() const { return text_; }

  const Programme& programme() const { return programme_; }

  bool isChanged() const { return text_ != base_.text; }

  /// Each answers why it was not taken; nothing where it was.
  Problems take(const Operation& edited);
  Problems remove(const std::string& operation);
  /// The copy's id, beside the original's.
  Result<std::string> copy(const std::string& operation);

private:
  Problems take(const Checked<std::string>& text);

  OwnProgramme base_;
  std::string text_;
  Programme programme_;
};

}  // namespace topwire
