// SPDX-License-Identifier: GPL-3.0-or-later
// From a job to a signed report and back: what may be issued, and what examining says of it and of damaged copies.
#include "core/report/issue.h"
#include "core/report/examine.h"
#include "core/walk/job.h"
#include "tests/walk/bench.h"

#include <QApplication>
#include <QTemporaryDir>
#include <QTest>

using namespace proofwalk;
using namespace proofwalk::walk;

class IssueTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void blockedIsRefused();
    void interimIsSoundAndAgrees();
    void halfAReportIsNamed();
    void foreignFileCannotBeExamined();
    void unsoundRecordIsNotSigned();

private:
    std::filesystem::path file(const char* name) const { return m_folder.filePath(name).toStdString(); }
    report::Issued interim();

    QTemporaryDir m_folder;
    words::Book m_book;
    journal::Identity m_identity;
    journal::Record m_record;
};

void IssueTest::initTestCase()
{
    m_book = must(words::Book::open(PROOFWALK_SOURCE "/core/words/english"));
    must(journal::createIdentity(file("signer"), {"Commissioning engineer", "The installing firm"}, "correct horse"));
    m_identity = must(journal::openIdentity(file("signer"), "correct horse"));

    StartGround ground;
    ground.plan = cornerShop();
    ground.catalogue = must(catalogue::readFolder(PROOFWALK_SOURCE "/core/catalogue"));
    ground.conductors = must(base::readFile(PROOFWALK_SOURCE "/core/measure/conductors.csv"));
    auto job = must(
        Job::start(file("shop.walk"), std::move(ground), must(journal::openMachineKey(file("home"))), base::now()));
    for (const char* line :
         {R"({"do":"kit","name":"meter A","measures":[{"quantity":"resistance","percent":"0.8","digits":2}]})",
          R"({"do":"answer","zone":"1","step":"loop-ohms","value":"4.70 kOhm","instrument":"meter A"})",
          R"({"do":"answer","device":"GR-06","step":"opened","result":"not-as-planned","seen":"zone 1 showed open"})"})
        QVERIFY(job.take(line, ".", base::now()));
    m_record = must(job.record());
}

report::Issued IssueTest::interim()
{
    return must(report::issueReport(m_record, m_book, m_identity, {base::now(), true}));
}

void IssueTest::blockedIsRefused()
{
    const auto issued = report::issueReport(m_record, m_book, m_identity, {base::now(), false});
    QVERIFY(!issued);
    QCOMPARE(issued.error().code, std::string("report.refused"));
}

void IssueTest::interimIsSoundAndAgrees()
{
    const auto issued = interim();
    QVERIFY(base::writeFile(file("shop.pdf"), issued.pdf));
    const auto examined = must(report::examine(file("shop.pdf")));
    for (const Error& problem : examined.problems) qWarning("%s %s", problem.code.c_str(), problem.where.c_str());
    QVERIFY(examined.sound());
    QCOMPARE(examined.seal->signerName, std::string("Commissioning engineer"));
    QCOMPARE(examined.recordFingerprint, issued.recordFingerprint);
    QCOMPARE(examined.record.events.size(), m_record.events.size());
}

void IssueTest::halfAReportIsNamed()
{
    const auto issued = interim();
    QVERIFY(base::writeFile(file("half.pdf"), issued.pdf.substr(0, issued.pdf.size() / 2)));
    const auto examined = must(report::examine(file("half.pdf")));
    QVERIFY(!examined.sound());
}

void IssueTest::foreignFileCannotBeExamined()
{
    QVERIFY(base::writeFile(file("notes.txt"), "just words"));
    QCOMPARE(report::examine(file("notes.txt")).error().code, std::string("verify.foreign"));
    QCOMPARE(report::examine(file("nothing.pdf")).error().code, std::string("file.missing"));
}

void IssueTest::unsoundRecordIsNotSigned()
{
    journal::Record record = m_record;
    record.events.back().hash[0] = record.events.back().hash[0] == '0' ? '1' : '0';
    const auto issued = report::issueReport(record, m_book, m_identity, {base::now(), true});
    QVERIFY(!issued);
    QCOMPARE(issued.error().code, std::string("report.record-unsound"));
}

QTEST_MAIN(IssueTest)
#include "issue.moc"
