#pragma once

#include "core/edit/journal.h"

#include <memory>
#include <string>

namespace topwire {

struct OpenedOrchard {
  Orchard orchard;
  std::unique_ptr<Journal> journal;  ///< keeps the file open, and locked unless read-only
  bool readOnly = false;
  /// Something the person should be told, such as a copy set aside before migrating.
  std::vector<Sentence> notes;
};

/// `write` takes the file's one writing place and is refused with a sentence while
/// another program holds it. `look` never writes; a journal opened so refuses every
/// write.
enum class Access { write, look };

/// Opens and makes orchard files. Storage implements it; windows and commands know only
/// this.
class OrchardFiles {
public:
  virtual ~OrchardFiles() = default;
  virtual Result<OpenedOrchard> open(const std::string& path, Access access) = 0;
  /// Makes a file that holds this orchard; refused where one stands already. On a problem
  /// no file is left behind.
  virtual Result<OpenedOrchard> create(const std::string& path,
                                       const Orchard& orchard) = 0;
  /// A copy that is whole even while the file is open; refused where a file stands
  /// already.
  virtual Done copyTo(const std::string& from, const std::string& to) = 0;
};

}  // namespace topwire
