// SPDX-License-Identifier: GPL-3.0-or-later
// Reading a job file without leaving a trace: no log, no index beside it, no byte changed.
#include "core/journal/journal.h"

#include "core/base/digest.h"
#include "core/journal/store.h"

#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

#include <system_error>

namespace proofwalk::journal {
namespace {

std::filesystem::path beside(const std::filesystem::path& file, const char* ending) { return file.string() + ending; }

/// What tells that a file was written to meanwhile.
struct Trace {
    ino_t node = 0;
    off_t bytes = 0;
    timespec changed{};
    off_t log_bytes = 0; ///< 0 as well if there is no log

    friend bool operator==(const Trace& left, const Trace& right)
    {
        return left.node == right.node && left.bytes == right.bytes && left.changed.tv_sec == right.changed.tv_sec
            && left.changed.tv_nsec == right.changed.tv_nsec && left.log_bytes == right.log_bytes;
    }
};

Trace traceOf(const std::filesystem::path& file)
{
    struct stat facts{};
    Trace trace;
    if (::stat(file.c_str(), &facts) == 0) {
        trace.node = facts.st_ino;
        trace.bytes = facts.st_size;
        trace.changed = facts.st_mtim;
    }
    if (::stat(beside(file, "-wal").c_str(), &facts) == 0) trace.log_bytes = facts.st_size;
    return trace;
}

Result<Record> readThrough(const std::filesystem::path& open, const std::filesystem::path& named,
                           Database::Access access)
{
    auto database = connect(open, access);
    if (!database) return passOn(database);
    // One transaction: what is read is the state of one moment.
    if (const int code = database->run("PRAGMA query_only = ON; BEGIN"); code != SQLITE_OK)
        return std::unexpected(readProblem(*database, code, named));
    if (auto good = checkForm(*database, named); !good) return passOn(good);
    std::string verdict;
    if (const int code = database->value("PRAGMA quick_check(1)", verdict); code != SQLITE_ROW)
        return std::unexpected(readProblem(*database, code, named));
    if (verdict != "ok") return failure("journal.damaged", named.string(), {{"detail", verdict}});
    return loadRecord(*database, named);
}

/// A private folder that goes when it is no longer needed.
struct PrivateFolder {
    std::filesystem::path path;
    PrivateFolder()
    {
        std::error_code error;
        std::string pattern = (std::filesystem::temp_directory_path(error) / "proofwalk-XXXXXX").string();
        if (!error && ::mkdtemp(pattern.data()) != nullptr) path = pattern;
    }
    PrivateFolder(const PrivateFolder&) = delete;
    PrivateFolder& operator=(const PrivateFolder&) = delete;
    ~PrivateFolder()
    {
        std::error_code ignored;
        if (!path.empty()) std::filesystem::remove_all(path, ignored);
    }
};

/// A crash left a log, and the folder lets nobody put it in order: that is done on a copy. No program has the file open
/// for writing then, or there would be an index beside it.
Result<Record> readCopy(const std::filesystem::path& file)
{
    const PrivateFolder folder;
    const auto copy = folder.path / "copy.walk";
    std::error_code error;
    if (folder.path.empty()) error = std::make_error_code(std::errc::no_such_file_or_directory);
    else std::filesystem::copy_file(file, copy, error);
    if (!error) std::filesystem::copy_file(beside(file, "-wal"), beside(copy, "-wal"), error);
    if (error) return failure("file.unreadable", file.string(), {{"detail", error.message()}});
    return readThrough(copy, file, Database::Access::readOnly);
}

bool hasIndex(const std::filesystem::path& file)
{
    std::error_code ignored;
    return std::filesystem::exists(beside(file, "-shm"), ignored);
}

} // namespace

Result<Record> Journal::read(const std::filesystem::path& file)
{
    constexpr int tries = 4;
    for (int i = 0; i < tries; ++i) {
        if (auto good = checkFile(file); !good) return passOn(good);
        const Trace before = traceOf(file);
        // A closed job has no log and can be read as a thing that does not change; whether it did is seen afterwards.
        const bool isClosed = before.log_bytes == 0;
        if (!isClosed && hasIndex(file)) return readThrough(file, file, Database::Access::readOnly);
        auto record = isClosed ? readThrough(file, file, Database::Access::immutable) : readCopy(file);
        if (traceOf(file) == before) return record;
    }
    return failure("journal.in-use", file.string());
}

} // namespace proofwalk::journal
