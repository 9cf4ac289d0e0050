// SPDX-License-Identifier: GPL-3.0-or-later
// Decision rules: what holds for every input, and what is refused. The worked values stand in
// tests/reference/conformity.cpp. Sources of the rules: JCGM 106:2012, ILAC-G8:09/2019, as quoted on public pages.
#include "core/measure/guard.h"

#include "tests/measure/refusal.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::tests::hostile;
using proofwalk::tests::refused;

namespace {

base::Decimal decimal(const char* text) { return base::parseDecimal(text).value(); }

} // namespace

class TestGuard : public QObject {
    Q_OBJECT

private slots:
    // The less may be risked, the wider the band; and the band says what it risks.
    void riskAndGuardAreInverse()
    {
        double before = 0;
        for (const double risk : {0.5, 0.2, 0.05, 0.025, 0.001, 1e-9}) {
            const double w = guardForRisk(0.3, risk).value();
            QVERIFY(w >= before);
            QVERIFY(std::fabs(riskOfGuard(w, 0.3).value() / risk - 1) < 1e-9);
            QVERIFY(std::fabs(guardForRisk(3, risk).value() - 10 * w) < 1e-12); // scale
            before = w;
        }
        QCOMPARE(guardForRisk(0.3, 0.5).value(), 0.0);
    }
    void guardsThatOverlapAreSaid()
    {
        const auto narrow = acceptanceLimits(1.1, 3.0, 5.0).value();
        QVERIFY(narrow.nothingPasses);
        QCOMPARE(narrow.failAbove.value(), 6.1);
        const auto wide = acceptanceLimits(1, 3.0, 5.0).value();
        QVERIFY(!wide.nothingPasses);
        QCOMPARE(wide.passFrom.value(), wide.passTo.value());
        QVERIFY(!acceptanceLimits(1, 3.0, {}).value().passTo);
    }
    // It says what judge() says of the same digits.
    void computedAsTyped()
    {
        for (const char* text : {"2.4", "2.6", "3.4", "3.6", "4.4", "4.6", "5.4", "5.6"}) {
            const auto exact = judge(decimal(text), decimal("0.5"), {decimal("3"), decimal("5")}).value();
            QVERIFY(judgeComputed(base::toDouble(decimal(text)), 0.5, 3.0, 5.0).value() == exact);
        }
        QVERIFY(judgeComputed(3.5, 0.5, 3.0, {}).value() == Conformity::pass);
        QCOMPARE(refused(judgeComputed(std::nan(""), 0.5, 3.0, {})), std::string("measure.out-of-range value"));
        QCOMPARE(refused(judgeComputed(1, -0.5, 3.0, {})), std::string("measure.out-of-range guard"));
    }
    // At both ends of the interval the conformance probability is the one asked for, and inside it is more.
    void theIntervalHoldsItsConfidence()
    {
        for (const double confidence : {0.5, 0.9, 0.95, 0.999}) {
            const auto found = acceptanceByProbability(0.3, 12.5, 16.3, confidence).value();
            for (const double end : {found.from, found.to})
                QVERIFY(std::fabs(conformanceProbability(end, 0.3, 12.5, 16.3).value() - confidence) < 1e-9);
            QVERIFY(std::fabs((found.from + found.to) / 2 - 14.4) < 1e-9);
        }
        // With room enough it is the guard of one limit.
        const double w = guardForRisk(0.1, 0.05).value();
        QVERIFY(std::fabs(acceptanceByProbability(0.1, 0, 10, 0.95).value().from - w) < 1e-9);
        // Phi(1) - Phi(-1) = 0.6827 (standard normal table): that is the best, and not enough.
        QCOMPARE(refused(acceptanceByProbability(1, -1, 1, 0.7)), std::string("measure.tolerance-too-narrow"));
        QVERIFY(acceptanceByProbability(1, -1, 1, 0.68).has_value());
    }
    void assuranceRaisesTheReading()
    {
        double before = 100;
        for (const double assurance : {0.5, 0.9, 0.99, 0.999}) {
            const double least = leastReadingToExceed(100, 0.02, assurance).value();
            QVERIFY(least >= before);
            before = least;
        }
        QCOMPARE(leastReadingToExceed(100, 0.02, 0.5).value(), 100.0);
        // z = 3.09 at 0.999: with a third of uncertainty no reading is enough.
        QCOMPARE(refused(leastReadingToExceed(100, 0.33, 0.999)), std::string("measure.out-of-range relative"));
    }
    // ILAC-G8:09/2019, its picture: the same reading in its four places, limit 65, U = 1.6.
    void fourWords()
    {
        const Tolerance atLeast{decimal("65"), {}};
        const auto words = [&](const char* value) {
            return judgeInFourWords(decimal(value), decimal("1.6"), atLeast).value();
        };
        QVERIFY(words("66.6") == FourWords::pass);
        QVERIFY(words("66.5") == FourWords::conditionalPass);
        QVERIFY(words("65.0") == FourWords::conditionalPass);
        QVERIFY(words("64.9") == FourWords::conditionalFail);
        QVERIFY(words("63.4") == FourWords::conditionalFail);
        QVERIFY(words("63.3") == FourWords::fail);
        QCOMPARE(refused(judgeInFourWords(decimal("1"), {}, {})), std::string("measure.tolerance-missing"));
    }
    void capability()
    {
        QVERIFY(capabilityIndex(0.3, 12.5, 16.3).value() > capabilityIndex(0.4, 12.5, 16.3).value());
        QCOMPARE(refused(capabilityIndex(0.3, 2, 1)), std::string("measure.tolerance-empty"));
    }
    void hostileNumbers()
    {
        for (const double bad : hostile({.zero = true, .negative = true})) {
            QCOMPARE(refused(guardForRisk(bad, 0.05)), std::string("measure.out-of-range standard"));
            QCOMPARE(refused(guardForRisk(1, bad)), std::string("measure.out-of-range risk"));
            QCOMPARE(refused(riskOfGuard(1, bad)), std::string("measure.out-of-range standard"));
            QCOMPARE(refused(acceptanceByProbability(bad, 1, 2, 0.9)), std::string("measure.out-of-range standard"));
            QCOMPARE(refused(acceptanceByProbability(1, 1, 2, bad)), std::string("measure.out-of-range confidence"));
            QCOMPARE(refused(leastReadingToExceed(bad, 0.1, 0.9)), std::string("measure.out-of-range limit"));
            QCOMPARE(refused(leastReadingToExceed(1, bad, 0.9)), std::string("measure.out-of-range relative"));
            QCOMPARE(refused(capabilityIndex(bad, 1, 2)), std::string("measure.out-of-range standard"));
        }
        for (const double bad : hostile({})) {
            QCOMPARE(refused(acceptanceLimits(bad, 1, 2)), std::string("measure.out-of-range guard"));
            QCOMPARE(refused(acceptanceLimits(0, bad, {})), std::string("measure.out-of-range lower"));
            QCOMPARE(refused(acceptanceLimits(0, {}, bad)), std::string("measure.out-of-range upper"));
        }
        QCOMPARE(refused(acceptanceLimits(-1, 1, 2)), std::string("measure.out-of-range guard"));
        QCOMPARE(refused(acceptanceLimits(0, {}, {})), std::string("measure.tolerance-missing"));
    }
};

QTEST_GUILESS_MAIN(TestGuard)
#include "guard.moc"
