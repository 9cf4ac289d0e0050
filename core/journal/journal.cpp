// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/journal.h"

#include "core/base/digest.h"
#include "core/journal/chain.h"
#include "core/journal/store.h"

#include <fcntl.h>
#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cassert>
#include <cerrno>
#include <system_error>

namespace proofwalk::journal {
namespace {

/// The statements of an append, prepared once.
struct Writer {
    Statement event, content, sealed, photograph, head;

    explicit Writer(Database& database)
        : event(database.prepare("INSERT INTO events VALUES (?1, ?2, ?3, ?4)")),
          content(database.prepare("INSERT OR IGNORE INTO contents VALUES (?1, ?2)")),
          sealed(database.prepare("INSERT OR IGNORE INTO private VALUES (?1, ?2, ?3)")),
          photograph(database.prepare("INSERT OR IGNORE INTO photographs VALUES (?1, ?2)")),
          head(database.prepare("INSERT OR REPLACE INTO heads VALUES (?1, ?2, ?3, ?4)"))
    {
    }
};

int runOnce(Statement& statement)
{
    const int code = statement.step();
    statement.reset();
    return code == SQLITE_DONE ? SQLITE_OK : code;
}

std::unexpected<Error> tooLarge(const std::filesystem::path& file, std::size_t bytes)
{
    return failure("journal.event-too-large", file.string(), {{"bytes", static_cast<std::int64_t>(bytes)}});
}

/// What a file may not take in could never be read again.
Result<void> checkSizes(const std::vector<Draft>& drafts, const std::filesystem::path& file)
{
    const auto check = [&](const std::string& bytes) -> Result<void> {
        if (bytes.size() > rowLimit_bytes) return tooLarge(file, bytes.size());
        return {};
    };
    for (const Draft& draft : drafts) {
        for (const auto& bytes : draft.contents)
            if (auto fits = check(bytes); !fits) return fits;
        for (const auto& bytes : draft.photographs)
            if (auto fits = check(bytes); !fits) return fits;
        for (const auto& sealed : draft.privates) {
            assert(commitmentOf(sealed.salt, sealed.value) == sealed.commitment);
            if (auto fits = check(sealed.value); !fits) return fits;
        }
    }
    return {};
}

/// "Owner-only" from its first byte on, and never over another file.
Result<void> makeEmptyFile(const std::filesystem::path& file)
{
    const int descriptor = ::open(file.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
    if (descriptor >= 0) {
        ::close(descriptor);
        return {};
    }
    if (errno == EEXIST) return failure("journal.exists", file.string());
    if (errno == ENOSPC || errno == EDQUOT) return failure("journal.full", file.string());
    return failure("journal.unwritable", file.string(), {{"detail", std::generic_category().message(errno)}});
}

/// SQLite writes beside the file too: the log of a folder that cannot be written to cannot be begun.
Result<void> checkWritable(const std::filesystem::path& file)
{
    const auto folder = file.has_parent_path() ? file.parent_path() : std::filesystem::path(".");
    for (const auto& path : {file, folder})
        if (::access(path.c_str(), W_OK) != 0)
            return failure("journal.read-only", file.string(), {{"detail", std::generic_category().message(errno)}});
    return {};
}

} // namespace

struct Journal::File {
    std::filesystem::path path;
    Database database;
    std::unique_ptr<Writer> writer;
    Chain chain;
    std::shared_ptr<const SigningKey> key;
    std::int64_t version = -1; ///< SQLite's data_version: changes when another connection has written

    File() = default;
    File(const File&) = delete;
    File& operator=(const File&) = delete;
    ~File()
    {
        writer.reset();
        if (!database.isOpen() || !database.inTransaction()) return; // another owns the file
        rollBack();
        database.run("PRAGMA wal_checkpoint(TRUNCATE)"); // so that the file alone is the whole job
    }

    /// Takes the right to write and keeps it: a write transaction stands open as long as the journal does, renewed
    /// after each commit. SQLite gives it to one connection alone, readers are not hindered, and it goes with the
    /// process.
    Result<void> own()
    {
        if (!database.inTransaction())
            if (const int code = database.run("BEGIN IMMEDIATE"); code != SQLITE_OK)
                return std::unexpected(writeProblem(database, code, path));
        std::int64_t now = 0;
        if (const int code = database.value("PRAGMA data_version", now); code != SQLITE_ROW)
            return std::unexpected(readProblem(database, code, path));
        if (now == version) return {};
        // First time, or somebody wrote in the moment between two transactions.
        auto last = loadLastEvents(database, path);
        if (!last) return passOn(last);
        chain.learn(*last);
        version = now;
        return {};
    }

    void rollBack()
    {
        if (database.inTransaction()) database.run("ROLLBACK");
    }

    int put(const Event& event)
    {
        writer->event.bind(1, event.hash);
        writer->event.bind(2, event.chain);
        writer->event.bind(3, event.n);
        writer->event.bind(4, canonicalText(event));
        return runOnce(writer->event);
    }

    int put(const Draft& draft)
    {
        int code = SQLITE_OK;
        for (const auto& bytes : draft.contents) {
            writer->content.bind(1, base::sha256Hex(bytes));
            writer->content.bindBytes(2, bytes);
            if (code == SQLITE_OK) code = runOnce(writer->content);
        }
        for (const auto& bytes : draft.photographs) {
            writer->photograph.bind(1, base::sha256Hex(bytes));
            writer->photograph.bindBytes(2, bytes);
            if (code == SQLITE_OK) code = runOnce(writer->photograph);
        }
        for (const auto& sealed : draft.privates) {
            writer->sealed.bind(1, sealed.commitment);
            writer->sealed.bind(2, sealed.salt);
            writer->sealed.bind(3, sealed.value);
            if (code == SQLITE_OK) code = runOnce(writer->sealed);
        }
        return code;
    }

    int put(const Head& head, const std::string& signature)
    {
        writer->head.bind(1, head.chain);
        writer->head.bind(2, head.n);
        writer->head.bind(3, head.hash);
        writer->head.bind(4, base::toHex(signature));
        return runOnce(writer->head);
    }

    /// Writes all and commits; whatever fails leaves nothing.
    Result<void> commit(const std::vector<Draft>& drafts, const std::vector<Event>& events, const Head& head)
    {
        auto signature = key->sign(headText(chain.job(), head));
        if (!signature) return passOn(signature);
        int code = SQLITE_OK;
        for (const Draft& draft : drafts)
            if (code == SQLITE_OK) code = put(draft);
        for (const Event& event : events)
            if (code == SQLITE_OK) code = put(event);
        if (code == SQLITE_OK) code = put(head, *signature);
        if (code == SQLITE_OK) code = database.run("COMMIT");
        if (code == SQLITE_OK) return {};
        auto problem = writeProblem(database, code, path);
        rollBack();
        return std::unexpected(std::move(problem));
    }
};

Journal::Journal(std::unique_ptr<File> file) : m_file(std::move(file)) {}
Journal::Journal(Journal&&) noexcept = default;
Journal& Journal::operator=(Journal&&) noexcept = default;
Journal::~Journal() = default;

Result<Journal> Journal::create(const std::filesystem::path& file, std::shared_ptr<const SigningKey> machineKey)
{
    if (auto made = makeEmptyFile(file); !made) return passOn(made);
    auto filled = [&]() -> Result<void> {
        auto database = connect(file, Database::Access::readWrite);
        if (!database) return passOn(database);
        return makeTables(*database, file, base::randomHex(16));
    }();
    auto journal = filled ? open(file, std::move(machineKey)) : Result<Journal>(std::unexpected(filled.error()));
    if (!journal) ::unlink(file.c_str()); // it was made here a moment ago and holds nothing
    return journal;
}

Result<Journal> Journal::open(const std::filesystem::path& file, std::shared_ptr<const SigningKey> machineKey)
{
    if (auto good = checkFile(file); !good) return passOn(good);
    if (auto good = checkWritable(file); !good) return passOn(good);
    auto database = connect(file, Database::Access::readWrite);
    if (!database) return passOn(database);
    if (auto good = checkForm(*database, file); !good) return passOn(good);
    if (database->isReadOnly()) return failure("journal.read-only", file.string(), {{"detail", database->problem()}});
    auto job = loadJob(*database, file);
    if (!job) return passOn(job);
    if (auto durable = makeDurable(*database, file); !durable) return passOn(durable);

    auto opened = std::make_unique<File>();
    opened->path = file;
    opened->database = std::move(*database);
    opened->key = std::move(machineKey);
    opened->chain = Chain(*job, base::toHex(opened->key->publicKeyDer()));
    opened->writer = std::make_unique<Writer>(opened->database);
    if (auto owned = opened->own(); !owned) return passOn(owned);
    return Journal(std::move(opened));
}

// Taken over, not looked at: whoever appends has no further use for them.
// NOLINTNEXTLINE(performance-unnecessary-value-param)
Result<std::vector<Event>> Journal::append(std::vector<Draft> drafts, const base::WallClock& now)
{
    if (drafts.empty()) return std::vector<Event>();
    if (auto good = checkSizes(drafts, m_file->path); !good) return passOn(good);
    if (auto owned = m_file->own(); !owned) return passOn(owned);

    Chain next = m_file->chain; // becomes the chain once all is durable
    auto events = next.extend(drafts, now);
    if (!events) return passOn(events);
    for (const Event& event : *events) {
        const std::string text = canonicalText(event);
        if (text.size() > eventLimit_bytes) return tooLarge(m_file->path, text.size());
        // What is written is held against the reader's own rules first: a record nobody can read is no record.
        if (auto read = readEvent(text); !read) return passOn(read);
    }
    if (auto done = m_file->commit(drafts, *events, next.head()); !done) return passOn(done);
    m_file->chain = std::move(next);
    // If it fails, the next append says so.
    (void)m_file->own(); // NOLINT(bugprone-unused-return-value)
    return events;
}

Result<Record> Journal::record() const { return loadRecord(m_file->database, m_file->path); }

Result<std::string> Journal::photograph(const std::string& hash) const
{
    Statement row = m_file->database.prepare("SELECT bytes FROM photographs WHERE hash = ?1");
    row.bind(1, hash);
    const int code = row.step();
    if (code != SQLITE_ROW && code != SQLITE_DONE)
        return std::unexpected(readProblem(m_file->database, code, m_file->path));
    std::string bytes = code == SQLITE_ROW ? row.text(0) : std::string();
    if (code == SQLITE_DONE || base::sha256Hex(bytes) != hash)
        return failure("journal.no-photograph", m_file->path.string(), {{"found", hash}});
    return bytes;
}

const std::string& Journal::job() const { return m_file->chain.job(); }

} // namespace proofwalk::journal
