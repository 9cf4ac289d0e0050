// SPDX-License-Identifier: GPL-3.0-or-later
// Rules: core/walk/EVENTS.md, "Verdict of a step". Each test is named for the mishap it would catch.
#include "tests/walk/bench.h"

#include <QTest>

using namespace proofwalk;
using namespace proofwalk::walk;

class StepViewTest : public QObject {
    Q_OBJECT

private slots:
    void nothingAnsweredIsToDo();
    void newerAnswerOfOneChainDecides();
    void newerByTheClockButUnseenDoesNot();
    void disagreementHasTheWorseVerdict();
    void disagreementEndsWithAnAnswerThatSawBoth();
    void bulkAnswerSettlesNoDisagreement();
    void seenIsTransitive();
    void readingsFurtherApartThanTheirUncertaintiesDisagree();
    void withdrawalRemovesExactlyOne();
    void withdrawalCannotBeWithdrawn();
    void repairPutsInDoubt();
    void passThatNeverSawTheRepairClearsNothing();
    void answerInAWrongStateCountsForNothing();
};

void StepViewTest::nothingAnsweredIsToDo()
{
    const Bench bench;
    COMPARE_WORD(bench.verdict(bench.step("GR-01", "opened")), Verdict::toDo);
}

void StepViewTest::newerAnswerOfOneChainDecides()
{
    Bench bench;
    const auto key = bench.step("GR-01", "opened");
    bench.answer(key, Outcome::notAsPlanned);
    COMPARE_WORD(bench.verdict(key), Verdict::fail);
    bench.answer(key, Outcome::asPlanned);
    COMPARE_WORD(bench.verdict(key), Verdict::pass);
    QCOMPARE(viewStep(bench.state, key).deciding.size(), 1U);
}

void StepViewTest::newerByTheClockButUnseenDoesNot()
{
    Bench bench;
    const auto key = bench.step("GR-01", "opened");
    bench.answer(key, Outcome::notAsPlanned, "a");
    bench.answer(key, Outcome::asPlanned, "b"); // later stamp, but chain b never saw chain a
    COMPARE_WORD(bench.verdict(key), Verdict::fail);
    QVERIFY(viewStep(bench.state, key).disagreement);
}

void StepViewTest::disagreementHasTheWorseVerdict()
{
    Bench bench;
    const auto key = bench.step("GR-01", "opened");
    bench.answer(key, Outcome::asPlanned, "a");
    bench.answer(key, Outcome::notApplicable, "b");
    COMPARE_WORD(bench.verdict(key), Verdict::pass); // of pass and n/a the worse is pass
    QVERIFY(viewStep(bench.state, key).disagreement);
}

void StepViewTest::disagreementEndsWithAnAnswerThatSawBoth()
{
    Bench bench;
    const auto key = bench.step("GR-01", "opened");
    bench.answer(key, Outcome::notAsPlanned, "a");
    bench.answer(key, Outcome::asPlanned, "b");
    bench.answer(key, Outcome::asPlanned, "b", {"a"});
    COMPARE_WORD(bench.verdict(key), Verdict::pass);
    QVERIFY(!viewStep(bench.state, key).disagreement);
}

void StepViewTest::bulkAnswerSettlesNoDisagreement()
{
    Bench bench;
    const auto key = bench.step("GR-01", "opened");
    bench.answer(key, Outcome::notAsPlanned, "a");
    bench.answer(key, Outcome::asPlanned, "b");
    bench.answer(key, Outcome::asPlanned, "b", {"a"}, How::bulk);
    COMPARE_WORD(bench.verdict(key), Verdict::fail);
    QVERIFY(viewStep(bench.state, key).disagreement);
}

void StepViewTest::seenIsTransitive()
{
    Bench bench;
    const auto key = bench.step("GR-01", "opened");
    bench.answer(key, Outcome::notAsPlanned, "a");
    bench.tell("b", NoteBody{}, {"a"});                   // b saw a
    bench.answer(key, Outcome::asPlanned, "c", {"b"});    // c saw b, and so a
    COMPARE_WORD(bench.verdict(key), Verdict::pass);
    QVERIFY(!viewStep(bench.state, key).disagreement);
}

void StepViewTest::readingsFurtherApartThanTheirUncertaintiesDisagree()
{
    Bench bench;
    const auto key = bench.step("GR-01", "loop-ohms");
    bench.read(key, "4.70 kOhm", "0.01", "a");
    bench.read(key, "4.71 kOhm", "0.01", "b"); // 0.01 apart, 0.02 allowed
    QVERIFY(!viewStep(bench.state, key).disagreement);
    Bench other;
    const auto same = other.step("GR-01", "loop-ohms");
    other.read(same, "4.70 kOhm", "0.01", "a");
    other.read(same, "4.73 kOhm", "0.01", "b"); // 0.03 apart
    QVERIFY(viewStep(other.state, same).disagreement);
}

void StepViewTest::withdrawalRemovesExactlyOne()
{
    Bench bench;
    const auto key = bench.step("GR-01", "opened");
    bench.answer(key, Outcome::notAsPlanned);
    const auto pass = bench.answer(key, Outcome::asPlanned);
    bench.tell("a", WithdrawBody{pass, {}});
    COMPARE_WORD(bench.verdict(key), Verdict::fail);
}

void StepViewTest::withdrawalCannotBeWithdrawn()
{
    Bench bench;
    const auto key = bench.step("GR-01", "opened");
    const auto pass = bench.answer(key, Outcome::asPlanned);
    const auto withdrawal = bench.tell("a", WithdrawBody{pass, {}});
    bench.tell("a", WithdrawBody{withdrawal, {}});
    COMPARE_WORD(bench.verdict(key), Verdict::toDo);
}

void StepViewTest::repairPutsInDoubt()
{
    Bench bench;
    const auto key = bench.step("GR-01", "opened");
    bench.answer(key, Outcome::notAsPlanned);
    bench.repair(key);
    COMPARE_WORD(bench.verdict(key), Verdict::retest);
    bench.answer(key, Outcome::asPlanned);
    COMPARE_WORD(bench.verdict(key), Verdict::pass);
}

void StepViewTest::passThatNeverSawTheRepairClearsNothing()
{
    Bench bench;
    const auto key = bench.step("GR-01", "opened");
    bench.answer(key, Outcome::notAsPlanned, "a");
    bench.repair(key, "a");
    bench.answer(key, Outcome::asPlanned, "b"); // a later stamp; but b saw neither failure nor repair
    COMPARE_WORD(bench.verdict(key), Verdict::retest);
}

void StepViewTest::answerInAWrongStateCountsForNothing()
{
    Bench bench;
    AnswerBody body;
    body.step = bench.step("GR-01", "opened");
    body.state = catalogue::SystemState::set; // a contact is opened while unset or in walk test
    bench.tell("a", body);
    COMPARE_WORD(bench.verdict(body.step), Verdict::toDo);
}

QTEST_GUILESS_MAIN(StepViewTest)
#include "stepview.moc"
