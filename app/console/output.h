#pragma once

#include "core/base/result.h"
#include "core/exchange/table_text.h"

#include <string>
#include <vector>

namespace topwire {

/// What the program ends with; scripts may rely on the numbers.
enum class ExitCode { done = 0, findings = 1, usage = 2, problem = 3 };

/// What a command has to say once it is done: `text` for standard output, the notes for
/// standard error. A command that meets a problem says nothing but the problem.
struct Outcome {
  std::string text;
  std::vector<Sentence> notes;
  ExitCode code = ExitCode::done;
};

using Answer = Checked<Outcome>;

enum class Format { text, csv, json };

std::string tableIn(Format format, const Table& table);

/// English is spoken by core itself and so never depends on a locale.
std::string spoken(const Sentence& sentence, Language language);

/// A problem as the answer of a command.
template <class T>
tl::unexpected<Problems> problemsOf(const Result<T>& result) {
  return tl::unexpected<Problems>{Problems{result.error()}};
}

}  // namespace topwire
