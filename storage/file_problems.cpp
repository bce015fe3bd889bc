#include "storage/file_problems.h"

#include <sqlite3.h>

#include <cerrno>

namespace topwire {

namespace {

Phrase sentenceFor(int sqliteCode) {
  switch (sqliteCode) {
    case SQLITE_FULL:
      return phrase("File",
                    "The disk is full, so nothing was written to %1. Free some space and "
                    "do it again.");
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
      return phrase("File",
                    "Another program is writing to %1, so nothing was written. Do it "
                    "again in a moment.");
    case SQLITE_READONLY:
    case SQLITE_PERM:
    case SQLITE_AUTH:
      return phrase(
          "File",
          "%1 or its folder is read-only, so nothing was written. Move the file "
          "to a folder of your own.");
    case SQLITE_CANTOPEN:
      return phrase("File",
                    "%1 can't be opened. Check that the folder is there and that you may "
                    "read and write in it.");
    case SQLITE_NOTADB:
      return phrase("File",
                    "%1 is not an orchard file. Choose another file; this one was left "
                    "as it is.");
    case SQLITE_IOERR:
      return phrase("File",
                    "The disk did not take or give the data of %1, so nothing was "
                    "written. Check the disk, then do it again.");
    case SQLITE_CONSTRAINT:
      return phrase("File",
                    "%1 did not take the change, because it breaks a rule of the file. "
                    "Nothing was written.");
    default:
      return phrase("File",
                    "%1 is damaged and was left as it is. Open the newest copy from its "
                    "backups folder instead.");
  }
}

Phrase sentenceForSystem(int errorNumber) {
  switch (errorNumber) {
    case EEXIST:
      return phrase("File", "There is a file %1 already. Choose another name.");
    case ENOENT:
    case ENOTDIR:
      return phrase("File",
                    "The folder for %1 is not there. Make it first, or choose another "
                    "one.");
    case ENOSPC:
    case EDQUOT:
      return sentenceFor(SQLITE_FULL);
    case EACCES:
    case EPERM:
    case EROFS:
      return sentenceFor(SQLITE_READONLY);
    default:
      return sentenceFor(SQLITE_CANTOPEN);
  }
}

}  // namespace

Problem problemOf(const std::string& path, const SqliteError& error) {
  return {Sentence{sentenceFor(error.code()), {path}}, {}, error.what()};
}

Problem problemOf(const std::string&, const FileRefused& refused) {
  return {Sentence{sentenceForSystem(refused.errorNumber), {refused.path}},
          {},
          refused.what()};
}

Problem problemOf(const std::string& path, const UnreadableRow& row) {
  return {
      Sentence{phrase("File",
                      "In %1, table %2, row %3, the value of %4 can't be read: \"%5\". "
                      "Open the newest copy from its backups folder instead."),
               {path, row.table, row.key, row.column, std::string{row.what()}}},
      {},
      {}};
}

Problem problemOf(const std::string& path, const StaleRecord& record) {
  return {Sentence{phrase("File",
                          "%1 was changed by another program since it was opened, so "
                          "nothing was written. Close it and open it again."),
                   {path}},
          {},
          record.what()};
}

Problem damaged(const std::string& path, const std::string& detail) {
  return {Sentence{sentenceFor(SQLITE_CORRUPT), {path}}, {}, detail};
}

}  // namespace topwire
