#pragma once

#include "core/edit/orchard_files.h"

#include <cstdint>
#include <string>
#include <vector>

namespace topwire {

/// What tests set otherwise than the programs do.
struct OrchardFileOptions {
  /// SQL of the schema's steps; the program's own where absent.
  const std::vector<std::string>* steps = nullptr;
  /// Pages after which the disk counts as full; no limit where zero.
  std::int64_t mostPages = 0;
};

/// Orchard files as SQLite databases: write-ahead log, every commit on disk before it is
/// confirmed (synchronous=FULL), one writer. Opening checks that it is an orchard file of
/// a version this program knows, and whole; brings an older one up to date; and keeps
/// backups. Closing (destroying the journal) folds the log into the file and leaves no
/// side files.
class SqliteOrchardFiles final : public OrchardFiles {
public:
  explicit SqliteOrchardFiles(OrchardFileOptions options = {}) : options_(options) {}

  Result<OpenedOrchard> open(const std::string& path, Access access) override;
  Result<OpenedOrchard> create(const std::string& path, const Orchard& orchard) override;
  Done copyTo(const std::string& from, const std::string& to) override;

private:
  OrchardFileOptions options_;
};

}  // namespace topwire
