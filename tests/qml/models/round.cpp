// SPDX-License-Identifier: GPL-3.0-or-later
// A round typed key by key, and the same values by the command line: the two jobs must then say the same of every
// device, finding and rung. The plan is of 28 wired windows (manyloops.h).
#include "core/command/command.h"
#include "qml/models/areastates.h"
#include "qml/models/desk.h"
#include "qml/models/readingentry.h"
#include "qml/models/roundgrid.h"
#include "qml/models/whereabouts.h"
#include "qml/parts/kinds.h"
#include "tests/qml/models/manyloops.h"
#include "tests/qml/rig/stage.h"

#include <QAbstractItemModelTester>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSignalSpy>

#include <filesystem>
#include <memory>
#include <sstream>

using namespace proofwalk;
using namespace proofwalk::models;

namespace {

constexpr int patience_ms = 20'000;
constexpr int loops = 28;

/// What is typed for a zone: near 4.70, one far too high, one cut, one between.
QString typedFor(int zone)
{
    if (zone == 11) return QStringLiteral("5.600");
    if (zone == 20) return QStringLiteral("3.900");
    return QString::number(4.700 + 0.001 * (zone % 9), 'f', 3);
}

QJsonObject whereOf(const std::filesystem::path& file)
{
    std::ostringstream out, err;
    const std::vector<std::string> words{"where", "--json", file.string()};
    command::runWords(words, out, err);
    return QJsonDocument::fromJson(QByteArray::fromStdString(out.str())).object();
}

} // namespace

class Round : public rig::WindowTest {
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    std::filesystem::path m_plan, m_file;
    std::unique_ptr<rig::Stage> m_stage;
    int m_jobs = 0;

    bool begin();
    bool tell(base::Json::Object command);

private Q_SLOTS:
    void initTestCase()
    {
        m_plan = rig::planOfLoops(std::filesystem::path(m_folder.path().toStdString()) / "plan", loops);
    }
    void cleanup();
    void cellsStandAsThePanelHasThem();
    void typedIsAsTaken();
    void halfTypedOutlivesTheProgram();
    void setAreaIsSaid();
    void noAccessMovesOn();
};

bool Round::begin()
{
    m_stage = std::make_unique<rig::Stage>();
    m_file = std::filesystem::path(m_folder.path().toStdString()) / ("job" + std::to_string(++m_jobs) + ".walk");
    bool done = false, good = false;
    Desk::instance().start(m_file, m_plan, this, [&](const Result<void>& outcome) {
        done = true;
        good = outcome.has_value();
        if (!good) qInfo("%s %s", outcome.error().code.c_str(), outcome.error().where.c_str());
    });
    return QTest::qWaitFor([&] { return done; }, patience_ms) && good;
}

bool Round::tell(base::Json::Object command)
{
    bool done = false, good = false;
    Desk::instance().tell(this, base::Json(std::move(command)), [&](const Result<int>& outcome) {
        done = true;
        good = outcome.has_value();
    });
    return QTest::qWaitFor([&] { return done; }, patience_ms) && good;
}

void Round::cleanup()
{
    m_stage.reset();
    Desk::instance().close();
    end();
}

void Round::cellsStandAsThePanelHasThem()
{
    QVERIFY(begin());
    RoundGrid grid;
    const QAbstractItemModelTester tester(&grid, QAbstractItemModelTester::FailureReportingMode::QtTest);
    grid.setRound(QStringLiteral("loop-readings"));
    QCOMPARE(grid.count(), loops);
    for (int row = 0; row < loops; ++row)
        QCOMPARE(grid.rows()[static_cast<std::size_t>(row)].number, QString::number(row + 1));
    QCOMPARE(grid.current(), 0);
    grid.setRound(QStringLiteral("no-such-round"));
    QCOMPARE(grid.count(), 0);
    QCOMPARE(grid.current(), -1);
}

void Round::typedIsAsTaken()
{
    const base::Json::Object meter{{"do", "kit"},
                                   {"name", "meter A"},
                                   {"measures", base::Json::Array{base::Json::Object{
                                                    {"quantity", "resistance"}, {"percent", "0.3"}, {"digits", 2}}}}};
    QVERIFY(begin());
    QVERIFY(tell(meter));
    RoundGrid grid;
    grid.setRound(QStringLiteral("loop-readings"));
    ReadingEntry entry;
    connect(&entry, &ReadingEntry::recorded, &grid, &RoundGrid::moveOn);
    for (int zone = 1; zone <= loops; ++zone) {
        QCOMPARE(grid.number(), QString::number(zone));
        entry.show(grid.subject(), grid.step());
        QVERIFY(entry.known());
        QCOMPARE(entry.instrument(), QStringLiteral("meter A"));
        for (const QChar key : typedFor(zone)) {
            if (key == u'.') entry.point();
            else entry.digit(QString(key));
        }
        QCOMPARE(entry.typed(), typedFor(zone));
        QVERIFY(entry.complete());
        QSignalSpy recorded(&entry, &ReadingEntry::recorded);
        const int before = entry.verdict();
        entry.record();
        QVERIFY2(recorded.wait(patience_ms), qPrintable(entry.problem()));
        QCOMPARE(grid.rows()[static_cast<std::size_t>(zone - 1)].verdict, before);
    }
    QCOMPARE(grid.answered(), loops);
    // 4.7 kOhm, 1 %, with 20 m of 0.22 mm2 out and back (3.2 ohm): from 4.653 to 4.750 kOhm, by Ohm's law.
    QCOMPARE(grid.rows()[0].verdict, static_cast<int>(parts::verdict::Pass));
    QCOMPARE(grid.rows()[10].verdict, static_cast<int>(parts::verdict::Fail));
    QCOMPARE(grid.rows()[19].verdict, static_cast<int>(parts::verdict::Fail));
    Desk::instance().close();
    const QJsonObject typed = whereOf(m_file);

    QVERIFY(begin());
    QVERIFY(tell(meter));
    for (int zone = 1; zone <= loops; ++zone)
        QVERIFY(tell({{"do", "answer"},
                      {"zone", std::to_string(zone)},
                      {"step", "loop-ohms"},
                      {"value", (typedFor(zone) + " kOhm").toStdString()},
                      {"instrument", "meter A"}}));
    Desk::instance().close();
    const QJsonObject taken = whereOf(m_file);
    for (const char* part : {"devices", "rungs", "standing", "events"}) {
        QVERIFY(!typed[QLatin1String(part)].isUndefined());
        QCOMPARE(typed[QLatin1String(part)], taken[QLatin1String(part)]);
    }
    QCOMPARE(typed["findings"].toArray().size(), 2);
    QCOMPARE(taken["findings"].toArray().size(), 2);
}

void Round::halfTypedOutlivesTheProgram()
{
    QVERIFY(begin());
    {
        ReadingEntry entry;
        entry.show(QStringLiteral("zone 3"), QStringLiteral("loop-ohms"));
        for (const char* key : {"4", "7"}) entry.digit(QLatin1String(key));
    }
    Desk::instance().close();
    bool open = false;
    Desk::instance().open(m_file, this, [&](const Result<void>& outcome) { open = outcome.has_value(); });
    QTRY_VERIFY_WITH_TIMEOUT(open, patience_ms);
    ReadingEntry entry;
    entry.show(QStringLiteral("zone 3"), QStringLiteral("loop-ohms"));
    QCOMPARE(entry.typed(), QStringLiteral("47"));
    entry.show(QStringLiteral("zone 4"), QStringLiteral("loop-ohms"));
    QCOMPARE(entry.typed(), QString());
}

void Round::setAreaIsSaid()
{
    QVERIFY(begin());
    ReadingEntry entry;
    entry.show(QStringLiteral("zone 1"), QStringLiteral("loop-ohms"));
    QCOMPARE(entry.wanting(), ReadingEntry::Instrument);
    AreaStates states;
    const QAbstractItemModelTester tester(&states, QAbstractItemModelTester::FailureReportingMode::QtTest);
    QSignalSpy taken(&states, &AreaStates::taken);
    states.say(QStringLiteral("mill"), QStringLiteral("set"), QStringLiteral("full"));
    QVERIFY(taken.wait(patience_ms));
    QCOMPARE(states.rows()[0].state, QStringLiteral("set"));
    QCOMPARE(entry.wanting(), ReadingEntry::AreaState);
    entry.digit(QStringLiteral("5"));
    QSignalSpy recorded(&entry, &ReadingEntry::recorded);
    entry.record();
    QTRY_VERIFY_WITH_TIMEOUT(!entry.busy(), patience_ms);
    QCOMPARE(recorded.count(), 0);
    QVERIFY(!entry.problem().isEmpty());
    QCOMPARE(entry.typed(), QStringLiteral("5")); // refused, and still there
}

void Round::noAccessMovesOn()
{
    QVERIFY(begin());
    RoundGrid grid;
    grid.setRound(QStringLiteral("loop-readings"));
    grid.setCurrent(4);
    grid.noAccess(QStringLiteral("the cable is behind the new wall"));
    QTRY_COMPARE_WITH_TIMEOUT(grid.rows()[4].verdict, static_cast<int>(parts::verdict::NoAccess), patience_ms);
    QTRY_COMPARE(grid.current(), 5);
    grid.noAccess({});
    QTRY_VERIFY_WITH_TIMEOUT(!grid.problem().isEmpty(), patience_ms);
    QCOMPARE(grid.current(), 5);
}

PROOFWALK_WINDOW_TEST(Round)
#include "round.moc"
