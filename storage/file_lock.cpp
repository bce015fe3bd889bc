#include "storage/file_lock.h"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <mutex>
#include <set>
#include <utility>

namespace topwire {

namespace {

/// A file by device and inode, whatever path led to it.
using FileIdentity = std::pair<dev_t, ino_t>;

struct Register {
  std::mutex mutex;
  std::set<FileIdentity> held;
};

Register& heldHere() {
  static Register files;
  return files;
}

std::optional<FileIdentity> identityOf(const std::string& path) {
  struct stat status {};

  if (stat(path.c_str(), &status) != 0) return std::nullopt;
  return FileIdentity{status.st_dev, status.st_ino};
}

}  // namespace

struct FileLock::Held {
  Held(FileIdentity file, int open) : identity(std::move(file)), descriptor(open) {}

  ~Held() {
    const std::scoped_lock guard{heldHere().mutex};
    heldHere().held.erase(identity);
    close(descriptor);
  }

  Held(const Held&) = delete;
  Held& operator=(const Held&) = delete;

  FileIdentity identity;
  int descriptor;
};

std::optional<FileLock> FileLock::take(const std::string& path) {
  const std::scoped_lock guard{heldHere().mutex};
  const auto identity = identityOf(path);
  if (!identity || heldHere().held.contains(*identity)) return std::nullopt;
  const int descriptor = open(path.c_str(), O_RDWR | O_CLOEXEC);
  if (descriptor < 0) return std::nullopt;
  if (flock(descriptor, LOCK_EX | LOCK_NB) != 0) {
    close(descriptor);
    return std::nullopt;
  }
  heldHere().held.insert(*identity);
  return FileLock{std::make_shared<const Held>(*identity, descriptor)};
}

}  // namespace topwire
