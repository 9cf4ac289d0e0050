// SPDX-License-Identifier: GPL-3.0-or-later
// Rows of a job file into memory. SQLite's own checks do not see a flipped byte inside a value, so a row is taken for
// what its bytes say; checkRecord() then holds them against their hashes.
#include "core/journal/store.h"

#include "core/base/digest.h"
#include "core/base/text.h"

#include <fmt/format.h>
#include <sqlite3.h>

#include <utility>

namespace proofwalk::journal {
namespace {

/// Calls `take` with each row. The rows may be nonsense, their number and size are bounded by the file's.
template <class Take>
Result<void> eachRow(Database& database, const std::filesystem::path& file, std::string_view sql, Take take)
{
    Statement rows = database.prepare(sql);
    int code = rows.step();
    for (; code == SQLITE_ROW; code = rows.step()) take(rows);
    if (code != SQLITE_DONE) return std::unexpected(readProblem(database, code, file));
    return {};
}

/// Where a row of `events` says that it belongs; its words are shown only if they are what they should be.
std::string placeOf(const std::string& chain, std::int64_t n)
{
    return base::isLowerHex(chain, 32) ? fmt::format("chain {}, event {}", chain, n) : "events";
}

void takeEvent(const Statement& row, Record& record)
{
    const std::string hash = row.text(0), chain = row.text(1);
    const std::int64_t n = row.integer(2);
    auto event = readEvent(row.text(3));
    if (!event) {
        record.unreadable.push_back(std::move(event.error()).within(placeOf(chain, n)));
        return;
    }
    const bool named = base::isLowerHex(hash, 64);
    if (event->chain != chain || event->n != n || !named)
        record.unreadable.push_back({"record.row", placeOf(event->chain, event->n), {}});
    if (named) event->hash = hash; // what the file claims
    record.events.push_back(std::move(*event));
}

/// A row that stands under what is no hash is set aside: nothing can name it, nor could it be written down.
void takeBytes(const Statement& row, std::map<std::string, std::string>& into, const char* code, const char* place,
               Record& record)
{
    if (base::isLowerHex(row.text(0), 64)) into.emplace(row.text(0), row.text(1));
    else record.unreadable.push_back({code, place, {}});
}

void takePrivate(const Statement& row, Record& record)
{
    const std::string commitment = row.text(0);
    const bool named = base::isLowerHex(commitment, 64);
    if (named && base::isLowerHex(row.text(1), 32) && base::isUtf8(row.text(2)))
        record.privates.emplace(commitment, Private{commitment, row.text(1), row.text(2)});
    else
        record.unreadable.push_back(
            {"record.private-commitment", "private value" + (named ? " " + commitment : std::string()), {}});
}

void takeHead(const Statement& row, Record& record)
{
    if (base::isLowerHex(row.text(0), 32) && base::isLowerHex(row.text(2), 64))
        record.heads.push_back({{row.text(0), row.integer(1), row.text(2)}, row.text(3)});
    else record.unreadable.push_back({"record.head-signature", "heads", {{"n", row.integer(1)}}});
}

} // namespace

Result<std::string> loadJob(Database& database, const std::filesystem::path& file)
{
    std::vector<std::string> ids;
    auto read = eachRow(database, file, "SELECT id FROM job", [&](Statement& row) { ids.push_back(row.text(0)); });
    if (!read) return passOn(read);
    if (ids.size() != 1 || !base::isLowerHex(ids.front(), 32))
        return failure("journal.damaged", file.string(), {{"detail", "job"}});
    return ids.front();
}

Result<Record> loadRecord(Database& database, const std::filesystem::path& file)
{
    auto job = loadJob(database, file);
    if (!job) return passOn(job);
    Record record;
    record.job = std::move(*job);

    auto read = eachRow(database, file, "SELECT hash, chain, n, text FROM events ORDER BY chain, n, hash",
                        [&](Statement& row) { takeEvent(row, record); });
    if (read)
        read = eachRow(database, file, "SELECT hash, bytes FROM contents", [&](Statement& row) {
            takeBytes(row, record.contents, "record.content-hash", "content", record);
        });
    if (read)
        read = eachRow(database, file, "SELECT commitment, salt, value FROM private",
                       [&](Statement& row) { takePrivate(row, record); });
    if (read)
        read = eachRow(database, file, "SELECT hash, bytes FROM photographs", [&](Statement& row) {
            takeBytes(row, record.photographs, "record.photograph-hash", "photograph", record);
        });
    if (read)
        read = eachRow(database, file, "SELECT chain, n, hash, signature FROM heads",
                       [&](Statement& row) { takeHead(row, record); });
    if (!read) return passOn(read);
    return record;
}

Result<std::vector<Event>> loadLastEvents(Database& database, const std::filesystem::path& file)
{
    // Chain after chain along the index, so that the cost does not grow with the events.
    Statement nextChain = database.prepare("SELECT min(chain) FROM events WHERE chain > ?1");
    Statement last = database.prepare("SELECT hash, text FROM events WHERE chain = ?1 ORDER BY n DESC, hash LIMIT 1");
    std::vector<Event> events;
    std::string chain;
    while (true) {
        nextChain.bind(1, chain);
        if (const int code = nextChain.step(); code != SQLITE_ROW)
            return std::unexpected(readProblem(database, code, file));
        const std::string before = std::exchange(chain, nextChain.text(0));
        nextChain.reset();
        if (chain.empty()) return events;
        // Bytes in place of text sort after every text: they would come again for ever.
        if (chain <= before) return failure("journal.damaged", file.string(), {{"detail", "events"}});
        last.bind(1, chain);
        if (const int code = last.step(); code != SQLITE_ROW) return std::unexpected(readProblem(database, code, file));
        auto event = readEvent(last.text(1));
        // What is no event, or not the one its hash names, has not been seen.
        if (event && event->hash == last.text(0) && event->chain == chain) events.push_back(std::move(*event));
        last.reset();
    }
}

} // namespace proofwalk::journal
