#pragma once

#include "core/base/phrase.h"
#include "storage/sqlite/connection.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace topwire {

/// Stands in the header of every orchard file: "Twre".
inline constexpr std::int64_t applicationId = 0x54777265;

/// The SQL files of this folder, in order. A file's user_version is the number of steps
/// it has seen.
const std::vector<std::string>& schemaSteps();

/// Runs the steps the file has not seen, each in one transaction. Throws SqliteError;
/// the steps before the one that failed are kept.
void applySteps(Connection& connection, const std::vector<std::string>& steps);

/// Brings an older file up to date, with a copy set aside beside it first; the sentence
/// says where the copy is. Nothing where the file is up to date. Throws SqliteError.
std::optional<Sentence> migrate(Connection& connection,
                                const std::string& path,
                                const std::vector<std::string>& steps);

}  // namespace topwire
