#include "storage/file_steps.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <utility>

namespace topwire {

namespace {

/// Removes the file, and what SQLite may have put beside it, unless it took its name.
class TemporaryFile {
public:
  explicit TemporaryFile(std::string path) : path_(std::move(path)) { remove(); }

  ~TemporaryFile() { remove(); }

  TemporaryFile(const TemporaryFile&) = delete;
  TemporaryFile& operator=(const TemporaryFile&) = delete;

  const std::string& path() const { return path_; }

private:
  void remove() const {
    for (const char* side : {"", "-journal", "-wal", "-shm"})
      unlink((path_ + side).c_str());
  }

  std::string path_;
};

/// Renaming over a file would replace it unasked. Some file systems can't forbid that;
/// there the file is looked for first.
void renameToFree(const std::string& from, const std::string& to) {
  if (renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0)
    return;
  if (errno != EINVAL && errno != ENOSYS) throw FileRefused{to, errno};
  if (access(to.c_str(), F_OK) == 0) throw FileRefused{to, EEXIST};
  if (std::rename(from.c_str(), to.c_str()) != 0) throw FileRefused{to, errno};
}

/// A name is on disk only once its folder is.
void syncFolder(const std::string& folder) {
  const int descriptor = open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (descriptor < 0) return;
  fsync(descriptor);
  close(descriptor);
}

}  // namespace

FileRefused::FileRefused(std::string where, int number)
    : std::runtime_error(where + ": " + std::strerror(number))
    , path(std::move(where))
    , errorNumber(number) {}

void writeWhole(const std::string& path,
                const std::function<void(const std::string&)>& write) {
  if (access(path.c_str(), F_OK) == 0) throw FileRefused{path, EEXIST};
  if (access(folderOf(path).c_str(), W_OK | X_OK) != 0) throw FileRefused{path, errno};
  const TemporaryFile temporary{path + ".new-" + std::to_string(getpid())};
  write(temporary.path());
  renameToFree(temporary.path(), path);
  syncFolder(folderOf(path));
}

std::string folderOf(const std::string& path) {
  const auto folder = std::filesystem::path{path}.parent_path();
  return folder.empty() ? "." : folder.string();
}

}  // namespace topwire
