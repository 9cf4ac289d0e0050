// SPDX-License-Identifier: GPL-3.0-or-later
// The verdict of one reading. The rule is ILAC-G8:09/2019, 4.2 (guard band w = U on both sides, as quoted on a public
// page); the worked case 3.4 ± 0.5 in 3.0 to 5.0 is the project's own and was computed by hand.
#include "core/walk/judge.h"
#include "tests/walk/bench.h"

#include <QTest>

using namespace proofwalk;
using namespace proofwalk::walk;

namespace {

ScopeStep stepWith(std::optional<base::Decimal> lower, std::optional<base::Decimal> upper, bool strict = false)
{
    ScopeStep step;
    step.step.kind = catalogue::StepKind::read;
    step.step.unit = "Cel";
    step.step.states = {catalogue::SystemState::unset};
    step.confirmed.lower = lower;
    step.confirmed.upper = upper;
    step.confirmed.strict = strict;
    return step;
}

Attempt reading(const char* value, const char* uncertainty)
{
    Attempt attempt;
    attempt.answer.outcome = Outcome::value;
    attempt.answer.reading = must(base::parseQuantity(value));
    if (*uncertainty != '\0') attempt.answer.uncertainty = must(base::parseDecimal(uncertainty));
    return attempt;
}

} // namespace

class JudgeTest : public QObject {
    Q_OBJECT

private slots:
    void guardBand_data();
    void guardBand();
    void withoutUncertaintyNothingOfLifeSafetyPasses();
    void withoutUncertaintyAFailureStillFails();
    void outsideAnUnconfirmedLimitIsOnlyAdvice();
    void trials_data();
    void trials();
};

void JudgeTest::guardBand_data()
{
    QTest::addColumn<QByteArray>("value");
    QTest::addColumn<QByteArray>("uncertainty");
    QTest::addColumn<int>("wanted");
    const auto row = [](const char* name, const char* value, const char* u, Verdict wanted) {
        QTest::newRow(name) << QByteArray(value) << QByteArray(u) << static_cast<int>(wanted);
    };
    row("3.4 +- 0.5 in 3.0 to 5.0", "3.4 Cel", "0.5", Verdict::tooClose);
    row("exactly at the guard band", "3.5 Cel", "0.5", Verdict::pass);
    row("well inside", "4.0 Cel", "0.5", Verdict::pass);
    row("at the upper guard band", "4.5 Cel", "0.5", Verdict::pass);
    row("inside the upper guard band", "4.51 Cel", "0.5", Verdict::tooClose);
    row("outside by less than U", "2.6 Cel", "0.5", Verdict::tooClose);
    row("outside by exactly U", "2.5 Cel", "0.5", Verdict::tooClose);
    row("outside by more than U", "2.49 Cel", "0.5", Verdict::fail);
    row("no uncertainty, on the limit", "3.0 Cel", "", Verdict::pass);
    row("no uncertainty, a hair outside", "2.999 Cel", "", Verdict::fail);
}

void JudgeTest::guardBand()
{
    QFETCH(QByteArray, value);
    QFETCH(QByteArray, uncertainty);
    QFETCH(int, wanted);
    Attempt attempt = reading(value.constData(), uncertainty.constData());
    judgeAttempt(attempt, stepWith(base::Decimal{30, -1}, base::Decimal{50, -1}));
    COMPARE_WORD(attempt.verdict, static_cast<Verdict>(wanted));
}

void JudgeTest::withoutUncertaintyNothingOfLifeSafetyPasses()
{
    Attempt attempt = reading("4.0 Cel", "");
    judgeAttempt(attempt, stepWith(base::Decimal{3, 0}, base::Decimal{5, 0}, true));
    COMPARE_WORD(attempt.verdict, Verdict::tooClose);
}

void JudgeTest::withoutUncertaintyAFailureStillFails()
{
    Attempt attempt = reading("6.0 Cel", "");
    judgeAttempt(attempt, stepWith(base::Decimal{3, 0}, base::Decimal{5, 0}, true));
    COMPARE_WORD(attempt.verdict, Verdict::fail);
}

void JudgeTest::outsideAnUnconfirmedLimitIsOnlyAdvice()
{
    ScopeStep step = stepWith({}, {});
    step.unconfirmed.upper = base::Decimal{5, 0};
    Attempt attempt = reading("6.0 Cel", "0.1");
    judgeAttempt(attempt, step);
    COMPARE_WORD(attempt.verdict, Verdict::pass);
    QVERIFY(attempt.outsideAdvice);
}

void JudgeTest::trials_data()
{
    QTest::addColumn<int>("hits");
    QTest::addColumn<int>("tries");
    QTest::addColumn<int>("wanted");
    QTest::newRow("all") << 5 << 5 << static_cast<int>(Verdict::pass);
    QTest::newRow("one missed") << 4 << 5 << static_cast<int>(Verdict::fail);
    QTest::newRow("more tried than asked, one missed") << 9 << 10 << static_cast<int>(Verdict::fail);
    QTest::newRow("more tried than asked, none missed") << 10 << 10 << static_cast<int>(Verdict::pass);
    QTest::newRow("too few tried") << 4 << 4 << static_cast<int>(Verdict::fail);
}

void JudgeTest::trials()
{
    QFETCH(int, hits);
    QFETCH(int, tries);
    QFETCH(int, wanted);
    ScopeStep step = stepWith({}, {});
    step.step.kind = catalogue::StepKind::trial;
    step.step.trialsWanted = step.step.trialsNeeded = 5;
    Attempt attempt;
    attempt.answer.outcome = Outcome::value;
    attempt.answer.hits = hits;
    attempt.answer.tries = tries;
    judgeAttempt(attempt, step);
    COMPARE_WORD(attempt.verdict, static_cast<Verdict>(wanted));
}

QTEST_GUILESS_MAIN(JudgeTest)
#include "judge.moc"
