#pragma once

#include <memory>
#include <optional>
#include <string>

namespace topwire {

/// The one writing place of an orchard file, held with flock() until destroyed and given
/// up by the system should the program die.
///
/// SQLite's own locks are POSIX ones, and POSIX drops them all as soon as the process
/// closes *any* descriptor of the file. So the descriptor here has to be opened before
/// SQLite's and closed after it, and a file this process holds already is refused before
/// a second descriptor is opened.
class FileLock {
public:
  /// Nothing where another window or program holds it, or the file can't be opened.
  static std::optional<FileLock> take(const std::string& path);

private:
  struct Held;

  explicit FileLock(std::shared_ptr<const Held> held) : held_(std::move(held)) {}

  std::shared_ptr<const Held> held_;
};

}  // namespace topwire
