// SPDX-License-Identifier: GPL-3.0-or-later
// Somebody with the file and SQLite. Each deed is done to a sound job, and the record must name it; where nothing can
// tell, a test says so.
#include "tests/journal/jobs.h"
#include "tests/journal/tools.h"

#include "core/base/digest.h"

using namespace proofwalk;
using namespace proofwalk::journal;
namespace fs = std::filesystem;

namespace {

/// The job under attack: a first chain of 6 events, a second of 4 that has seen it, contents, a private value, a picture.
class Scene {
public:
    Workshop shop;
    fs::path file = shop.path("job.walk");
    std::string first, second; ///< chains

    Scene()
    {
        {
            auto journal = Journal::create(file, shop.key());
            Draft start = draft("start");
            start.contents = {"the plan"};
            start.photographs = {"a picture"};
            start.privates = {sealPrivate("above the door")};
            if (!journal || !journal->append({start}, clockAt(0))) return;
            for (int i = 1; i <= 5; ++i) (void)journal->append({note(i)}, clockAt(i));
        }
        auto journal = Journal::open(file, shop.key("other keys"));
        if (!journal) return;
        for (int i = 6; i <= 8; ++i) (void)journal->append({note(i)}, clockAt(i));
        const auto record = *journal->record();
        for (const Event& event : record.events)
            if (event.n == 1) (event.kind == "start" ? first : second) = event.chain;
    }

    Record record() const { return Journal::read(file).value_or(Record{}); }

    void attack(const std::string& sql) const
    {
        const auto told = withSqlite(file, sql);
        for (const auto& line : told)
            if (line.starts_with("error")) qFatal("%s", line.c_str());
    }

    /// The text of an event with something put in another's place.
    std::string changed(const std::string& chain, int n, const std::string& from, const std::string& to) const
    {
        QString text = QString::fromStdString(
            withSqlite(file, "SELECT text FROM events WHERE chain = '" + chain + "' AND n = " + std::to_string(n))
                .at(0));
        if (text.count(QString::fromStdString(from)) != 1) qFatal("nothing to change");
        return text.replace(QString::fromStdString(from), QString::fromStdString(to)).toStdString();
    }

    void replace(const std::string& chain, int n, const std::string& text, const std::string& hash) const
    {
        attack("UPDATE events SET text = '" + text + "', hash = '" + hash + "' WHERE chain = '" + chain
               + "' AND n = " + std::to_string(n));
    }

    /// Rewrites a chain from event n on so that every link fits again.
    std::string relink(const std::string& chain, int n, std::string text, int last) const
    {
        std::string hash = base::sha256Hex(text);
        replace(chain, n, text, hash);
        for (int next = n + 1; next <= last; ++next) {
            auto event = readEvent(changed(chain, next, "\"kind\"", "\"kind\""));
            event->prev = hash;
            text = canonicalText(*event);
            hash = base::sha256Hex(text);
            replace(chain, next, text, hash);
        }
        return hash;
    }
};

QString listed(const Soundness& soundness)
{
    QStringList lines;
    for (const Error& each : soundness.problems) lines << told(each);
    return lines.join("; ");
}

/// That the first problem has that code and place.
#define NAMED(soundness, code_, where_)                                                                                \
    do {                                                                                                               \
        QVERIFY2(!(soundness).sound(), "taken for sound");                                                             \
        QVERIFY2((soundness).problems.front().code == (code_), qPrintable(listed(soundness)));                         \
        QVERIFY2((soundness).problems.front().where == (where_), qPrintable(listed(soundness)));                       \
    } while (false)

} // namespace

class Tamper : public QObject {
    Q_OBJECT
private slots:
    void theSceneIsSound();
    void anEventIsChanged();
    void anEventIsMadeNonsense();
    void changedAndItsHashToo();
    void theLastEventChangedAndItsHashToo();
    void theWholeChainRecomputed();
    void recomputedWithAnotherKey();
    void recomputedByTheKeysHolder();
    void theTailDropped();
    void theTailAndItsSignatureDropped();
    void anEventAdded();
    void aMiddleEventDropped();
    void sameNumberTwice();
    void aChainAddedUnsigned();
    void aChainFromAnotherJob();
    void aChainAddedByAStrangersKey();
    void aChainDroppedThatWasSeen();
    void theLastChainDropped();
    void namedBytesChanged();
    void aRowUnderAnotherNumber();
    void stampSetBack();
    void theSameInLines();
};

void Tamper::theSceneIsSound()
{
    const Scene scene;
    const Soundness soundness = checkRecord(scene.record());
    QVERIFY2(soundness.sound(), qPrintable(listed(soundness)));
    QCOMPARE(soundness.soundEvents, (std::map<std::string, std::int64_t>{{scene.first, 6}, {scene.second, 4}}));
}

void Tamper::anEventIsChanged()
{
    const Scene scene;
    scene.attack("UPDATE events SET text = '" + scene.changed(scene.first, 4, "\"number\":3", "\"number\":4")
                 + "' WHERE chain = '" + scene.first + "' AND n = 4");
    const Soundness soundness = checkRecord(scene.record());
    NAMED(soundness, "record.event-hash", "chain " + scene.first + ", event 4");
    QCOMPARE(soundness.problems.size(), 1U);
    QCOMPARE(soundness.soundEvents.at(scene.first), 3);
    QCOMPARE(soundness.soundEvents.at(scene.second), 4);
}

void Tamper::anEventIsMadeNonsense()
{
    const Scene scene;
    scene.attack("UPDATE events SET text = '{\"n\":4}' WHERE chain = '" + scene.first + "' AND n = 4");
    const Soundness soundness = checkRecord(scene.record());
    NAMED(soundness, "event.missing", "chain " + scene.first + ", event 4");
    QCOMPARE(soundness.problems.at(1).code, std::string("record.gap"));
    QCOMPARE(soundness.soundEvents.at(scene.first), 3);
}

void Tamper::changedAndItsHashToo()
{
    const Scene scene;
    const std::string text = scene.changed(scene.first, 4, "\"number\":3", "\"number\":4");
    scene.replace(scene.first, 4, text, base::sha256Hex(text));
    const Soundness soundness = checkRecord(scene.record());
    NAMED(soundness, "record.prev", "chain " + scene.first + ", event 5");
    QCOMPARE(soundness.soundEvents.at(scene.first), 3); // event 4 is not the one that event 5 names
}

void Tamper::theLastEventChangedAndItsHashToo()
{
    const Scene scene;
    const std::string text = scene.changed(scene.second, 4, "\"number\":8", "\"number\":9");
    scene.replace(scene.second, 4, text, base::sha256Hex(text));
    const Soundness soundness = checkRecord(scene.record());
    NAMED(soundness, "record.head-other", "chain " + scene.second);
    QCOMPARE(soundness.soundEvents.at(scene.second), 3);
}

void Tamper::theWholeChainRecomputed()
{
    const Scene scene;
    scene.relink(scene.second, 2, scene.changed(scene.second, 2, "\"number\":6", "\"number\":7"), 4);
    const Soundness soundness = checkRecord(scene.record());
    NAMED(soundness, "record.head-other", "chain " + scene.second);

    const Scene seen; // and one that another chain has seen
    seen.relink(seen.first, 2, seen.changed(seen.first, 2, "\"number\":1", "\"number\":2"), 6);
    const Soundness both = checkRecord(seen.record());
    const QString list = listed(both);
    QVERIFY2(list.contains("record.head-other at chain " + QString::fromStdString(seen.first)), qPrintable(list));
    QVERIFY2(list.contains("record.seen-missing at chain " + QString::fromStdString(seen.second + ", event 1")),
             qPrintable(list));
}

void Tamper::recomputedWithAnotherKey()
{
    const Scene scene;
    const std::string hash =
        scene.relink(scene.second, 2, scene.changed(scene.second, 2, "\"number\":6", "\"number\":7"), 4);
    const auto mine = scene.shop.key("attacker");
    const Head head{scene.second, 4, hash};
    auto signature = mine->sign(headText(scene.record().job, head));
    VERIFY_GOOD(signature);
    scene.attack("UPDATE heads SET hash = '" + hash + "', signature = '" + base::toHex(*signature) + "' WHERE chain = '"
                 + scene.second + "'");
    const Soundness soundness = checkRecord(scene.record());
    NAMED(soundness, "record.head-signature", "chain " + scene.second);
}

// What nobody can know: whoever has the machine's key can rebuild a chain that no other chain has seen and whose head
// was never given away. FORMAT.md says so. A head that was given away still tells (the last lines).
void Tamper::recomputedByTheKeysHolder()
{
    const Scene scene;
    const Record before = scene.record();
    const std::string hash =
        scene.relink(scene.second, 2, scene.changed(scene.second, 2, "\"number\":6", "\"number\":7"), 4);
    auto signature = scene.shop.key("other keys")->sign(headText(before.job, {scene.second, 4, hash}));
    VERIFY_GOOD(signature);
    scene.attack("UPDATE heads SET hash = '" + hash + "', signature = '" + base::toHex(*signature) + "' WHERE chain = '"
                 + scene.second + "'");
    Record after = scene.record();
    QVERIFY(checkRecord(after).sound());

    for (const HeadSignature& givenAway : before.heads)
        if (givenAway.head.chain == scene.second)
            for (HeadSignature& each : after.heads)
                if (each.head.chain == scene.second) each = givenAway;
    NAMED(checkRecord(after), "record.head-other", "chain " + scene.second);
}

void Tamper::theTailDropped()
{
    const Scene scene;
    scene.attack("PRAGMA foreign_keys = OFF; DELETE FROM events WHERE chain = '" + scene.second + "' AND n > 2");
    const Soundness soundness = checkRecord(scene.record());
    NAMED(soundness, "record.tail-missing", "chain " + scene.second);
    QCOMPARE(told(soundness.problems.front()).section(" ", -2), QString("from=3 to=4"));
    QCOMPARE(soundness.soundEvents.at(scene.second), 2);
}

void Tamper::theTailAndItsSignatureDropped()
{
    const Scene scene;
    scene.attack("DELETE FROM heads WHERE chain = '" + scene.second + "'; DELETE FROM events WHERE chain = '"
                 + scene.second + "' AND n > 2");
    NAMED(checkRecord(scene.record()), "record.no-head", "chain " + scene.second);
}

void Tamper::anEventAdded()
{
    const Scene scene;
    auto event = readEvent(scene.changed(scene.second, 4, "\"number\":8", "\"number\":9"));
    VERIFY_GOOD(event);
    const auto added = [&](int n) {
        event->prev = event->hash =
            withSqlite(scene.file, "SELECT hash FROM events WHERE chain = '" + scene.second + "' AND n = 4").at(0);
        event->n = n;
        event->stamp.ms += 1000;
        const std::string text = canonicalText(*event);
        scene.attack("INSERT INTO events VALUES ('" + base::sha256Hex(text) + "', '" + scene.second + "', "
                     + std::to_string(n) + ", '" + text + "')");
    };
    added(5);
    const Soundness soundness = checkRecord(scene.record());
    NAMED(soundness, "record.tail-unsigned", "chain " + scene.second);
    added(7); // and beyond a gap
    const Soundness gap = checkRecord(scene.record());
    NAMED(gap, "record.gap", "chain " + scene.second + ", event 7");
    QCOMPARE(gap.soundEvents.at(scene.second), 5);
}

void Tamper::aMiddleEventDropped()
{
    const Scene scene;
    scene.attack("DELETE FROM events WHERE chain = '" + scene.first + "' AND n IN (3, 4)");
    const Soundness soundness = checkRecord(scene.record());
    NAMED(soundness, "record.gap", "chain " + scene.first + ", event 5");
    QCOMPARE(soundness.problems.size(), 1U);
    QCOMPARE(soundness.soundEvents.at(scene.first), 2);
    QCOMPARE(soundness.soundEvents.at(scene.second), 4);
}

void Tamper::sameNumberTwice()
{
    const Scene scene;
    const std::string text = scene.changed(scene.first, 4, "\"number\":3", "\"number\":4");
    scene.attack("INSERT INTO events VALUES ('" + base::sha256Hex(text) + "', '" + scene.first + "', 4, '" + text
                 + "')");
    const Soundness soundness = checkRecord(scene.record());
    NAMED(soundness, "record.fork", "chain " + scene.first + ", event 4");
    QCOMPARE(soundness.problems.size(), 1U);
    QCOMPARE(soundness.soundEvents.at(scene.first), 3);
    QCOMPARE(soundness.soundEvents.at(scene.second), 4);
    // The job can still be gone on with.
    auto journal = Journal::open(scene.file, scene.shop.key());
    VERIFY_GOOD(journal);
    VERIFY_GOOD(journal->append({note(9)}, clockAt(9)));
}

void Tamper::aChainAddedUnsigned()
{
    const Scene scene;
    Event event;
    event.job = scene.record().job;
    event.chain = std::string(32, '7');
    event.n = 1;
    event.stamp = {clockAt(30).utc_ms, 0};
    event.at = clockAt(30);
    event.kind = "open";
    event.body = base::Json::Object{{"key", base::toHex(scene.shop.key("attacker")->publicKeyDer())}};
    const std::string text = canonicalText(event);
    scene.attack("INSERT INTO events VALUES ('" + base::sha256Hex(text) + "', '" + event.chain + "', 1, '" + text
                 + "')");
    const Soundness soundness = checkRecord(scene.record());
    NAMED(soundness, "record.no-head", "chain " + event.chain);
    QCOMPARE(soundness.problems.size(), 1U);
}

void Tamper::aChainFromAnotherJob()
{
    const Scene scene, another;
    const auto rows = [&](const std::string& table) {
        return withSqlite(another.file, "SELECT group_concat(quote(hash) || ',' || quote(chain) || ',' || n || ',' || "
                                        "quote(text), '),(') FROM "
                                            + table);
    };
    scene.attack("INSERT INTO events VALUES (" + rows("events").at(0) + ")");
    const Soundness soundness = checkRecord(scene.record());
    const QString list = listed(soundness);
    for (const char* code : {"record.other-job", "record.start-twice", "record.no-head"})
        QVERIFY2(list.contains(code), qPrintable(list));
    QCOMPARE(soundness.soundEvents.at(scene.first), 6);
    QCOMPARE(soundness.soundEvents.at(another.first), 0);
}

// What the bytes alone cannot tell: a stranger's program may open the job as any program may, and signs with its own key.
// Whose key that is is told only by a person who vouches for it.
void Tamper::aChainAddedByAStrangersKey()
{
    const Scene scene;
    const auto stranger = scene.shop.key("attacker");
    {
        auto journal = Journal::open(scene.file, stranger);
        VERIFY_GOOD(journal);
        VERIFY_GOOD(journal->append({note(666)}, clockAt(30)));
    }
    const Record record = scene.record();
    QVERIFY(checkRecord(record).sound());
    QCOMPARE(std::ranges::count_if(
                 record.events,
                 [&](const Event& event) { return event.body.text("key") == base::toHex(stranger->publicKeyDer()); }),
             1);
}

void Tamper::aChainDroppedThatWasSeen()
{
    const Scene scene;
    scene.attack("DELETE FROM heads WHERE chain = '" + scene.first + "'; DELETE FROM events WHERE chain = '"
                 + scene.first + "'");
    const Soundness soundness = checkRecord(scene.record());
    NAMED(soundness, "record.seen-missing", "chain " + scene.second + ", event 1");
    QVERIFY(listed(soundness).contains("record.no-start"));

    const Scene headLeft;
    headLeft.attack("PRAGMA foreign_keys = OFF; DELETE FROM events WHERE chain = '" + headLeft.second + "'");
    NAMED(checkRecord(headLeft.record()), "record.chain-missing", "chain " + headLeft.second);
}

// What nobody can know without a head that was given away: that the last opening of a job ever was.
void Tamper::theLastChainDropped()
{
    const Scene scene;
    scene.attack("DELETE FROM heads WHERE chain = '" + scene.second + "'; DELETE FROM events WHERE chain = '"
                 + scene.second + "'");
    QVERIFY(checkRecord(scene.record()).sound());
}

void Tamper::namedBytesChanged()
{
    const Scene scene;
    scene.attack("UPDATE contents SET bytes = x'00'; UPDATE private SET value = 'below the door'; "
                 "UPDATE photographs SET bytes = x'0102'");
    const Record record = scene.record();
    const Soundness soundness = checkRecord(record);
    NAMED(soundness, "record.content-hash", "content " + base::sha256Hex("the plan"));
    QCOMPARE(soundness.problems.at(1).code, std::string("record.private-commitment"));
    QCOMPARE(soundness.problems.at(2).where, "photograph " + base::sha256Hex("a picture"));
    QCOMPARE(soundness.problems.size(), 3U);

    scene.attack("DELETE FROM private; DELETE FROM photographs; UPDATE contents SET bytes = CAST('the plan' AS BLOB)");
    QVERIFY(checkRecord(scene.record()).sound()); // an edition without them is sound
}

void Tamper::aRowUnderAnotherNumber()
{
    const Scene scene;
    scene.attack("UPDATE events SET n = 40 WHERE chain = '" + scene.first + "' AND n = 4");
    NAMED(checkRecord(scene.record()), "record.row", "chain " + scene.first + ", event 4");
}

void Tamper::stampSetBack()
{
    // By the key's own holder, every link and signature good.
    const Scene scene;
    auto event = readEvent(scene.changed(scene.second, 3, "\"number\":7", "\"number\":7"));
    event->stamp = {clockAt(1).utc_ms, 0};
    const std::string hash = scene.relink(scene.second, 3, canonicalText(*event), 4);
    auto signature = scene.shop.key("other keys")->sign(headText(event->job, {scene.second, 4, hash}));
    VERIFY_GOOD(signature);
    scene.attack("UPDATE heads SET hash = '" + hash + "', signature = '" + base::toHex(*signature) + "' WHERE chain = '"
                 + scene.second + "'");
    const Soundness soundness = checkRecord(scene.record());
    NAMED(soundness, "record.stamp-back", "chain " + scene.second + ", event 3");
    QCOMPARE(soundness.soundEvents.at(scene.second), 2);
}

void Tamper::theSameInLines()
{
    const Scene scene;
    const std::string lines = toLines(scene.record());
    QStringList all = QString::fromStdString(lines).split('\n');
    int caught = 0, refused = 0;
    for (int drop = 0; drop + 1 < all.size(); ++drop) {
        QStringList left = all;
        const QString line = left.takeAt(drop);
        if (line.contains("\"commitment\"") || line.contains("\"content\"")) continue; // may be left out
        auto record = fromLines(left.join('\n').toStdString());
        if (!record) ++refused; // the first line
        else if (!checkRecord(*record).sound()) ++caught;
        else QFAIL(qPrintable("unseen: " + line));
    }
    QCOMPARE(refused, 1);
    QCOMPARE(caught, 10 + 2); // events, heads
}

QTEST_GUILESS_MAIN(Tamper)
#include "tamper.moc"
