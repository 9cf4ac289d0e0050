// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/store.h"

#include "core/base/digest.h"

#include <sqlite3.h>

#include <array>
#include <cerrno>
#include <cstring>
#include <system_error>
#include <utility>

namespace proofwalk::journal {
namespace {

// The statements stand in the file as written here and are compared byte for byte: a changed blank is another format.
// What the index holds lets heads and forks be found without touching the texts.
constexpr std::array tables{
    "CREATE TABLE job(id TEXT NOT NULL PRIMARY KEY) STRICT, WITHOUT ROWID",
    "CREATE TABLE events(hash TEXT NOT NULL PRIMARY KEY, chain TEXT NOT NULL, n INTEGER NOT NULL, text TEXT NOT NULL) "
    "STRICT",
    "CREATE INDEX events_in_order ON events(chain, n, hash)",
    "CREATE TABLE contents(hash TEXT NOT NULL PRIMARY KEY, bytes BLOB NOT NULL) STRICT",
    "CREATE TABLE private(commitment TEXT NOT NULL PRIMARY KEY, salt TEXT NOT NULL, value TEXT NOT NULL) STRICT",
    "CREATE TABLE photographs(hash TEXT NOT NULL PRIMARY KEY, bytes BLOB NOT NULL) STRICT",
    "CREATE TABLE heads(chain TEXT NOT NULL PRIMARY KEY, n INTEGER NOT NULL, hash TEXT NOT NULL REFERENCES "
    "events(hash), signature TEXT NOT NULL) STRICT, WITHOUT ROWID",
};

/// Every entry of sqlite_schema by type, name, table and text, in order of name, as a line each.
constexpr std::string_view schemaQuery =
    "SELECT type, name, tbl_name, coalesce(sql, '') FROM sqlite_schema ORDER BY name, type";

struct Switch {
    int what;
    int on;
};
constexpr std::array switches{
    Switch{SQLITE_DBCONFIG_DEFENSIVE, 1},      Switch{SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0},
    Switch{SQLITE_DBCONFIG_DQS_DDL, 0},        Switch{SQLITE_DBCONFIG_DQS_DML, 0},
    Switch{SQLITE_DBCONFIG_ENABLE_TRIGGER, 0}, Switch{SQLITE_DBCONFIG_ENABLE_VIEW, 0},
    Switch{SQLITE_DBCONFIG_ENABLE_FKEY, 1},    Switch{SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0},
};
constexpr std::array limits{
    Switch{SQLITE_LIMIT_LENGTH, 64 << 20}, Switch{SQLITE_LIMIT_SQL_LENGTH, 4096},  Switch{SQLITE_LIMIT_COLUMN, 16},
    Switch{SQLITE_LIMIT_EXPR_DEPTH, 32},   Switch{SQLITE_LIMIT_VDBE_OP, 25'000},   Switch{SQLITE_LIMIT_ATTACHED, 0},
    Switch{SQLITE_LIMIT_TRIGGER_DEPTH, 1}, Switch{SQLITE_LIMIT_WORKER_THREADS, 0},
};

constexpr std::uintmax_t headerSize_bytes = 100; // sqlite.org, "Database File Format", 1.3

/// How long to wait for another program that only looks (it may be putting the log in order after a crash).
constexpr int patience_ms = 250;

std::unexpected<Error> damaged(const std::filesystem::path& file, std::string detail)
{
    return failure("journal.damaged", file.string(), {{"detail", std::move(detail)}});
}

/// Whether the file calls itself an SQLite database. It is read through the connection: opening and closing it here
/// would release the locks this process holds on it (POSIX advisory locks go with any close of the file).
bool saysItIsADatabase(const Database& database)
{
    sqlite3_file* file = nullptr;
    if (sqlite3_file_control(database.connection(), "main", SQLITE_FCNTL_FILE_POINTER, &file) != SQLITE_OK
        || file == nullptr || file->pMethods == nullptr)
        return false;
    std::array<char, 16> magic{};
    file->pMethods->xRead(file, magic.data(), static_cast<int>(magic.size()), 0);
    return std::string_view(magic.data(), magic.size()) == std::string_view("SQLite format 3\0", 16);
}

/// Whether pages are missing at the end. SQLite itself lets half a last page pass until it is needed. With a log
/// beside it the file may be shorter than it will be.
bool isCutShort(Database& database, const std::filesystem::path& file)
{
    std::int64_t size_bytes = 0, count = 0;
    if (database.value("PRAGMA page_size", size_bytes) != SQLITE_ROW
        || database.value("PRAGMA page_count", count) != SQLITE_ROW)
        return false; // told by whatever is asked next
    std::error_code none;
    const auto log_bytes = std::filesystem::file_size(file.string() + "-wal", none);
    if (!none && log_bytes > 0) return false;
    const auto bytes = std::filesystem::file_size(file, none);
    return !none && bytes < static_cast<std::uintmax_t>(size_bytes * count);
}

Result<std::string> schemaText(Database& database, const std::filesystem::path& file)
{
    std::string text;
    Statement entries = database.prepare(schemaQuery);
    int code = entries.step();
    for (; code == SQLITE_ROW; code = entries.step())
        for (const int column : {0, 1, 2, 3}) text += entries.text(column) + (column < 3 ? '|' : '\n');
    if (code != SQLITE_DONE) return std::unexpected(readProblem(database, code, file));
    return text;
}

/// The schema of a fresh file, asked of SQLite itself: it adds the indexes behind the primary keys.
const std::string& ownSchema()
{
    static const std::string schema = [] {
        Database memory;
        memory.openMemory();
        for (const char* statement : tables) memory.run(statement);
        return schemaText(memory, {}).value_or("");
    }();
    return schema;
}

bool isOutOfSpace(const Database& database, int code)
{
    const int system = database.systemError();
    return (code & 0xff) == SQLITE_FULL || ((code & 0xff) == SQLITE_IOERR && (system == ENOSPC || system == EDQUOT));
}

} // namespace

Error readProblem(const Database& database, int code, const std::filesystem::path& file)
{
    const auto told = [&](std::string_view what) {
        return Error{std::string(what), file.string(), {{"detail", database.problem()}}};
    };
    if (code == SQLITE_IOERR_SHORT_READ) return told("journal.damaged");
    if (isOutOfSpace(database, code)) return {"journal.full", file.string(), {}}; // of the index beside the file
    switch (code & 0xff) {
    case SQLITE_NOTADB:
        if (!saysItIsADatabase(database)) return {"journal.foreign", file.string(), {}};
        return told("journal.damaged");
    case SQLITE_CORRUPT:
    case SQLITE_FORMAT:
    case SQLITE_TOOBIG:
    case SQLITE_ERROR: return told("journal.damaged"); // a schema that does not parse is an SQLITE_ERROR
    case SQLITE_BUSY:
    case SQLITE_LOCKED: return {"journal.in-use", file.string(), {}};
    case SQLITE_READONLY: return told("journal.read-only");
    default: return told("file.unreadable");
    }
}

Error writeProblem(const Database& database, int code, const std::filesystem::path& file)
{
    const int primary = code & 0xff;
    if (isOutOfSpace(database, code)) return {"journal.full", file.string(), {}};
    if (primary == SQLITE_BUSY || primary == SQLITE_LOCKED) return {"journal.in-use", file.string(), {}};
    return {"journal.unwritable", file.string(), {{"detail", database.problem()}}};
}

Result<void> checkFile(const std::filesystem::path& file)
{
    std::error_code error;
    const auto status = std::filesystem::status(file, error);
    if (status.type() == std::filesystem::file_type::not_found) return failure("file.missing", file.string());
    if (error) return failure("file.unreadable", file.string(), {{"detail", error.message()}});
    if (status.type() != std::filesystem::file_type::regular) return failure("journal.foreign", file.string());
    if (std::filesystem::file_size(file, error) == 0 && !error) return damaged(file, "0 bytes");
    return {};
}

Result<Database> connect(const std::filesystem::path& file, Database::Access access)
{
    Database database;
    if (const int code = database.open(file, access); code != SQLITE_OK)
        return std::unexpected(readProblem(database, code, file));
    sqlite3* connection = database.connection();
    for (const auto [what, on] : switches) sqlite3_db_config(connection, what, on, nullptr);
    // Whoever only reads leaves the log as it is.
    if (access != Database::Access::readWrite)
        sqlite3_db_config(connection, SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
    for (const auto [what, most] : limits) sqlite3_limit(connection, what, most);
    sqlite3_busy_timeout(connection, patience_ms);
    if (const int code = database.run("PRAGMA cell_size_check = ON; PRAGMA mmap_size = 0"); code != SQLITE_OK)
        return std::unexpected(readProblem(database, code, file));
    return database;
}

Result<void> checkForm(Database& database, const std::filesystem::path& file)
{
    std::int64_t application = 0, version = 0;
    if (const int code = database.value("PRAGMA application_id", application); code != SQLITE_ROW)
        return std::unexpected(readProblem(database, code, file));
    if (application != applicationId) {
        // Cut inside its header, a database reads as one without an application.
        std::error_code unknown;
        if (std::filesystem::file_size(file, unknown) < headerSize_bytes) return damaged(file, "header");
        return failure("journal.foreign", file.string());
    }
    if (const int code = database.value("PRAGMA user_version", version); code != SQLITE_ROW)
        return std::unexpected(readProblem(database, code, file));
    if (version > formatVersion)
        return failure("journal.newer", file.string(), {{"found", version}, {"known", formatVersion}});
    if (version < formatVersion) return damaged(file, "user_version " + std::to_string(version));
    if (isCutShort(database, file)) return damaged(file, "cut short");
    auto schema = schemaText(database, file);
    if (!schema) return passOn(schema);
    if (*schema != ownSchema()) return damaged(file, "sqlite_schema");
    return {};
}

Result<void> makeDurable(Database& database, const std::filesystem::path& file)
{
    std::string mode;
    std::int64_t flushes = 0;
    if (const int code = database.value("PRAGMA journal_mode = WAL", mode); code != SQLITE_ROW)
        return std::unexpected(writeProblem(database, code, file));
    database.run("PRAGMA synchronous = FULL");
    if (const int code = database.value("PRAGMA synchronous", flushes); code != SQLITE_ROW)
        return std::unexpected(writeProblem(database, code, file));
    if (mode != "wal" || flushes != 2)
        return failure("journal.unwritable", file.string(),
                       {{"detail", "journal_mode " + mode + ", synchronous " + std::to_string(flushes)}});
    return {};
}

Result<void> makeTables(Database& database, const std::filesystem::path& file, const std::string& job)
{
    // Format and tables are there at once or not at all, and in the file itself before a log is ever begun.
    const std::string begin = "BEGIN IMMEDIATE; PRAGMA application_id = " + std::to_string(applicationId)
                            + "; PRAGMA user_version = " + std::to_string(formatVersion);
    int code = database.run(begin.c_str());
    for (const char* statement : tables)
        if (code == SQLITE_OK) code = database.run(statement);
    if (code == SQLITE_OK) {
        Statement put = database.prepare("INSERT INTO job VALUES (?1)");
        put.bind(1, job);
        code = put.step() == SQLITE_DONE ? database.run("COMMIT") : sqlite3_extended_errcode(database.connection());
    }
    if (code != SQLITE_OK) return std::unexpected(writeProblem(database, code, file));
    return {};
}

} // namespace proofwalk::journal
