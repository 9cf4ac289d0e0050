// SPDX-License-Identifier: GPL-3.0-or-later
// The shop's whole day, told to the desk line by line, with every list of the window watching it. What the lists say at
// the end is held against what the command line says of the same file (where --json).
#include "core/base/file.h"
#include "core/base/json.h"
#include "core/command/command.h"
#include "qml/models/areastates.h"
#include "qml/models/arrival.h"
#include "qml/models/desk.h"
#include "qml/models/devicecard.h"
#include "qml/models/findinglist.h"
#include "qml/models/glance.h"
#include "qml/models/loopreadings.h"
#include "qml/models/planlist.h"
#include "qml/models/planproblems.h"
#include "qml/models/putbacklist.h"
#include "qml/models/readinglist.h"
#include "qml/models/roomlist.h"
#include "qml/models/sequencestrip.h"
#include "qml/models/spotlist.h"
#include "qml/models/trialcount.h"
#include "qml/models/verdictcount.h"
#include "qml/models/walklist.h"
#include "qml/models/whereabouts.h"
#include "qml/parts/kinds.h"
#include "tests/qml/rig/stage.h"

#include <QAbstractItemModelTester>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSignalSpy>

#include <algorithm>
#include <sstream>

using namespace proofwalk;
using namespace proofwalk::models;

namespace {

const std::filesystem::path shop = PROOFWALK_SOURCE "/fixtures/corner-shop";

QJsonObject whereOf(const std::filesystem::path& file)
{
    std::ostringstream out, err;
    const std::vector<std::string> words{"where", "--json", file.string()};
    command::runWords(words, out, err);
    return QJsonDocument::fromJson(QByteArray::fromStdString(out.str())).object();
}

/// The enumerator's word as the command line has it.
QString wordOf(int mark)
{
    switch (mark) {
    case parts::verdict::Pass: return QStringLiteral("pass");
    case parts::verdict::Fail: return QStringLiteral("fail");
    case parts::verdict::TooClose: return QStringLiteral("too-close");
    case parts::verdict::NoAccess: return QStringLiteral("no-access");
    case parts::verdict::Running: return QStringLiteral("running");
    case parts::verdict::ToDo: return QStringLiteral("to-do");
    case parts::verdict::NotApplicable: return QStringLiteral("n/a");
    case parts::verdict::Retest: return QStringLiteral("retest");
    default: return {};
    }
}

} // namespace

class DayTest : public rig::WindowTest {
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    std::unique_ptr<rig::Stage> m_stage;
    std::filesystem::path m_file;
    int m_jobs = 0;

    void begin()
    {
        m_stage = std::make_unique<rig::Stage>();
        m_file = std::filesystem::path(m_folder.path().toStdString()) / ("job" + std::to_string(++m_jobs) + ".walk");
        bool done = false;
        Desk::instance().start(m_file, shop, this, [&](const Result<void>& outcome) {
            if (!outcome) qWarning("%s", outcome.error().code.c_str());
            done = true;
        });
        QTRY_VERIFY_WITH_TIMEOUT(done, 20000);
    }

    /// Empty if core took it, else the code of the refusal.
    QString tell(const QByteArray& line)
    {
        const auto command = base::parseJson(line.toStdString());
        if (!command) return QStringLiteral("not JSON");
        QString outcome = QStringLiteral("?");
        Desk::instance().tell(
            this, *command,
            [&](const Result<int>& taken) { outcome = taken ? QString() : QString::fromStdString(taken.error().code); },
            shop);
        if (!QTest::qWaitFor([&] { return outcome != QStringLiteral("?"); }, 20000)) return QStringLiteral("no answer");
        return outcome;
    }

    static QList<QByteArray> day()
    {
        const auto bytes = base::readFile(shop / "walk.jsonl");
        QList<QByteArray> lines;
        for (const QByteArray& line : QByteArray::fromStdString(*bytes).split('\n'))
            if (!line.isEmpty() && !line.startsWith('#')) lines << line;
        return lines;
    }

private Q_SLOTS:
    void init()
    {
        WindowTest::begin();
        begin();
    }
    void cleanup()
    {
        Desk::instance().close();
        m_stage.reset();
        WindowTest::end();
    }

    void everyListFollowsTheDay()
    {
        WalkList walk;
        RoomList rooms;
        SpotList spots;
        spots.setTag(QStringLiteral("GR-02"));
        VerdictCount counts;
        LoopReadings loops;
        ReadingList readings;
        PlanList plan;
        PlanProblems problems;
        FindingList findings;
        Glance glance;
        DeviceCard card;
        card.setTag(QStringLiteral("GR-02"));
        Arrival arrival;
        PutBackList back;
        AreaStates areas;
        SequenceStrip strip;
        strip.setSequence(QStringLiteral("entry-exit"));
        const QList<QAbstractItemModel*> lists{&walk,  &rooms,        &spots,        &counts,     &loops, &readings,
                                               &plan,  &problems,     &findings,     &arrival,    &back,  &areas,
                                               &strip, card.proofs(), card.stages(), card.steps()};
        std::vector<std::unique_ptr<QAbstractItemModelTester>> testers;
        for (QAbstractItemModel* list : lists)
            testers.push_back(std::make_unique<QAbstractItemModelTester>(
                list, QAbstractItemModelTester::FailureReportingMode::QtTest));
        QCOMPARE(glance.answered(), 0);
        QCOMPARE(glance.total(), 10);
        for (const QByteArray& line : day()) QCOMPARE(tell(line), QString());

        const QJsonObject where = whereOf(m_file);
        QMap<QString, QString> verdicts;
        int answered = 0;
        for (const QJsonValue each : where["devices"].toArray()) {
            const QString verdict = each["verdict"].toString();
            verdicts[each["tag"].toString()] = verdict;
            answered += verdict != "to-do" && verdict != "retest" && verdict != "running" ? 1 : 0;
        }
        QCOMPARE(glance.answered(), answered);
        int devices = 0;
        for (const WalkRow& row : walk.rows()) {
            if (row.type != WalkList::Device) continue;
            ++devices;
            QCOMPARE(wordOf(row.verdict), verdicts[row.key]);
        }
        QCOMPARE(devices, verdicts.size());
        int pending = 0;
        for (const QJsonValue each : where["findings"].toArray()) {
            const QString status = each["status"].toString();
            pending += status != "cleared" && status != "noted" ? 1 : 0;
        }
        QCOMPARE(glance.findings(), pending);
        QVERIFY(glance.putBack() == 0);
        QCOMPARE(loops.rowCount(), 8); // the day measures eight loops (fixtures/corner-shop/walk.jsonl, "round")
        for (const LoopRow& row : loops.rows()) QVERIFY2(row.figure.startsWith("4."), qPrintable(row.figure));
        QTRY_VERIFY(problems.ready());
        QVERIFY(readings.rowCount() > loops.rowCount());
        QCOMPARE(plan.rowCount(), 10 + 3); // ten devices in three rooms
    }

    void aTapIsShownWhenItIsDurable()
    {
        QCOMPARE(tell(R"({"do":"state","area":"shop","state":"walk-test"})"), QString());
        DeviceCard card;
        card.setTag(QStringLiteral("GR-06"));
        QCOMPARE(card.stepNames(), QStringList({"fixing"}));
        const auto before = Desk::instance().job()->state().eventCount;
        card.asPlanned();
        QVERIFY(card.busy());
        card.asPlanned(); // a second tap before the first is durable
        QTRY_VERIFY(!card.busy());
        QCOMPARE(Desk::instance().job()->state().eventCount, before + 1);
        QCOMPARE(card.stepNames(), QStringList({"opened", "closed"}));
        card.asPlanned();
        QTRY_VERIFY(!card.busy());
        QCOMPARE(card.stepNames().size(), 3);
        card.withdraw(0, QStringLiteral("looked at another one"));
        QTRY_VERIFY(!card.busy());
        QCOMPARE(card.problem(), QString());
        QCOMPARE(card.stepNames(), QStringList({"fixing"}));
        card.notApplicable({});
        QTRY_VERIFY(!card.busy());
        QVERIFY(!card.problem().isEmpty()); // core wants a reason, and the card says so
        card.noAccess(QStringLiteral("a shelf stands before it"));
        QTRY_VERIFY(!card.busy());
        QCOMPARE(card.verdictWord(), QStringLiteral("no access"));
    }

    void inBulkIsMarkedAndRefusedWhereItMustBe()
    {
        QCOMPARE(tell(R"({"do":"state","area":"shop","state":"walk-test"})"), QString());
        // Inspections are looked at one by one: core refuses them in bulk (core/walk/answering.cpp, checkHow).
        DeviceCard card;
        card.setTag(QStringLiteral("GR-06"));
        card.asPlannedInBulk();
        QTRY_VERIFY(!card.busy());
        QVERIFY(!card.problem().isEmpty());
    }

    void trialsCountThemselvesAndOutliveAKill()
    {
        QCOMPARE(tell(R"({"do":"state","area":"shop","state":"walk-test"})"), QString());
        {
            TrialCount count;
            count.setOf(QStringLiteral("GR-02/boundary-walk"));
            count.setWanted(3);
            count.answered();
            count.missed();
        }
        TrialCount count;
        const QSignalSpy complete(&count, &TrialCount::complete);
        count.setOf(QStringLiteral("GR-02/boundary-walk"));
        count.setWanted(3);
        QCOMPARE(count.hits(), 1);
        QCOMPARE(count.tries(), 2);
        count.answered();
        count.answered(); // one too many changes nothing
        QCOMPARE(complete.size(), 1);
        QCOMPARE(complete.first(), QVariantList({2, 3}));
    }

    void unknownTagIsNoCard()
    {
        DeviceCard card;
        card.setTag(QStringLiteral("no such tag"));
        QVERIFY(!card.found());
        card.asPlanned();
        QVERIFY(!card.busy());
    }
};

PROOFWALK_WINDOW_TEST(DayTest)
#include "day.moc"
