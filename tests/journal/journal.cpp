// SPDX-License-Identifier: GPL-3.0-or-later
// The job file while all goes well: what is appended is there, in whose chain, seen by whom, and for whose eyes.
#include "tests/journal/jobs.h"

#include "core/base/digest.h"
#include "core/base/file.h"

#include <QProcess>

#include <sys/stat.h>

using namespace proofwalk;
using namespace proofwalk::journal;
namespace fs = std::filesystem;

class JournalFile : public QObject {
    Q_OBJECT
private slots:
    void whatIsAppendedIsRead();
    void everyOpeningIsAChain();
    void nothingIsBegunByOpeningAlone();
    void clockSetBack();
    void tiesAreCounted();
    void startComesFirstAndOnce();
    void contentsPrivatesPhotographs();
    void ownerOnly();
    void aSecondIsTold();
    void readingWhileOneWrites();
    void readingLeavesNoTrace();
    void namesThatLookLikeAnAddress();
    void theFileSaysWhatItIs();
    void tooLargeIsRefused();
    void existingFileIsLeftAlone();
};

void JournalFile::whatIsAppendedIsRead()
{
    Workshop shop;
    std::vector<Event> stored;
    {
        auto journal = Journal::create(shop.path("a.walk"), shop.key());
        VERIFY_GOOD(journal);
        auto first = journal->append({draft("start", base::Json::Object{{"plan", "x"}}), note(1)}, clockAt(0));
        VERIFY_GOOD(first);
        QCOMPARE(first->size(), 2U);
        auto second = journal->append({note(2)}, clockAt(1));
        VERIFY_GOOD(second);
        stored = *first;
        stored.push_back(second->front());
        auto record = journal->record();
        VERIFY_GOOD(record);
        QCOMPARE(record->events.size(), 3U);
    }
    auto record = Journal::read(shop.path("a.walk"));
    VERIFY_GOOD(record);
    QCOMPARE(record->events.size(), 3U);
    for (std::size_t i = 0; i < stored.size(); ++i) {
        QCOMPARE(record->events[i].hash, stored[i].hash);
        QCOMPARE(canonicalText(record->events[i]), canonicalText(stored[i]));
    }
    QCOMPARE(record->events[0].kind, std::string("start"));
    QCOMPARE(record->events[0].body.text("key"), base::toHex(shop.key()->publicKeyDer()));
    QCOMPARE(record->events[0].body.text("plan"), std::string("x"));
    QCOMPARE(record->heads.size(), 1U);
    QCOMPARE(record->heads[0].head.n, 3);
    const Soundness soundness = checkRecord(*record);
    QVERIFY2(soundness.sound(), soundness.sound() ? "" : qPrintable(told(soundness.problems.front())));
    QCOMPARE(soundness.soundEvents.at(record->events[0].chain), 3);
}

void JournalFile::everyOpeningIsAChain()
{
    Workshop shop;
    const auto file = shop.job(2);
    for (int opening = 0; opening < 2; ++opening) {
        auto journal = Journal::open(file, shop.key());
        VERIFY_GOOD(journal);
        auto events = journal->append({note(10 + opening)}, clockAt(10 + opening));
        VERIFY_GOOD(events);
        QCOMPARE(events->size(), 2U); // the chain's own "open", then ours
        QCOMPARE(events->front().kind, std::string("open"));
        QVERIFY(events->front().body.text("program").starts_with("proofwalk "));
        QCOMPARE(events->front().seen.size(), static_cast<std::size_t>(opening + 1));
        QVERIFY(events->back().seen.empty()); // nothing new since the chain's previous event
        QCOMPARE(events->back().prev, events->front().hash);
    }
    auto record = Journal::read(file);
    VERIFY_GOOD(record);
    QCOMPARE(record->events.size(), 7U);
    QCOMPARE(record->heads.size(), 3U);
    const Soundness soundness = checkRecord(*record);
    QVERIFY2(soundness.sound(), soundness.sound() ? "" : qPrintable(told(soundness.problems.front())));
    QCOMPARE(soundness.soundEvents.size(), 3U);
}

void JournalFile::nothingIsBegunByOpeningAlone()
{
    Workshop shop;
    const auto file = shop.job(1);
    for (int i = 0; i < 3; ++i) {
        auto journal = Journal::open(file, shop.key());
        VERIFY_GOOD(journal);
        VERIFY_GOOD(journal->append({}, clockAt(5)));
    }
    auto record = Journal::read(file);
    VERIFY_GOOD(record);
    QCOMPARE(record->events.size(), 2U);
}

void JournalFile::clockSetBack()
{
    Workshop shop;
    const auto file = shop.job(3);
    auto journal = Journal::open(file, shop.key());
    VERIFY_GOOD(journal);
    auto events = journal->append({note(9)}, clockAt(-600)); // ten hours before what is in the file
    VERIFY_GOOD(events);
    QCOMPARE(events->front().at, clockAt(-600)); // what the clock said is kept
    QCOMPARE(events->front().stamp, (Stamp{clockAt(3).utc_ms, 1}));
    QCOMPARE(events->back().stamp, (Stamp{clockAt(3).utc_ms, 2}));
    auto later = journal->append({note(10)}, clockAt(20));
    VERIFY_GOOD(later);
    QCOMPARE(later->front().stamp, (Stamp{clockAt(20).utc_ms, 0}));
}

void JournalFile::tiesAreCounted()
{
    Workshop shop;
    auto journal = Journal::create(shop.path("a.walk"), shop.key());
    VERIFY_GOOD(journal);
    auto events = journal->append({draft("start"), note(1), note(2)}, clockAt(0));
    VERIFY_GOOD(events);
    for (int i = 0; i < 3; ++i) QCOMPARE((*events)[static_cast<std::size_t>(i)].stamp, (Stamp{clockAt(0).utc_ms, i}));
}

void JournalFile::startComesFirstAndOnce()
{
    Workshop shop;
    auto journal = Journal::create(shop.path("a.walk"), shop.key());
    VERIFY_GOOD(journal);
    QCOMPARE(codeOf(journal->append({note(1)}, clockAt(0))), std::string("journal.not-started"));
    VERIFY_GOOD(journal->append({draft("start")}, clockAt(0)));
    QCOMPARE(codeOf(journal->append({draft("start")}, clockAt(0))), std::string("journal.kind-reserved"));
    QCOMPARE(codeOf(journal->append({note(1), draft("open")}, clockAt(0))), std::string("journal.kind-reserved"));
    QCOMPARE(codeOf(journal->append({draft("Not A Kind")}, clockAt(0))), std::string("event.value"));
    QCOMPARE(codeOf(journal->append({note(1)}, {-1, 0})), std::string("event.value"));
    QCOMPARE(codeOf(journal->append({note(1)}, {0, 5000})), std::string("event.value"));
    auto record = journal->record();
    VERIFY_GOOD(record);
    QCOMPARE(record->events.size(), 1U);
}

void JournalFile::contentsPrivatesPhotographs()
{
    Workshop shop;
    const Private sealed = sealPrivate("above the workbench");
    {
        auto journal = Journal::create(shop.path("a.walk"), shop.key());
        VERIFY_GOOD(journal);
        Draft start = draft("start");
        start.contents = {"the plan", std::string("\0\xff", 2)};
        start.privates = {sealed};
        start.photographs = {"bytes of a picture"};
        VERIFY_GOOD(journal->append({start, note(1)}, clockAt(0)));
        Draft again = note(2); // the same bytes once more are kept once
        again.contents = start.contents;
        again.photographs = start.photographs;
        VERIFY_GOOD(journal->append({again}, clockAt(1)));
        // One by its hash (SHA-256, so that sha256sum tells it too), without the rest.
        const auto picture = journal->photograph(base::sha256Hex("bytes of a picture"));
        VERIFY_GOOD(picture);
        QCOMPARE(*picture, std::string("bytes of a picture"));
        for (const std::string& wrong : {base::sha256Hex("another"), std::string(), std::string("' OR 1")}) {
            const auto none = journal->photograph(wrong);
            QVERIFY(!none);
            QCOMPARE(none.error().code, std::string("journal.no-photograph"));
        }
    }
    auto record = Journal::read(shop.path("a.walk"));
    VERIFY_GOOD(record);
    QCOMPARE(record->contents.size(), 2U);
    QCOMPARE(record->contents.at(base::sha256Hex("the plan")), std::string("the plan"));
    QCOMPARE(record->photographs.at(base::sha256Hex("bytes of a picture")), std::string("bytes of a picture"));
    QCOMPARE(record->privates.at(sealed.commitment).value, std::string("above the workbench"));
    QVERIFY(checkRecord(*record).sound());
}

void JournalFile::ownerOnly()
{
    Workshop shop;
    const mode_t before = ::umask(0);
    auto journal = Journal::create(shop.path("a.walk"), shop.key());
    if (journal) (void)journal->append({draft("start")}, clockAt(0));
    ::umask(before);
    VERIFY_GOOD(journal);
    int files = 0;
    for (const char* name : {"a.walk", "a.walk-wal", "a.walk-shm"}) {
        struct stat facts{};
        QCOMPARE(::stat(shop.path(name).c_str(), &facts), 0);
        QCOMPARE(facts.st_mode & 07777U, 0600U);
        ++files;
    }
    QCOMPARE(files, 3);
}

void JournalFile::aSecondIsTold()
{
    Workshop shop;
    const auto file = shop.job(1);
    {
        auto first = Journal::open(file, shop.key());
        VERIFY_GOOD(first);
        QCOMPARE(codeOf(Journal::open(file, shop.key())), std::string("journal.in-use"));
        VERIFY_GOOD(first->append({note(2)}, clockAt(2)));
        QCOMPARE(codeOf(Journal::open(file, shop.key())), std::string("journal.in-use"));

        // And in another process, which is what matters.
        QProcess other;
        other.start(PROOFWALK_APPENDER,
                    {QString::fromStdString(file.string()), QString::fromStdString(shop.path("keys").string()), "1"});
        QVERIFY(other.waitForFinished());
        QCOMPARE(other.exitCode(), 2);
        QCOMPARE(other.readAllStandardError(), QByteArray("journal.in-use\n"));
        VERIFY_GOOD(first->append({note(3)}, clockAt(3)));
    }
    VERIFY_GOOD(Journal::open(file, shop.key()));
    auto record = Journal::read(file);
    VERIFY_GOOD(record);
    QCOMPARE(record->events.size(), 5U);
}

void JournalFile::readingWhileOneWrites()
{
    Workshop shop;
    const auto file = shop.job(1);
    auto writer = Journal::open(file, shop.key());
    VERIFY_GOOD(writer);
    for (int i = 0; i < 5; ++i) {
        VERIFY_GOOD(writer->append({note(i)}, clockAt(5 + i)));
        auto record = Journal::read(file);
        VERIFY_GOOD(record);
        QCOMPARE(record->events.size(), static_cast<std::size_t>(2 + 2 + i));
        QVERIFY(checkRecord(*record).sound());
    }
    // The readers' coming and going took nothing from the writer.
    QCOMPARE(codeOf(Journal::open(file, shop.key())), std::string("journal.in-use"));
}

void JournalFile::readingLeavesNoTrace()
{
    Workshop shop;
    const auto file = shop.job(3);
    auto before = base::readFile(file);
    VERIFY_GOOD(before);
    VERIFY_GOOD(Journal::read(file));
    auto after = base::readFile(file);
    VERIFY_GOOD(after);
    QVERIFY(*before == *after);
    QVERIFY(!fs::exists(shop.path("job.walk-wal")));
    QVERIFY(!fs::exists(shop.path("job.walk-shm")));
}

void JournalFile::namesThatLookLikeAnAddress()
{
    Workshop shop;
    for (const char* name : {"a?mode=memory.walk", "50%20.walk", "a#b.walk", "Mühle & Laden.walk", "a b.walk"}) {
        QVERIFY(!shop.job(1, name).empty());
        QVERIFY(fs::exists(shop.path(name)));
        auto record = Journal::read(shop.path(name));
        VERIFY_GOOD(record);
        QCOMPARE(record->events.size(), 2U);
    }
}

void JournalFile::theFileSaysWhatItIs()
{
    // Source: sqlite.org, "Database File Format", 1.3: user version at offset 60, application id at offset 68, both
    // big-endian; file format write and read version 2 (write-ahead log) at 18 and 19. public test source
    Workshop shop;
    auto bytes = base::readFile(shop.job(1));
    VERIFY_GOOD(bytes);
    QCOMPARE(bytes->substr(0, 16), std::string("SQLite format 3\0", 16));
    QCOMPARE(bytes->substr(18, 2), std::string("\x02\x02"));
    QCOMPARE(bytes->substr(60, 4), std::string("\0\0\0\x01", 4));
    QCOMPARE(bytes->substr(68, 4), std::string("PWLK"));
}

void JournalFile::tooLargeIsRefused()
{
    Workshop shop;
    const auto file = shop.job(1);
    auto journal = Journal::open(file, shop.key());
    VERIFY_GOOD(journal);
    const std::string words(std::size_t{1} << 20U, 'x');
    QCOMPARE(codeOf(journal->append({draft("note", base::Json::Object{{"text", words}})}, clockAt(2))),
             std::string("journal.event-too-large"));
    Draft large = note(1);
    large.photographs = {std::string((std::size_t{16} << 20U) + 1, 'x')};
    QCOMPARE(codeOf(journal->append({large}, clockAt(2))), std::string("journal.event-too-large"));
    large.photographs = {std::string(std::size_t{16} << 20U, 'x')};
    VERIFY_GOOD(journal->append({large}, clockAt(2)));
    auto record = Journal::read(file);
    VERIFY_GOOD(record);
    QCOMPARE(record->events.size(), 4U);
}

void JournalFile::existingFileIsLeftAlone()
{
    Workshop shop;
    VERIFY_GOOD(base::writeFile(shop.path("mine.txt"), "not yours"));
    QCOMPARE(codeOf(Journal::create(shop.path("mine.txt"), shop.key())), std::string("journal.exists"));
    QCOMPARE(*base::readFile(shop.path("mine.txt")), std::string("not yours"));
    QCOMPARE(codeOf(Journal::create(shop.path("no/such/folder.walk"), shop.key())), std::string("journal.unwritable"));
}

QTEST_GUILESS_MAIN(JournalFile)
#include "journal.moc"
