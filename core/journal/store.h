// SPDX-License-Identifier: GPL-3.0-or-later
// The form of a job file: which SQLite database is one, how a connection to it is set, and what goes wrong with it
// in the
// journal's own codes. A file may come from anywhere, so nothing of it is believed before it was compared with this
// form.
#pragma once

#include "core/journal/record.h"
#include "core/journal/sqlite.h"

#include <filesystem>

namespace proofwalk::journal {

constexpr std::int64_t applicationId = 0x50574C4B; ///< "PWLK", at offset 68 of the file
constexpr std::int64_t formatVersion = 1; ///< SQLite's user_version
constexpr std::size_t rowLimit_bytes = std::size_t{16} << 20U; ///< of one content, private value or photograph
constexpr std::size_t eventLimit_bytes = std::size_t{1} << 20U; ///< of one event's canonical text

/// That a regular file with something in it stands there. Errors: file.missing; journal.foreign; journal.damaged
/// {detail}.
Result<void> checkFile(const std::filesystem::path& file);

/// Opens a connection and sets it for a file from elsewhere: defensive, no trusted schema, no triggers, views or
/// extensions, low limits. Errors: those of readProblem.
Result<Database> connect(const std::filesystem::path& file, Database::Access access);

/// Application id, format and every entry of the schema, one by one.
/// Errors: journal.foreign; journal.newer {found, known}; journal.damaged {detail}.
Result<void> checkForm(Database& database, const std::filesystem::path& file);

/// Write-ahead log and a flush for every commit, set and read back. Error: journal.unwritable {detail}.
Result<void> makeDurable(Database& database, const std::filesystem::path& file);

/// Makes the tables of an empty file, in one transaction.
Result<void> makeTables(Database& database, const std::filesystem::path& file, const std::string& job);

/// The job's id. Error: journal.damaged {detail}.
Result<std::string> loadJob(Database& database, const std::filesystem::path& file);

/// Everything in the file. Rows that are not what they should be are told in Record::unreadable.
Result<Record> loadRecord(Database& database, const std::filesystem::path& file);

/// The newest event of every chain, as far as it can be read.
Result<std::vector<Event>> loadLastEvents(Database& database, const std::filesystem::path& file);

/// What a code of SQLite means when reading: journal.foreign; journal.damaged {detail}; journal.in-use;
/// journal.read-only {detail}; journal.full; file.unreadable {detail}.
Error readProblem(const Database& database, int code, const std::filesystem::path& file);
/// And when writing: journal.full; journal.in-use; journal.unwritable {detail}.
Error writeProblem(const Database& database, int code, const std::filesystem::path& file);

} // namespace proofwalk::journal
