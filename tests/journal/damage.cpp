// SPDX-License-Identifier: GPL-3.0-or-later
// Files that are no sound job of this format: cut short, from elsewhere, from later, with things in them that do not belong.
#include "tests/journal/jobs.h"
#include "tests/journal/tools.h"

#include "core/base/file.h"

#include <QRandomGenerator>

#include <sys/wait.h>
#include <unistd.h>

using namespace proofwalk;
using namespace proofwalk::journal;
namespace fs = std::filesystem;

namespace {

std::string bytesOf(const fs::path& file) { return base::readFile(file).value_or("unreadable"); }

/// Tries both doors; gives the two codes, and fails nothing by itself.
struct Codes {
    std::string read, open;
};

Codes tryBoth(const Workshop& shop, const fs::path& file)
{
    Codes codes{codeOf(Journal::read(file)), codeOf(Journal::open(file, shop.key()))};
    return codes;
}

#define REFUSED(file, code)                                                                                            \
    do {                                                                                                               \
        const std::string before = bytesOf(file);                                                                      \
        const Codes codes = tryBoth(shop, file);                                                                       \
        QCOMPARE(codes.read, std::string(code));                                                                       \
        QCOMPARE(codes.open, std::string(code));                                                                       \
        QVERIFY(bytesOf(file) == before);                                                                              \
    } while (false)

} // namespace

class Damage : public QObject {
    Q_OBJECT
private slots:
    void missing();
    void foreign();
    void newer();
    void cutShort();
    void schemaEntriesThatDoNotBelong_data();
    void schemaEntriesThatDoNotBelong();
    void bytesFlipped();
    void bytesInPlaceOfText();
    void readOnlyFolder();
    void readOnlyFolderAfterACrash();
    void aCrashIsReadWithoutHarm();
};

void Damage::missing()
{
    const Workshop shop;
    const Codes codes = tryBoth(shop, shop.path("none.walk"));
    QCOMPARE(codes.read, std::string("file.missing"));
    QCOMPARE(codes.open, std::string("file.missing"));
    QVERIFY(!fs::exists(shop.path("none.walk")));
}

void Damage::foreign()
{
    const Workshop shop;
    const fs::path text = shop.path("letter.txt"), database = shop.path("other.db"), folder = shop.path("folder");
    VERIFY_GOOD(base::writeFile(text, "Dear customer, the alarm works.\n"));
    REFUSED(text, "journal.foreign");
    VERIFY_GOOD(base::writeFile(text, std::string(10'000, '\0')));
    REFUSED(text, "journal.foreign");
    withSqlite(database, "CREATE TABLE recipes(name TEXT)");
    REFUSED(database, "journal.foreign");
    fs::create_directory(folder);
    const Codes codes = tryBoth(shop, folder);
    QCOMPARE(codes.read, std::string("journal.foreign"));
    QCOMPARE(codes.open, std::string("journal.foreign"));
}

void Damage::newer()
{
    const Workshop shop;
    const fs::path file = shop.job(2);
    withSqlite(file, "PRAGMA user_version = 2; CREATE TABLE of_the_future(x)");
    REFUSED(file, "journal.newer");
    QCOMPARE(told(Journal::read(file)).section(" ", -2), QString("found=2 known=1"));
    withSqlite(file, "PRAGMA user_version = 0");
    REFUSED(file, "journal.damaged");
}

void Damage::cutShort()
{
    const Workshop shop;
    const std::string whole = bytesOf(shop.job(40));
    const fs::path file = shop.path("cut.walk");
    for (std::size_t size = 0; size < whole.size(); size += size < 200 ? 10 : 1021) {
        VERIFY_GOOD(base::writeFile(file, std::string_view(whole).substr(0, size), base::FileAccess::ownerOnly));
        // What is left of the sixteen bytes by which a database is known decides whether it is a damaged one.
        REFUSED(file, size == 10 ? "journal.foreign" : "journal.damaged");
        fs::remove(file);
    }
}

void Damage::schemaEntriesThatDoNotBelong_data()
{
    QTest::addColumn<QString>("sql");
    QTest::newRow("a table") << "CREATE TABLE extra(x)";
    QTest::newRow("a view") << "CREATE VIEW v AS SELECT 1";
    QTest::newRow("a trigger") << "CREATE TRIGGER t AFTER INSERT ON events BEGIN DELETE FROM heads; END";
    QTest::newRow("an index") << "CREATE INDEX i ON events(text)";
    QTest::newRow("a virtual table") << "CREATE VIRTUAL TABLE v USING fts5(x)";
    QTest::newRow("statistics") << "ANALYZE";
    QTest::newRow("a view in a table's place")
        << "DROP TABLE contents; CREATE VIEW contents AS SELECT '' AS hash, x'' AS bytes";
    QTest::newRow("a table less") << "DROP TABLE photographs";
    QTest::newRow("a table of another form") << "DROP TABLE private; CREATE TABLE private(commitment, salt, value)";
    QTest::newRow("a column more") << "ALTER TABLE events ADD COLUMN note TEXT";
    QTest::newRow("nonsense") << "PRAGMA writable_schema = ON; INSERT INTO sqlite_schema VALUES "
                                 "('table', 'x', 'x', 3, 'CREATE TABEL x')";
    QTest::newRow("no job") << "DELETE FROM job";
    QTest::newRow("two jobs") << "INSERT INTO job VALUES ('x')";
    QTest::newRow("a job without an id") << "UPDATE job SET id = 'x'";
}

void Damage::schemaEntriesThatDoNotBelong()
{
    QFETCH(QString, sql);
    const Workshop shop;
    const fs::path file = shop.job(2);
    const auto told = withSqlite(file, sql.toStdString());
    QVERIFY2(told.empty() || !told.back().starts_with("error"), told.empty() ? "" : told.back().c_str());
    REFUSED(file, "journal.damaged");
}

void Damage::bytesFlipped()
{
    // Whatever a flipped byte does, it is refused, told, or of no consequence: never a crash, never another record.
    const Workshop shop;
    const fs::path file = shop.job(20);
    const std::string whole = bytesOf(file);
    const std::string lines = toLines(*Journal::read(file));
    const quint32 seed = QRandomGenerator::global()->generate();
    qInfo("seed %u", seed);
    QRandomGenerator random(seed);
    int refused = 0, told = 0, harmless = 0;
    for (int round = 0; round < 400; ++round) {
        std::string bytes = whole;
        bytes[random.bounded(quint32(bytes.size()))] ^= static_cast<char>(1U << random.bounded(8U));
        const fs::path hurt = shop.path("hurt.walk");
        std::FILE* out = std::fopen(hurt.c_str(), "wb"); // no flush: nothing here is to last
        QVERIFY(out != nullptr && std::fwrite(bytes.data(), 1, bytes.size(), out) == bytes.size());
        std::fclose(out);
        auto record = Journal::read(hurt);
        if (!record) {
            ++refused;
        } else if (!checkRecord(*record).sound()) {
            ++told;
        } else {
            ++harmless; // unused space
            QCOMPARE(toLines(*record), lines);
        }
        (void)Journal::open(hurt, shop.key());
        for (const char* ending : {"", "-wal", "-shm"}) fs::remove(hurt.string() + ending);
    }
    qInfo("%d refused, %d told, %d harmless", refused, told, harmless);
    QVERIFY(refused > 0 && told > 0 && harmless > 0);
}

void Damage::bytesInPlaceOfText()
{
    // A hostile file can hold what the schema forbids; made here by a table without STRICT under the same text.
    const Workshop shop;
    const fs::path file = shop.job(2);
    const std::string sql = withSqlite(file, "SELECT sql FROM sqlite_schema WHERE name = 'events'").at(0);
    const auto done = withSqlite(
        file,
        "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = replace(sql, ' STRICT', '') WHERE name = 'events'; "
        "PRAGMA writable_schema = RESET; UPDATE events SET chain = CAST(chain AS BLOB), text = 7 WHERE n = 2; "
        "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = '"
            + sql + "' WHERE name = 'events'");
    QVERIFY2(done.empty(), done.empty() ? "" : done.back().c_str());
    REFUSED(file, "journal.damaged");
}

namespace {

/// Runs as nobody, since for root no folder is read-only. -1 if that cannot be had.
int asNobody(const std::function<int()>& act)
{
    if (::geteuid() != 0) return act();
    const pid_t child = ::fork();
    if (child == 0) {
        if (::setgid(65534) != 0 || ::setuid(65534) != 0) ::_exit(99);
        ::_exit(act());
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) && WEXITSTATUS(status) != 99 ? WEXITSTATUS(status) : -1;
}

/// A folder others may look into and not write to, the file in it readable.
void lock(const fs::path& folder)
{
    fs::permissions(folder.parent_path(), fs::perms::owner_all | fs::perms::others_exec);
    for (const auto& entry : fs::directory_iterator(folder)) fs::permissions(entry, fs::perms(0444));
    fs::permissions(folder, fs::perms(0555));
}

} // namespace

void Damage::readOnlyFolder()
{
    const Workshop shop;
    fs::create_directory(shop.path("locked"));
    const fs::path file = shop.job(3, "locked/job.walk");
    const auto key = shop.key();
    lock(shop.path("locked"));
    const int read = asNobody([&] {
        auto record = Journal::read(file);
        return record && record->events.size() == 4 && checkRecord(*record).sound() ? 0 : 1;
    });
    if (read == -1) QSKIP("cannot become an ordinary user here");
    const int open = asNobody([&] { return codeOf(Journal::open(file, key)) == "journal.read-only" ? 0 : 1; });
    const int create = asNobody(
        [&] { return codeOf(Journal::create(shop.path("locked/b.walk"), key)) == "journal.unwritable" ? 0 : 1; });
    fs::permissions(shop.path("locked"), fs::perms(0700));
    QCOMPARE(read, 0);
    QCOMPARE(open, 0);
    QCOMPARE(create, 0);
}

void Damage::readOnlyFolderAfterACrash()
{
    const Workshop shop;
    for (const bool index : {true, false}) {
        const fs::path folder = shop.path(index ? "with" : "without"), file = folder / "job.walk";
        fs::create_directory(folder);
        {
            auto journal = Journal::open(shop.job(1, index ? "c.walk" : "d.walk"), shop.key());
            VERIFY_GOOD(journal);
            VERIFY_GOOD(journal->append({note(9)}, clockAt(9)));
            for (const char* ending : {"", "-wal", "-shm"}) // what a crash would leave
                if (index || std::string_view(ending) != "-shm")
                    fs::copy_file(shop.path(index ? "c.walk" : "d.walk").string() + ending, file.string() + ending);
        }
        lock(folder);
        const int read = asNobody([&] {
            auto record = Journal::read(file);
            if (!record) std::fprintf(stderr, "%s\n", qPrintable(told(record)));
            return record && record->events.size() == 4 && checkRecord(*record).sound() ? 0 : 1;
        });
        fs::permissions(folder, fs::perms(0700));
        if (read == -1) QSKIP("cannot become an ordinary user here");
        QCOMPARE(read, 0);
    }
}

void Damage::aCrashIsReadWithoutHarm()
{
    const Workshop shop;
    const fs::path file = shop.path("crashed.walk");
    {
        auto journal = Journal::open(shop.job(1), shop.key());
        VERIFY_GOOD(journal);
        VERIFY_GOOD(journal->append({note(9)}, clockAt(9)));
        for (const char* ending : {"", "-wal"})
            fs::copy_file(shop.path("job.walk").string() + ending, file.string() + ending);
    }
    const std::string before = bytesOf(file), log = bytesOf(file.string() + "-wal");
    for (int i = 0; i < 2; ++i) {
        auto record = Journal::read(file);
        VERIFY_GOOD(record);
        QCOMPARE(record->events.size(), 4U);
        QVERIFY(bytesOf(file) == before);
        QVERIFY(bytesOf(file.string() + "-wal") == log);
        QVERIFY(!fs::exists(file.string() + "-shm"));
    }
    auto journal = Journal::open(file, shop.key());
    VERIFY_GOOD(journal);
    VERIFY_GOOD(journal->append({note(10)}, clockAt(10)));
    auto record = journal->record();
    VERIFY_GOOD(record);
    QCOMPARE(record->events.size(), 6U);
    QVERIFY(checkRecord(*record).sound());
}

QTEST_GUILESS_MAIN(Damage)
#include "damage.moc"
