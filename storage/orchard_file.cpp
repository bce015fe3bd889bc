#include "storage/orchard_file.h"

#include "storage/backups.h"
#include "storage/file_problems.h"
#include "storage/orchard_journal.h"
#include "storage/schema/migrate.h"
#include "storage/sqlite/transaction.h"

#include <unistd.h>

#include <filesystem>

namespace topwire {

namespace {

namespace fs = std::filesystem;

const std::vector<std::string>& stepsOf(const OrchardFileOptions& options) {
  return options.steps ? *options.steps : schemaSteps();
}

Done checkThere(const std::string& path) {
  std::error_code code;
  const auto status = fs::status(path, code);
  if (!fs::exists(status))
    return refuse(Sentence{
        phrase("File", "There is no file %1. Check its name and folder."), {path}});
  if (!fs::is_regular_file(status))
    return refuse(
        Sentence{phrase("File", "%1 is not a file. Choose an orchard file."), {path}});
  if (access(path.c_str(), R_OK) != 0)
    return refuse(Sentence{
        phrase("File", "You may not read %1. Ask whoever owns it for access."), {path}});
  return {};
}

Done checkWritable(const std::string& path) {
  if (access(path.c_str(), W_OK) == 0 && access(folderOf(path).c_str(), W_OK) == 0)
    return {};
  return refuse(Sentence{phrase("File",
                                "%1 or its folder is read-only. Open it to look at only, "
                                "or move it to a folder of your own."),
                         {path}});
}

Problem heldElsewhere(const std::string& path) {
  return {Sentence{phrase("File",
                          "%1 is open in another window or program. You can look at it, "
                          "not change it."),
                   {path}},
          {},
          {}};
}

/// Before anything is written: is it an orchard file, of a version this program knows?
Done checkIdentity(Connection& connection, const std::string& path, std::size_t newest) {
  if (connection.number("PRAGMA application_id") != applicationId)
    return refuse(Sentence{phrase("File",
                                  "%1 is not an orchard file. Choose another file; this "
                                  "one was left as it is."),
                           {path}});
  const std::int64_t version = connection.number("PRAGMA user_version");
  if (version > static_cast<std::int64_t>(newest))
    return refuse(
        Sentence{phrase("File",
                        "%1 was written by a newer Topwire (file version %2; this one "
                        "knows up to %3). Install the newer one to open it."),
                 {path, version, static_cast<std::int64_t>(newest)}});
  if (version < 1) return tl::unexpected{damaged(path, "user_version below 1")};
  return {};
}

Done checkWhole(Connection& connection, const std::string& path) {
  // SQLite takes a last page cut short for one that ends in zeros.
  const auto page = static_cast<std::uintmax_t>(connection.number("PRAGMA page_size"));
  if (fs::file_size(path) % page != 0)
    return tl::unexpected{damaged(path, "ends within a page")};
  const std::string found = connection.text("PRAGMA quick_check(1)");
  if (found != "ok") return tl::unexpected{damaged(path, found)};
  return {};
}

bool isUpToDate(Connection& connection, std::size_t newest) {
  return connection.number("PRAGMA user_version") == static_cast<std::int64_t>(newest);
}

Problem fromEarlierVersion(const std::string& path) {
  return {Sentence{phrase("File",
                          "%1 comes from an earlier version. Open it once for writing, "
                          "which brings it up to date."),
                   {path}},
          {},
          {}};
}

Done checkContent(Connection& connection, const std::string& path, std::size_t newest) {
  if (Done identity = checkIdentity(connection, path, newest); !identity) return identity;
  return checkWhole(connection, path);
}

/// In a folder that can't be written, a file in write-ahead mode opens only as one that
/// nobody writes; which holds as long as it has no log beside it.
Connection connectToLook(const std::string& path) {
  const bool written = fs::exists(path + "-wal");
  return {path, written ? Connection::Mode::read : Connection::Mode::readUnchanging};
}

void prepareWriting(Connection& connection, std::int64_t mostPages) {
  connection.execute("PRAGMA journal_mode = WAL");
  connection.execute("PRAGMA synchronous = FULL");
  if (mostPages > 0)
    connection.execute("PRAGMA max_page_count = " + std::to_string(mostPages));
}

OpenedOrchard opened(const std::string& path,
                     std::optional<FileLock> lock,
                     Connection connection,
                     Orchard orchard) {
  OpenedOrchard result;
  result.readOnly = !lock;
  result.orchard = std::move(orchard);
  result.journal =
      std::make_unique<OrchardJournal>(path, std::move(lock), std::move(connection));
  return result;
}

/// An up-to-date file is read before anything is written, so that one whose records
/// can't be read is left as it is.
Result<OpenedOrchard> openLocked(const std::string& path,
                                 FileLock lock,
                                 const OrchardFileOptions& options) {
  const auto& steps = stepsOf(options);
  Connection connection{path, Connection::Mode::write};
  if (Done content = checkContent(connection, path, steps.size()); !content)
    return tl::unexpected{content.error()};
  const bool current = isUpToDate(connection, steps.size());
  Orchard orchard = current ? readOrchard(connection) : Orchard{};
  prepareWriting(connection, options.mostPages);
  std::vector<Sentence> notes;
  if (auto note = migrate(connection, path, steps)) notes.push_back(std::move(*note));
  if (auto note = keepBackups(connection, path)) notes.push_back(std::move(*note));
  if (!current) orchard = readOrchard(connection);
  OpenedOrchard result =
      opened(path, std::move(lock), std::move(connection), std::move(orchard));
  result.notes = std::move(notes);
  return result;
}

Result<OpenedOrchard> openToWrite(const std::string& path,
                                  const OrchardFileOptions& options) {
  if (Done writable = checkWritable(path); !writable)
    return tl::unexpected{writable.error()};
  auto lock = FileLock::take(path);
  if (!lock) return tl::unexpected{heldElsewhere(path)};
  return openLocked(path, std::move(*lock), options);
}

Result<OpenedOrchard> openToLook(const std::string& path,
                                 const OrchardFileOptions& options) {
  const std::size_t newest = stepsOf(options).size();
  Connection connection = connectToLook(path);
  if (Done content = checkContent(connection, path, newest); !content)
    return tl::unexpected{content.error()};
  if (!isUpToDate(connection, newest)) return tl::unexpected{fromEarlierVersion(path)};
  Orchard orchard = readOrchard(connection);
  return opened(path, std::nullopt, std::move(connection), std::move(orchard));
}

void fillNew(const std::string& path,
             const Orchard& orchard,
             const OrchardFileOptions& options) {
  Connection connection{path, Connection::Mode::create};
  connection.execute("PRAGMA synchronous = FULL");
  if (options.mostPages > 0)
    connection.execute("PRAGMA max_page_count = " + std::to_string(options.mostPages));
  connection.execute("PRAGMA application_id = " + std::to_string(applicationId));
  applySteps(connection, stepsOf(options));
  Transaction transaction{connection};
  writeOrchard(connection, orchard);
  transaction.commit();
}

}  // namespace

Result<OpenedOrchard> SqliteOrchardFiles::open(const std::string& path, Access access) {
  return guarded(path, [&]() -> Result<OpenedOrchard> {
    if (Done there = checkThere(path); !there) return tl::unexpected{there.error()};
    return access == Access::write ? openToWrite(path, options_)
                                   : openToLook(path, options_);
  });
}

Result<OpenedOrchard> SqliteOrchardFiles::create(const std::string& path,
                                                 const Orchard& orchard) {
  return guarded(path, [&]() -> Result<OpenedOrchard> {
    // Locked before it has its name, so that nobody gets in between.
    std::optional<FileLock> lock;
    writeWhole(path, [&](const std::string& temporary) {
      fillNew(temporary, orchard, options_);
      lock = FileLock::take(temporary);
    });
    if (!lock) return tl::unexpected{heldElsewhere(path)};
    auto result = openLocked(path, std::move(*lock), options_);
    if (!result) fs::remove(path);
    return result;
  });
}

Done SqliteOrchardFiles::copyTo(const std::string& from, const std::string& to) {
  return guarded(from, [&]() -> Done {
    if (Done there = checkThere(from); !there) return there;
    Connection connection = connectToLook(from);
    if (Done content = checkContent(connection, from, stepsOf(options_).size()); !content)
      return content;
    writeWhole(to, [&](const std::string& path) { connection.copyTo(path); });
    return {};
  });
}

}  // namespace topwire
