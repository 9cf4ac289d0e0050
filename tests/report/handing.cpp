// SPDX-License-Identifier: GPL-3.0-or-later
// Handing a report over: nothing is recorded of what could not be written, and the sheets can be drawn by a thread that
// is not the window's. PROOFWALK_LONG=1 draws them fifty times.
#include "core/report/handing.h"
#include "core/report/examine.h"
#include "tests/walk/bench.h"

#include <QApplication>
#include <QImage>
#include <QPainter>
#include <QSvgRenderer>
#include <QTemporaryDir>
#include <QTest>
#include <QThread>
#include <QTimer>

using namespace proofwalk;
using namespace proofwalk::walk;

class HandingTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void folderThatIsNotThere();
    void folderThatCannotBeWritten();
    void neverOverAnotherFile();
    void finalIsRefusedWhileBlocked();
    void vouchesOnceAndRecordsEach();
    void draftIsNoReport();
    void byAnotherThreadWhileTheWindowDraws();

private:
    std::filesystem::path file(const char* name) const { return m_folder.filePath(name).toStdString(); }
    Result<report::Handed> hand(const std::filesystem::path& out, bool interim = true)
    {
        return report::handOver(*m_job, *m_machine, m_identity, m_book, {out, interim});
    }

    QTemporaryDir m_folder;
    words::Book m_book;
    journal::Identity m_identity;
    std::shared_ptr<const journal::SigningKey> m_machine;
    std::optional<Job> m_job;
};

void HandingTest::initTestCase()
{
    m_book = must(words::Book::open(PROOFWALK_SOURCE "/core/words/english"));
    must(journal::createIdentity(file("signer"), {"Commissioning engineer", "The installing firm"}, "correct horse"));
    m_identity = must(journal::openIdentity(file("signer"), "correct horse"));
    m_machine = must(journal::openMachineKey(file("home")));
    StartGround ground;
    ground.plan = cornerShop();
    ground.catalogue = must(catalogue::readFolder(PROOFWALK_SOURCE "/core/catalogue"));
    ground.conductors = must(base::readFile(PROOFWALK_SOURCE "/core/measure/conductors.csv"));
    m_job.emplace(must(Job::start(file("shop.walk"), std::move(ground), m_machine, base::now())));
    // All of the walk but the customer's words and ink, so that something still blocks.
    for (const QByteArray& line :
         QByteArray::fromStdString(must(base::readFile(PROOFWALK_SOURCE "/fixtures/corner-shop/walk.jsonl")))
             .split('\n')) {
        if (line.isEmpty() || line.startsWith('#') || line.contains("\"acceptance\"")) continue;
        const auto taken = m_job->take(line.toStdString(), PROOFWALK_SOURCE "/fixtures/corner-shop", base::now());
        QVERIFY2(taken, taken ? "" : qPrintable(QString::fromStdString(m_book.sentence(taken.error()))));
    }
}

void HandingTest::folderThatIsNotThere()
{
    const auto before = m_job->state().eventCount;
    QCOMPARE(hand(file("nowhere/report.pdf")).error().code, std::string("report.no-folder"));
    QCOMPARE(m_job->state().eventCount, before);
}

void HandingTest::folderThatCannotBeWritten()
{
    // Not even root makes a file there.
    const auto before = m_job->state().eventCount;
    const auto handed = hand("/proc/report.pdf");
    QCOMPARE(handed.error().code, std::string("file.unwritable"));
    QCOMPARE(handed.error().where, std::string("/proc/report.pdf"));
    QCOMPARE(m_job->state().eventCount, before);
}

void HandingTest::neverOverAnotherFile()
{
    QVERIFY(base::writeFile(file("mine.pdf"), "mine"));
    QCOMPARE(hand(file("mine.pdf")).error().code, std::string("report.exists"));
    QCOMPARE(must(base::readFile(file("mine.pdf"))), std::string("mine"));
}

void HandingTest::finalIsRefusedWhileBlocked()
{
    const auto before = m_job->state().eventCount;
    QCOMPARE(hand(file("final.pdf"), false).error().code, std::string("report.refused"));
    QCOMPARE(m_job->state().eventCount, before);
    QVERIFY(!std::filesystem::exists(file("final.pdf")));
}

void HandingTest::vouchesOnceAndRecordsEach()
{
    QVERIFY(hand(file("first.pdf")));
    QVERIFY(hand(file("second.pdf")));
    QCOMPARE(m_job->state().vouches.size(), std::size_t{1});
    QCOMPARE(m_job->state().handovers.size(), std::size_t{2});
    QVERIFY(must(report::examine(file("second.pdf"))).sound());
}

void HandingTest::draftIsNoReport()
{
    const auto before = m_job->state().eventCount;
    const std::string draft = must(report::draftReport(*m_job, m_book, {}, false));
    QVERIFY(draft.starts_with("%PDF"));
    QCOMPARE(m_job->state().eventCount, before);
    QVERIFY(base::writeFile(file("draft.pdf"), draft));
    const auto examined = report::examine(file("draft.pdf"));
    QVERIFY(!examined || !examined->sound());
}

void HandingTest::byAnotherThreadWhileTheWindowDraws()
{
    const int rounds = qEnvironmentVariableIsSet("PROOFWALK_LONG") ? 50 : 3;
    // What a window's thread does meanwhile: words, pictures of icons, events.
    QImage canvas(360, 780, QImage::Format_ARGB32_Premultiplied);
    QSvgRenderer icon(QStringLiteral(PROOFWALK_SOURCE "/icons/unknown.svg"));
    QTimer frames;
    qint64 longest_ms = 0;
    QElapsedTimer since;
    since.start();
    int drawn = 0;
    connect(&frames, &QTimer::timeout, this, [&] {
        longest_ms = std::max(longest_ms, since.restart());
        QPainter painter(&canvas);
        painter.setFont(QFont(QStringLiteral("Clear Sans"), 10 + drawn % 9));
        painter.drawText(canvas.rect(), Qt::TextWordWrap, QStringLiteral("%1 of 64 answered").arg(drawn));
        icon.render(&painter, QRectF(20, 20, 24 + drawn % 7, 24));
        ++drawn;
    });
    frames.start(4);

    std::vector<std::string> refused;
    std::unique_ptr<QThread> thread(QThread::create([&] {
        for (int i = 0; i < rounds; ++i) {
            auto handed = hand(file(("round-" + std::to_string(i) + ".pdf").c_str()));
            if (!handed) refused.push_back(m_book.sentence(handed.error()));
            auto draft = report::draftReport(*m_job, m_book, m_identity.facts, false);
            if (!draft) refused.push_back(m_book.sentence(draft.error()));
        }
    }));
    QElapsedTimer all;
    all.start();
    thread->start();
    while (!thread->wait(0)) QCoreApplication::processEvents(QEventLoop::AllEvents, 5);
    qInfo("%d reports and drafts in %lld ms; %d frames meanwhile, the longest gap %lld ms", rounds, all.elapsed(),
          drawn, longest_ms);
    QVERIFY2(refused.empty(), refused.empty() ? "" : refused.front().c_str());
    for (int i = 0; i < rounds; ++i)
        QVERIFY(must(report::examine(file(("round-" + std::to_string(i) + ".pdf").c_str()))).sound());
}

QTEST_MAIN(HandingTest)
#include "handing.moc"
