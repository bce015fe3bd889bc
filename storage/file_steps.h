#pragma once

#include <functional>
#include <stdexcept>
#include <string>

namespace topwire {

/// What the system answered when a file could not be made or moved. Thrown inside storage
/// only.
struct FileRefused : std::runtime_error {
  FileRefused(std::string where, int number);

  std::string path;
  int errorNumber;  ///< errno
};

/// Makes `path` all at once: `write` fills a new file beside it, which then takes its
/// name. A file that stands there already is never replaced (FileRefused, EEXIST), and
/// whatever `write` throws leaves nothing behind.
void writeWhole(const std::string& path,
                const std::function<void(const std::string& temporary)>& write);

/// The folder a path lies in; "." for a bare name.
std::string folderOf(const std::string& path);

}  // namespace topwire
