// SPDX-License-Identifier: GPL-3.0-or-later
// A whole job in a file: started, taken to, closed, opened again; and every example of COMMANDS.md in its order.
#include "core/walk/job.h"
#include "core/walk/results.h"
#include "tests/walk/bench.h"

#include <QImage>
#include <QTemporaryDir>
#include <QTest>

using namespace proofwalk;
using namespace proofwalk::walk;

class JobTest : public QObject {
    Q_OBJECT

private slots:
    void init();
    void examplesOfThePage();
    void openedAgainItIsTheSame();
    void refusedLineRecordsNothing();
    void roundIsAllOrNothing();
    void verdictsHangOnTheEmbeddedSheetsAlone();

private:
    StartGround ground() const;
    std::filesystem::path file(const char* name) const { return m_folder->filePath(name).toStdString(); }
    Job started(const char* name);
    int taken(Job& job, const std::string& line);

    std::unique_ptr<QTemporaryDir> m_folder;
    std::shared_ptr<const journal::SigningKey> m_key;
};

void JobTest::init()
{
    m_folder = std::make_unique<QTemporaryDir>();
    m_key = must(journal::openMachineKey(file("home")));
}

StartGround JobTest::ground() const
{
    StartGround ground;
    ground.plan = cornerShop();
    ground.catalogue = must(catalogue::readFolder(PROOFWALK_SOURCE "/core/catalogue"));
    ground.conductors = must(base::readFile(PROOFWALK_SOURCE "/core/measure/conductors.csv"));
    ground.words = {
        {"english/verdicts.toml", must(base::readFile(PROOFWALK_SOURCE "/core/words/english/verdicts.toml"))}};
    return ground;
}

Job JobTest::started(const char* name) { return must(Job::start(file(name), ground(), m_key, base::now())); }

int JobTest::taken(Job& job, const std::string& line)
{
    auto taken = job.take(line, m_folder->path().toStdString(), base::now());
    if (!taken) qWarning("%s: %s (%s)", line.c_str(), taken.error().code.c_str(), taken.error().where.c_str());
    return taken ? *taken : -1;
}

void JobTest::examplesOfThePage()
{
    QImage picture(64, 48, QImage::Format_RGB32);
    picture.fill(Qt::gray);
    QVERIFY(picture.save(m_folder->filePath("terminals.jpg")));

    Job job = started("examples.walk");
    const std::string page = must(base::readFile(PROOFWALK_SOURCE "/core/walk/COMMANDS.md"));
    int examples = 0;
    bool inside = false;
    for (const QString& line : QString::fromStdString(page).split('\n')) {
        if (line.startsWith("```")) inside = line == "```json";
        else if (inside) {
            ++examples;
            QVERIFY2(taken(job, line.toStdString()) > 0, qPrintable(line));
        }
    }
    QVERIFY(examples >= 20);
}

void JobTest::openedAgainItIsTheSame()
{
    std::string before;
    {
        Job job = started("again.walk");
        QCOMPARE(taken(job, R"({"do":"answer","device":"GR-01","step":"opened","result":"as-planned"})"), 1);
        QCOMPARE(
            taken(job,
                  R"({"do":"answer","device":"GR-06","step":"opened","result":"not-as-planned","seen":"nothing"})"),
            1);
        before = resultsCsv(job.state());
    }
    const Job job = must(Job::open(file("again.walk"), m_key));
    QCOMPARE(QString::fromStdString(resultsCsv(job.state())), QString::fromStdString(before));
    QVERIFY(job.judged().soundness.sound());
}

void JobTest::refusedLineRecordsNothing()
{
    Job job = started("refused.walk");
    const auto events = job.state().eventCount;
    QVERIFY(!job.take(R"({"do":"answer","device":"GR-99","step":"opened","result":"as-planned"})", ".", base::now()));
    QCOMPARE(job.state().eventCount, events);
    QCOMPARE(static_cast<std::int64_t>(must(job.record()).events.size()), events);
}

void JobTest::roundIsAllOrNothing()
{
    Job job = started("round.walk");
    const auto events = job.state().eventCount;
    QVERIFY(
        !job.take(R"({"do":"round","round":"loop-readings","values":{"1":"4.70 kOhm","2":"oops"}})", ".", base::now()));
    QCOMPARE(job.state().eventCount, events);
    QCOMPARE(taken(job, R"({"do":"round","round":"loop-readings","values":{"1":"4.70 kOhm","2":"4.71 kOhm"}})"), 2);
}

void JobTest::verdictsHangOnTheEmbeddedSheetsAlone()
{
    Job job = started("sheets.walk");
    QCOMPARE(taken(job, R"({"do":"answer","device":"GR-02","step":"boundary-walk","hits":5,"tries":5})"), 1);
    const auto record = must(job.record());
    const StepKey key = [&] {
        for (const auto& [each, attempts] : job.state().attempts) return each;
        return StepKey{};
    }();
    COMPARE_WORD(viewStep(must(judgeRecord(record)).state, key).verdict, Verdict::pass);

    // The same record under a sheet that asks for more: another verdict, and the job's own stays what it was.
    auto files = must(catalogue::readFolder(PROOFWALK_SOURCE "/core/catalogue"));
    std::string& sheet = files.at("kinds/motion-infrared.toml");
    const auto trials = sheet.find("tries = 3", sheet.find("boundary-walk"));
    QVERIFY(trials != std::string::npos);
    sheet.replace(trials, 9, "tries = 9");
    const auto newer = must(catalogue::Catalogue::read(files));
    COMPARE_WORD(viewStep(must(judgeRecordWith(record, newer)).state, key).verdict, Verdict::fail);
    COMPARE_WORD(viewStep(must(judgeRecord(record)).state, key).verdict, Verdict::pass);
}

QTEST_GUILESS_MAIN(JobTest)
#include "job.moc"
