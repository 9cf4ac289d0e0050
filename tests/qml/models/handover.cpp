// SPDX-License-Identifier: GPL-3.0-or-later
// The handover through its models: the ladder against what the command line tells of the same file, the customer's
// acceptance, the installer's key, the report; the report is then verified by the command line.
#include "core/base/file.h"
#include "core/command/command.h"
#include "qml/models/agreement.h"
#include "qml/models/desk.h"
#include "qml/models/filelist.h"
#include "qml/models/installerkey.h"
#include "qml/models/jobdoor.h"
#include "qml/models/joblist.h"
#include "qml/models/ladder.h"
#include "qml/models/normallist.h"
#include "qml/models/reportdesk.h"
#include "qml/models/runglist.h"
#include "qml/models/shownlist.h"
#include "qml/models/whereabouts.h"
#include "tests/qml/rig/stage.h"

#include <QAbstractItemModelTester>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <sstream>

using namespace proofwalk;
using namespace proofwalk::models;

namespace {

constexpr int patience_ms = 60'000; // of a machine that others use too

/// What the program prints when it is given these words, and its exit status.
std::pair<QByteArray, int> say(const std::vector<std::string>& words)
{
    std::ostringstream out, err;
    const auto status = command::runWords(words, out, err);
    return {QByteArray::fromStdString(out.str() + err.str()), static_cast<int>(status)};
}

bool idle() { return !Desk::instance().busy(); }

} // namespace

class HandoverTest : public rig::WindowTest {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void badPlanIsToldAndBeginsNothing();
    void beginsFromAPlan();
    void reopensByItsName();
    void ladderAndCommandLineAgree();
    void eachRungLeadsSomewhere();
    void everythingIsPutBackAndOffTest();
    void shownIsRecordedAndWithdrawn();
    void finalIsRefusedWhileSomethingStands();
    void acceptanceNeedsInk();
    void acceptanceIsRecorded();
    void keyNeedsTheSamePassphraseTwice();
    void keyIsMade();
    void draftIsLookedAt();
    void wrongPassphraseRecordsNothing();
    void reportIsSignedAndVerified();
    void putAwayItStandsOnTheShelf();

private:
    QJsonObject where() const
    {
        return QJsonDocument::fromJson(say({"where", m_file.toStdString(), "--json"}).first).object();
    }

    std::unique_ptr<rig::Stage> m_stage;
    QTemporaryDir m_folder;
    QString m_file, m_report;
};

void HandoverTest::initTestCase()
{
    m_hold_ms = -1; // the test itself runs commands by this thread
    m_file = m_folder.filePath("shop.walk");
    begin();
    m_stage = std::make_unique<rig::Stage>(); // the sentences
    JobShelf::instance(); // as the program does before its first page
}

void HandoverTest::badPlanIsToldAndBeginsNothing()
{
    const QString plan = m_folder.filePath("bad");
    QVERIFY(QDir().mkpath(plan));
    // A device without a kind, and one whose zone is in no sheet.
    QVERIFY(base::writeFile((plan + "/devices.csv").toStdString(), "tag,kind,room\nA-01,,hall\n"));
    JobDoor door;
    door.start(plan, m_file);
    QTRY_VERIFY_WITH_TIMEOUT(!door.busy(), patience_ms);
    QVERIFY(!door.problem().isEmpty());
    QVERIFY(!door.problems().isEmpty());
    QVERIFY2(door.problems().first().contains("devices.csv"), qPrintable(door.problems().first()));
    QVERIFY(!QFile::exists(m_file));
    QVERIFY(Desk::instance().job() == nullptr);
}

void HandoverTest::beginsFromAPlan()
{
    JobDoor door;
    door.start(PROOFWALK_SOURCE "/fixtures/corner-shop", m_file);
    QTRY_VERIFY_WITH_TIMEOUT(!door.busy(), patience_ms);
    QCOMPARE(door.problem(), QString());
    QVERIFY(Desk::instance().job() != nullptr);
    // All of the walk but what the handover itself records.
    const auto bytes = base::readFile(PROOFWALK_SOURCE "/fixtures/corner-shop/walk.jsonl");
    QVERIFY(bytes);
    for (const QByteArray& line : QByteArray::fromStdString(*bytes).split('\n')) {
        if (line.isEmpty() || line.startsWith('#')) continue;
        const auto command = base::parseJson(line.toStdString());
        QVERIFY(command);
        const std::string act(command->text("do"));
        if (act == "acceptance" || act == "shown" || act == "off-test" || act == "put-back") continue;
        QString refused;
        Desk::instance().tell(
            this, *command,
            [&](const Result<int>& outcome) { refused = outcome ? "" : QString::fromStdString(outcome.error().code); },
            PROOFWALK_SOURCE "/fixtures/corner-shop");
        QTRY_VERIFY_WITH_TIMEOUT(idle(), patience_ms);
        QVERIFY2(refused.isEmpty(), qPrintable(refused + ": " + line));
    }
}

void HandoverTest::reopensByItsName()
{
    QTRY_COMPARE_WITH_TIMEOUT(JobShelf::instance().open(), m_file, patience_ms);
    Desk::instance().close(); // as a program that ends; the shelf still says what was open
    QVERIFY(Desk::instance().job() == nullptr);
    reopen();
    QTRY_VERIFY_WITH_TIMEOUT(Desk::instance().job() != nullptr, patience_ms);
    QCOMPARE(Desk::instance().job()->file().string(), m_file.toStdString());
}

void HandoverTest::ladderAndCommandLineAgree()
{
    // Public test source: this program's own command line, which reads the file by another way.
    Ladder ladder;
    QAbstractItemModelTester tester(&ladder);
    QCOMPARE(ladder.rowCount(), 7);
    const QJsonArray told = where()["rungs"].toArray();
    QVERIFY(!told.isEmpty());
    int all = 0, blocking = 0;
    QStringList sentences;
    for (int tread = tread::Arrival; tread <= tread::Signature; ++tread) {
        RungList rungs;
        QAbstractItemModelTester each(&rungs);
        rungs.setTread(tread);
        all += rungs.count();
        for (const RungRow& row : rungs.rows()) {
            blocking += row.blocking ? 1 : 0;
            sentences << row.sentence;
        }
        for (const TreadRow& row : ladder.rows())
            if (row.tread == tread) QCOMPARE(row.rungs, rungs.count());
    }
    QCOMPARE(all, told.size());
    QCOMPARE(blocking, ladder.missing());
    int toldBlocking = 0;
    for (const QJsonValue& rung : told) {
        toldBlocking += rung["blocking"].toBool() ? 1 : 0;
        QVERIFY2(sentences.contains(rung["sentence"].toString()), qPrintable(rung["sentence"].toString()));
    }
    QCOMPARE(blocking, toldBlocking);
}

void HandoverTest::eachRungLeadsSomewhere()
{
    RungList rungs;
    for (int tread = tread::Arrival; tread <= tread::Signature; ++tread) {
        rungs.setTread(tread);
        for (int row = 0; row < rungs.count(); ++row) {
            Whereabouts::instance().go(Whereabouts::Readings);
            rungs.go(row);
            QVERIFY(Whereabouts::instance().place() != Whereabouts::Readings);
        }
    }
}

void HandoverTest::everythingIsPutBackAndOffTest()
{
    NormalList list;
    QAbstractItemModelTester tester(&list);
    // Each row that is not as it should be, by its own act; what is done leaves the front of the list.
    for (int guard = 0; guard < 20 && list.rowCount() > 0 && !list.rows().front().back; ++guard) {
        const NormalRow row = list.rows().front();
        if (row.type == NormalList::Temporary) list.putBack(row.key);
        else if (row.type == NormalList::AreaState) list.unset(row.key);
        else list.offTest(row.key, list.toldBefore(row.key), list.referenceBefore(row.key));
        QTRY_VERIFY_WITH_TIMEOUT(!list.busy(), patience_ms);
        QCOMPARE(list.problem(), QString());
    }
    RungList rungs;
    rungs.setTread(tread::Normal);
    QCOMPARE(rungs.count(), 0);
    for (const QJsonValue& rung : where()["rungs"].toArray()) QVERIFY(rung["code"] != "ready.on-test");
}

void HandoverTest::shownIsRecordedAndWithdrawn()
{
    ShownList list;
    QAbstractItemModelTester tester(&list);
    QVERIFY(list.rowCount() > 0);
    list.show(list.rows().front().topic, "did both alone, twice");
    QTRY_VERIFY_WITH_TIMEOUT(!list.busy(), patience_ms);
    QVERIFY(list.rows().front().shown);
    list.takeBack(0, "it was another day");
    QTRY_VERIFY_WITH_TIMEOUT(!list.busy(), patience_ms);
    QCOMPARE(list.problem(), QString());
    QVERIFY(!list.rows().front().shown);
    list.show(QString());
    QTRY_VERIFY_WITH_TIMEOUT(!list.busy(), patience_ms);
    QVERIFY(!list.problem().isEmpty());
    list.show("setting and unsetting");
    QTRY_VERIFY_WITH_TIMEOUT(!list.busy(), patience_ms);
    QCOMPARE(list.problem(), QString());
}

void HandoverTest::finalIsRefusedWhileSomethingStands()
{
    InstallerKey key;
    ReportDesk report;
    const auto before = Desk::instance().job()->state().eventCount;
    report.sign(report.proposed(), "whatever it is");
    QTRY_VERIFY_WITH_TIMEOUT(!report.busy(), patience_ms);
    QVERIFY(!report.problem().isEmpty());
    QCOMPARE(Desk::instance().job()->state().eventCount, before);
    QVERIFY(report.file().isEmpty());
}

void HandoverTest::acceptanceNeedsInk()
{
    Agreement customer;
    QAbstractItemModelTester tester(&customer);
    customer.agree("Owner", customer.fullWords(), "[]");
    QTRY_VERIFY_WITH_TIMEOUT(!customer.busy(), patience_ms);
    QVERIFY(!customer.problem().isEmpty());
    QVERIFY(!customer.agreed());
}

void HandoverTest::acceptanceIsRecorded()
{
    Agreement customer;
    const QString words = customer.fullWords();
    QVERIFY(words.contains("setting and unsetting"));
    const QString ink = "[[[100,600],[300,200],[420,700],[700,400]]]";
    customer.agree("Owner", words, ink);
    QTRY_VERIFY_WITH_TIMEOUT(!customer.busy(), patience_ms);
    QCOMPARE(customer.problem(), QString());
    QVERIFY(customer.agreed());
    QCOMPARE(customer.name(), QString("Owner"));
    QCOMPARE(customer.agreedWords(), words);
    QCOMPARE(customer.ink(), ink);
    for (const QJsonValue& rung : where()["rungs"].toArray()) QVERIFY(rung["code"] != "ready.acceptance");
}

void HandoverTest::keyNeedsTheSamePassphraseTwice()
{
    InstallerKey key;
    QTRY_VERIFY_WITH_TIMEOUT(key.known(), patience_ms);
    QVERIFY(!key.ready());
    key.make("Commissioning engineer", "", "correct horse", "correct hors");
    QTRY_VERIFY_WITH_TIMEOUT(!key.busy(), patience_ms);
    QVERIFY(!key.problem().isEmpty());
    key.make("Commissioning engineer", "", "short", "short"); // seven characters and fewer are refused (core/journal)
    QTRY_VERIFY_WITH_TIMEOUT(!key.busy(), patience_ms);
    QVERIFY(!key.problem().isEmpty());
    QVERIFY(!key.ready());
}

void HandoverTest::keyIsMade()
{
    InstallerKey key;
    key.make("Commissioning engineer", "The installing firm", "correct horse", "correct horse");
    QTRY_VERIFY_WITH_TIMEOUT(!key.busy(), patience_ms);
    QCOMPARE(key.problem(), QString());
    QVERIFY(key.ready());
    QCOMPARE(key.fingerprint().size(), 14); // three groups of four
}

void HandoverTest::draftIsLookedAt()
{
    ReportDesk report;
    report.draft();
    QTRY_VERIFY_WITH_TIMEOUT(report.pages() > 0, patience_ms);
    QVERIFY(report.drafted());
    PaperBook::Sheet first;
    report.paper().draw(0, 420, this, [&](const PaperBook::Sheet& sheet) { first = sheet; });
    QTRY_VERIFY_WITH_TIMEOUT(!first.image.isNull(), patience_ms);
    QCOMPARE(first.image.width(), 420);
    QVERIFY2(first.words.contains("not signed"), qPrintable(first.words));
}

void HandoverTest::wrongPassphraseRecordsNothing()
{
    ReportDesk report;
    const auto before = Desk::instance().job()->state().eventCount;
    report.sign(report.proposed(), "correct hearse");
    QTRY_VERIFY_WITH_TIMEOUT(!report.busy(), patience_ms);
    QVERIFY(!report.problem().isEmpty());
    QCOMPARE(Desk::instance().job()->state().eventCount, before);
    report.sign("/proc/report.pdf", "correct horse");
    QTRY_VERIFY_WITH_TIMEOUT(!report.busy(), patience_ms);
    QVERIFY(!report.problem().isEmpty());
    QCOMPARE(Desk::instance().job()->state().eventCount, before);
}

void HandoverTest::reportIsSignedAndVerified()
{
    Ladder ladder;
    QVERIFY2(ladder.missing() == 0, qPrintable(ladder.missingWords()));
    ReportDesk report;
    m_report = report.proposed();
    report.sign(m_report, "correct horse");
    QTRY_VERIFY_WITH_TIMEOUT(!report.busy() && (!report.checks().isEmpty() || !report.problem().isEmpty()),
                             patience_ms);
    QCOMPARE(report.problem(), QString());
    QVERIFY(report.sound());
    QCOMPARE(report.file(), m_report);
    QTRY_VERIFY_WITH_TIMEOUT(report.pages() > 0, patience_ms);
    const auto [said, status] = say({"verify", m_report.toStdString()});
    QVERIFY2(status == 0, said.constData());
    for (const QString& line : report.checks().mid(0, 1)) QVERIFY2(said.contains(line.toUtf8()), qPrintable(line));
    QCOMPARE(ladder.rows().front().treadState, int{Ladder::Done});
    QVERIFY(report.proposed() != m_report); // never over one that is there
}

void HandoverTest::putAwayItStandsOnTheShelf()
{
    JobDoor door;
    door.close();
    QVERIFY(Desk::instance().job() == nullptr);
    QTRY_VERIFY_WITH_TIMEOUT(idle(), patience_ms);
    JobShelf::instance().recall(); // from the disk again
    QCOMPARE(JobShelf::instance().open(), QString());
    JobList list;
    QAbstractItemModelTester tester(&list);
    QCOMPARE(list.count(), 1);
    QCOMPARE(list.rows().front().file, m_file);
    QVERIFY(!list.rows().front().missing);
    QVERIFY(list.rows().front().rooms->rowCount() > 0);
    FileList files;
    QAbstractItemModelTester each(&files);
    files.setFolder(m_folder.path());
    QTRY_VERIFY_WITH_TIMEOUT(files.rowCount() == 2, patience_ms); // the bad plan's folder and the job
    QVERIFY(QFile::remove(m_file));
    JobList after;
    QVERIFY(after.rows().front().missing);
    after.forget(m_file);
    QCOMPARE(after.count(), 0);
}

PROOFWALK_WINDOW_TEST(HandoverTest)
#include "handover.moc"
