#pragma once

#include "core/base/phrase.h"
#include "storage/sqlite/connection.h"

#include <optional>
#include <string>

namespace topwire {

/// Keeps whole copies in the folder "NAME backups" beside the file: one for each of the
/// last five days on which anything was changed, named by that day (UTC) and the number
/// of the last change it holds. Does nothing where the newest copy holds all changes.
/// Answers a sentence where no copy could be made; that is no reason not to work.
std::optional<Sentence> keepBackups(Connection& connection, const std::string& path);

/// The folder the copies of this file are kept in.
std::string backupFolderOf(const std::string& path);

}  // namespace topwire
