// SPDX-License-Identifier: GPL-3.0-or-later
// What holds of every interval, and what is refused. The worked values stand in tests/reference/trials.cpp.
#include "core/measure/trials.h"

#include "core/measure/distribution.h"
#include "tests/measure/refusal.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::tests::hostile;
using proofwalk::tests::refused;

class TestTrials : public QObject {
    Q_OBJECT

private slots:
    void hitsAndMissesMirror()
    {
        for (const int tries : {1, 2, 7, 30})
            for (int hits = 0; hits <= tries; ++hits)
                for (const double confidence : {0.5, 0.9, 0.99}) {
                    const auto exact = clopperPearson({hits, tries}, confidence).value();
                    const auto other = clopperPearson({tries - hits, tries}, confidence).value();
                    QVERIFY(std::fabs(exact.lower - (1 - other.upper)) < 1e-12);
                    const auto score = wilson({hits, tries}, confidence).value();
                    const auto mirrored = wilson({tries - hits, tries}, confidence).value();
                    QVERIFY(std::fabs(score.lower - (1 - mirrored.upper)) < 1e-12);
                    for (const auto& each : {exact, score}) {
                        QVERIFY(0 <= each.lower && each.lower <= each.upper && each.upper <= 1);
                        const double share = static_cast<double>(hits) / tries;
                        QVERIFY(each.lower <= share + 1e-12 && share <= each.upper + 1e-12);
                    }
                }
    }
    void moreOfTheSameProvesMore()
    {
        double before = 0;
        for (int n = 1; n <= 60; ++n) {
            const double proved = provedAtLeast({n, n}, 0.95).value();
            QVERIFY(proved > before);
            before = proved;
        }
        QVERIFY(provedAtLeast({9, 10}, 0.95).value() < provedAtLeast({10, 10}, 0.95).value());
        QVERIFY(provedAtLeast({10, 10}, 0.99).value() < provedAtLeast({10, 10}, 0.95).value());
        QCOMPARE(provedAtLeast({0, 10}, 0.95).value(), 0.0);
        QCOMPARE(provedAtMost({10, 10}, 0.95).value(), 1.0);
    }
    // The exact interval's promise: from its lower end, k or more hits have the chance of the tail.
    void theExactLimitIsWhereTheTailIs()
    {
        for (const TrialCount count : {TrialCount{4, 5}, {18, 20}, {29, 30}, {98, 100}}) {
            const double lower = provedAtLeast(count, 0.95).value();
            QVERIFY(std::fabs(1 - binomialAtMost(count.hits - 1, count.tries, lower).value() - 0.05) < 1e-9);
        }
    }
    void runsAndReliabilityAreInverse()
    {
        for (const double reliability : {0.5, 0.7, 0.9, 0.95, 0.999}) {
            const int n = successRun(reliability, 0.95).value();
            QVERIFY(provedAtLeast({n, n}, 0.95).value() >= reliability);
            if (n > 1) QVERIFY(provedAtLeast({n - 1, n - 1}, 0.95).value() < reliability);
        }
        // 1 - 0.5^3 = 0.875: three trials of 0.5 prove it exactly.
        QCOMPARE(successRun(0.5, 0.875).value(), 3);
        QCOMPARE(successRun(0.1, 0.5).value(), 1);
        // The uniform prior counts one trial more than were made.
        QVERIFY(std::fabs(provedWithUniformPrior(28, 0.95).value() - provedAtLeast({29, 29}, 0.95).value()) < 1e-12);
    }
    void rules()
    {
        QCOMPARE(chanceToKeepRule(1, 1, 0.3).value(), 0.3);
        QCOMPARE(chanceToKeepRule(5, 5, 1).value(), 1.0);
        QCOMPARE(chanceToKeepRule(5, 5, 0).value(), 0.0);
        QVERIFY(chanceToKeepRule(4, 5, 0.9).value() > chanceToKeepRule(5, 5, 0.9).value());
    }
    void badInput()
    {
        for (const double bad : hostile({.zero = true, .negative = true, .huge = true})) {
            QCOMPARE(refused(clopperPearson({5, 5}, bad)), std::string("measure.out-of-range confidence"));
            QCOMPARE(refused(wilson({5, 5}, bad)), std::string("measure.out-of-range confidence"));
            QCOMPARE(refused(provedAtLeast({5, 5}, bad)), std::string("measure.out-of-range confidence"));
            QCOMPARE(refused(successRun(0.9, bad)), std::string("measure.out-of-range confidence"));
            QCOMPARE(refused(successRun(bad, 0.9)), std::string("measure.out-of-range reliability"));
            if (bad != 0) QCOMPARE(refused(chanceToKeepRule(4, 5, bad)), std::string("measure.out-of-range chance"));
        }
        QCOMPARE(refused(clopperPearson({6, 5}, 0.9)), std::string("measure.out-of-range hits"));
        QCOMPARE(refused(clopperPearson({-1, 5}, 0.9)), std::string("measure.out-of-range hits"));
        QCOMPARE(refused(wilson({0, 0}, 0.9)), std::string("measure.out-of-range tries"));
        QCOMPARE(refused(wilson({0, -3}, 0.9)), std::string("measure.out-of-range tries"));
        QCOMPARE(refused(provedAtMost({1, 2000000}, 0.9)), std::string("measure.out-of-range tries"));
        QCOMPARE(refused(chanceToKeepRule(0, 5, 0.9)), std::string("measure.out-of-range needed"));
        QCOMPARE(refused(provedWithUniformPrior(0, 0.9)), std::string("measure.out-of-range tries"));
    }
};

QTEST_GUILESS_MAIN(TestTrials)
#include "trials.moc"
