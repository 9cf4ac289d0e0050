// SPDX-License-Identifier: GPL-3.0-or-later
// Findings and their history: core/walk/EVENTS.md, "Findings".
#include "tests/walk/bench.h"

#include <QTest>

using namespace proofwalk;
using namespace proofwalk::walk;

class FindingsTest : public QObject {
    Q_OBJECT

private slots:
    void init();
    void failureIsAFinding();
    void repairThenPassClears();
    void passWithoutRepairIsIntermittent();
    void withdrawnFailureIsNoFinding();
    void failureAfterClearingOpensAgain();
    void acceptanceMustHaveSeenTheFailure();
    void intermittentMayBePutRightLater();
    void recommendationOnAPassIsNoted();

private:
    Bench m_bench;
    StepKey m_key;
};

void FindingsTest::init()
{
    m_bench = Bench();
    m_key = m_bench.step("GR-06", "opened");
}

void FindingsTest::failureIsAFinding()
{
    QVERIFY(!findingOf(m_bench.state, m_key));
    m_bench.answer(m_key, Outcome::notAsPlanned);
    const auto finding = findingOf(m_bench.state, m_key);
    QVERIFY(finding);
    COMPARE_WORD(finding->status, FindingStatus::open);
    COMPARE_WORD(finding->grade(), Grade::deficiency);
}

void FindingsTest::repairThenPassClears()
{
    m_bench.answer(m_key, Outcome::notAsPlanned);
    m_bench.repair(m_key);
    COMPARE_WORD(findingOf(m_bench.state, m_key)->status, FindingStatus::putRight);
    m_bench.answer(m_key, Outcome::asPlanned);
    COMPARE_WORD(findingOf(m_bench.state, m_key)->status, FindingStatus::cleared);
}

void FindingsTest::passWithoutRepairIsIntermittent()
{
    m_bench.answer(m_key, Outcome::notAsPlanned);
    m_bench.answer(m_key, Outcome::asPlanned);
    COMPARE_WORD(findingOf(m_bench.state, m_key)->status, FindingStatus::intermittent);
    m_bench.passAll("GR-06");
    COMPARE_WORD(viewDevice(m_bench.state, m_bench.device("GR-06")).verdict, Verdict::fail);
}

void FindingsTest::withdrawnFailureIsNoFinding()
{
    const auto failed = m_bench.answer(m_key, Outcome::notAsPlanned);
    m_bench.tell("a", WithdrawBody{failed, {}});
    m_bench.answer(m_key, Outcome::asPlanned);
    QVERIFY(!findingOf(m_bench.state, m_key));
}

void FindingsTest::failureAfterClearingOpensAgain()
{
    m_bench.answer(m_key, Outcome::notAsPlanned);
    m_bench.repair(m_key);
    m_bench.answer(m_key, Outcome::asPlanned);
    m_bench.answer(m_key, Outcome::notAsPlanned);
    COMPARE_WORD(findingOf(m_bench.state, m_key)->status, FindingStatus::open);
    m_bench.answer(m_key, Outcome::asPlanned); // the old repair had not seen the new failure
    COMPARE_WORD(findingOf(m_bench.state, m_key)->status, FindingStatus::intermittent);
}

void FindingsTest::acceptanceMustHaveSeenTheFailure()
{
    m_bench.answer(m_key, Outcome::notAsPlanned, "a");
    m_bench.tell("b", AcceptBody{{m_key}, {}, {}}); // signed on a phone that did not know of it
    QVERIFY(!findingOf(m_bench.state, m_key)->accepted);
    m_bench.tell("b", AcceptBody{{m_key}, {}, {}}, {"a"});
    QVERIFY(findingOf(m_bench.state, m_key)->accepted);
}

void FindingsTest::intermittentMayBePutRightLater()
{
    m_bench.answer(m_key, Outcome::notAsPlanned);
    m_bench.answer(m_key, Outcome::asPlanned);
    m_bench.repair(m_key);
    COMPARE_WORD(findingOf(m_bench.state, m_key)->status, FindingStatus::putRight);
    m_bench.answer(m_key, Outcome::asPlanned);
    COMPARE_WORD(findingOf(m_bench.state, m_key)->status, FindingStatus::cleared);
}

void FindingsTest::recommendationOnAPassIsNoted()
{
    m_bench.answer(m_key, Outcome::asPlanned);
    m_bench.tell("a", FindingBody{m_key, Grade::recommendation, {}, ""});
    const auto finding = findingOf(m_bench.state, m_key);
    QVERIFY(finding);
    COMPARE_WORD(finding->status, FindingStatus::noted);
    QVERIFY(!finding->pending());
}

QTEST_GUILESS_MAIN(FindingsTest)
#include "findings.moc"
