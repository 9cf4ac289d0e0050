// SPDX-License-Identifier: GPL-3.0-or-later
// The keys of the pad, one by one, and what is said of a reading: on fixtures/corner-shop. What a loop may read is
// Ohm's law on its resistors (common practice), worked out by hand beside each check.
#include "qml/models/readingentry.h"
#include "qml/models/desk.h"
#include "qml/models/stopwatch.h"
#include "qml/parts/kinds.h"
#include "tests/qml/rig/stage.h"

#include <QSignalSpy>

#include <cmath>
#include <filesystem>
#include <memory>

using namespace proofwalk;
using namespace proofwalk::models;

class Typing : public rig::WindowTest {
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    std::unique_ptr<rig::Stage> m_stage;
    int m_jobs = 0;

private Q_SLOTS:
    void init();
    void cleanup();
    void keysOneByOne();
    void onlyKeysOfAPad();
    void verdictAsItIsTyped();
    void endsOfTheLoop();
    void unitsOfOneQuantity();
    void unknownStepsAreNone();
    void stopwatchGoesOnUnseen();
};

void Typing::init()
{
    begin();
    m_stage = std::make_unique<rig::Stage>();
    const auto file =
        std::filesystem::path(m_folder.path().toStdString()) / ("job" + std::to_string(++m_jobs) + ".walk");
    bool done = false, good = false;
    Desk::instance().start(file, PROOFWALK_SOURCE "/fixtures/corner-shop", this, [&](const Result<void>& outcome) {
        done = true;
        good = outcome.has_value();
    });
    QTRY_VERIFY_WITH_TIMEOUT(done, 20'000);
    QVERIFY(good);
}

void Typing::cleanup()
{
    m_stage.reset();
    Desk::instance().close();
    end();
}

void Typing::keysOneByOne()
{
    ReadingEntry entry;
    entry.show(QStringLiteral("zone 1"), QStringLiteral("loop-ohms"));
    QVERIFY(entry.known());
    QCOMPARE(entry.unitText(), QStringLiteral("kΩ"));
    entry.point();
    QCOMPARE(entry.typed(), QStringLiteral("0."));
    QVERIFY(!entry.complete()); // "0." is no number yet
    entry.point();
    entry.digit(QStringLiteral("5"));
    QCOMPARE(entry.typed(), QStringLiteral("0.5"));
    entry.sign();
    QCOMPARE(entry.typed(), QStringLiteral("-0.5"));
    entry.sign();
    for (int i = 0; i < 9; ++i) entry.erase();
    QCOMPARE(entry.typed(), QString());
    QVERIFY(!entry.fresh());
    for (int i = 0; i < 40; ++i) entry.digit(QStringLiteral("9"));
    QCOMPARE(entry.typed().size(), 12); // more no instrument shows
    QVERIFY(entry.complete());
}

void Typing::onlyKeysOfAPad()
{
    ReadingEntry entry;
    entry.show(QStringLiteral("zone 1"), QStringLiteral("loop-ohms"));
    for (const char* key : {"", "12", "a", "٣", "-", " "}) entry.digit(QString::fromUtf8(key));
    QCOMPARE(entry.typed(), QString());
    entry.record(); // nothing typed: nothing happens
    QVERIFY(!entry.busy());
    entry.digit(QStringLiteral("0"));
    entry.digit(QStringLiteral("4"));
    QCOMPARE(entry.typed(), QStringLiteral("4"));
}

void Typing::verdictAsItIsTyped()
{
    ReadingEntry entry;
    entry.show(QStringLiteral("zone 1"), QStringLiteral("loop-ohms"));
    // zones.csv: 4700 ohm at the end and 4700 over the contact, 1 %: at rest about 4.65 to 4.75, in alarm 9.3 to 9.5.
    QVERIFY(entry.lower() > 4.64 && entry.lower() < 4.66);
    QVERIFY(entry.upper() > 4.74 && entry.upper() < 4.80);
    entry.setTyped(QStringLiteral("4.70"));
    QCOMPARE(entry.verdict(), static_cast<int>(parts::verdict::Pass));
    QCOMPARE(entry.diagnosis(), QString());
    entry.setTyped(QStringLiteral("5.60"));
    QCOMPARE(entry.verdict(), static_cast<int>(parts::verdict::Fail));
    QVERIFY(entry.diagnosis().contains(QStringLiteral("too high")));
    entry.setTyped(QStringLiteral("9.40"));
    QVERIFY(entry.diagnosis().contains(QStringLiteral("alarm")));
    entry.setTyped(QStringLiteral("0.001"));
    QVERIFY(entry.diagnosis().contains(QStringLiteral("bridged")));
    entry.setTyped(QStringLiteral("3.00"));
    QVERIFY(entry.diagnosis().contains(QStringLiteral("too low")));
    entry.setTyped(QStringLiteral("200"));
    QVERIFY(entry.diagnosis().contains(QStringLiteral("cut")));
}

void Typing::endsOfTheLoop()
{
    ReadingEntry entry;
    entry.show(QStringLiteral("zone 1"), QStringLiteral("loop-ohms"));
    entry.digit(QStringLiteral("4"));
    entry.end(0);
    QCOMPARE(entry.typed(), QString());
    QVERIFY(entry.complete());
    QCOMPARE(entry.verdict(), static_cast<int>(parts::verdict::Fail));
    entry.erase();
    QVERIFY(!entry.fresh());
    entry.end(1);
    QSignalSpy recorded(&entry, &ReadingEntry::recorded);
    entry.record();
    QVERIFY2(recorded.wait(20'000), qPrintable(entry.problem()));
    QCOMPARE(entry.verdict(), static_cast<int>(parts::verdict::Fail));
    QCOMPARE(entry.valueText(), entry.rightEnd());
}

void Typing::unitsOfOneQuantity()
{
    ReadingEntry entry;
    entry.show(QStringLiteral("zone 1"), QStringLiteral("loop-ohms"));
    QCOMPARE(entry.units(), (QStringList{QStringLiteral("Ω"), QStringLiteral("kΩ"), QStringLiteral("MΩ")}));
    const double lower_kOhm = entry.lower();
    entry.setUnit(0);
    QVERIFY(std::abs(entry.lower() - 1000 * lower_kOhm) < 1e-6);
    entry.setTyped(QStringLiteral("4700"));
    QCOMPARE(entry.verdict(), static_cast<int>(parts::verdict::Pass));
    entry.setUnit(99);
    QCOMPARE(entry.unit(), 0);
}

void Typing::unknownStepsAreNone()
{
    ReadingEntry entry;
    for (const char* subject : {"", "zone 999", "zone", "timer", "timer entry-delay", "area nowhere", "GR-99"}) {
        entry.show(QLatin1String(subject), QStringLiteral("loop-ohms"));
        QVERIFY(!entry.known());
        entry.digit(QStringLiteral("1"));
        entry.point();
        entry.record();
        QCOMPARE(entry.typed(), QString());
    }
    entry.show(QStringLiteral("GR-01"), QStringLiteral("fixing")); // a step, and no number
    QVERIFY(!entry.known());
}

void Typing::stopwatchGoesOnUnseen()
{
    Stopwatch watch;
    watch.setOf(QStringLiteral("a step"));
    QVERIFY(!watch.running());
    watch.start();
    QTest::qWait(30);
    Stopwatch again; // as after a kill: it knows only what was kept
    again.setOf(QStringLiteral("a step"));
    QVERIFY(again.running());
    QVERIFY(std::abs(again.elapsed() - watch.elapsed()) < 0.5);
    QSignalSpy ticks(&again, &Stopwatch::ticked);
    QTest::qWait(350);
    QCOMPARE(ticks.count(), 0); // nobody looks
    again.setSeen(true);
    QTRY_VERIFY(ticks.count() >= 3);
    again.stop();
    QVERIFY(again.stopped());
    const double held = again.elapsed();
    QTest::qWait(30);
    QCOMPARE(again.elapsed(), held);
    again.clear();
    Stopwatch cleared;
    cleared.setOf(QStringLiteral("a step"));
    QVERIFY(!cleared.running());
}

PROOFWALK_WINDOW_TEST(Typing)
#include "readingentry.moc"
