// SPDX-License-Identifier: GPL-3.0-or-later
// Source of the rules: JCGM 100:2008, as quoted on public pages; the worked values stand in
// tests/reference/conformity.cpp.
#include "core/measure/uncertainty.h"

#include "tests/measure/refusal.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::tests::hostile;
using proofwalk::tests::refused;

class TestUncertainty : public QObject {
    Q_OBJECT

private slots:
    // 3, 4 and 5: a right triangle.
    void partsAddAsSquares()
    {
        const std::vector<UncertaintyPart> parts{{3}, {4}, {0}};
        const auto all = combine(parts).value();
        QCOMPARE(all.standard, 5.0);
        QVERIFY(std::isinf(all.degreesOfFreedom));
        QVERIFY(std::fabs(all.coverage - 2) < 1e-4); // 2.00 at 95.45 %: table of the normal distribution
        QCOMPARE(all.expanded, all.coverage * 5);
    }
    // Student's t, two-sided 95 %: 12.706 at 1 and 2.262 at 9 degrees of freedom (printed in every table; from memory).
    void fewDegreesOfFreedomWidenIt()
    {
        const std::vector<UncertaintyPart> one{{2, 1}};
        QVERIFY(std::fabs(combine(one, 0.95).value().coverage - 12.706) < 0.0005);
        const std::vector<UncertaintyPart> nine{{2, 9.99}};
        QVERIFY(std::fabs(combine(nine, 0.95).value().coverage - 2.262) < 0.0005);
    }
    void scale()
    {
        const std::vector<UncertaintyPart> small{{1e-50, 4}, {2e-50, 9}};
        const std::vector<UncertaintyPart> large{{1e50, 4}, {2e50, 9}};
        QVERIFY(std::fabs(combine(small).value().degreesOfFreedom - combine(large).value().degreesOfFreedom) < 1e-9);
    }
    // Mean 5, squares of 3, 1, 1, 3 over 3: s = sqrt(20 / 3).
    void readingsRepeated()
    {
        const std::vector<double> readings{2, 4, 6, 8};
        const auto all = repeated(readings).value();
        QCOMPARE(all.mean, 5.0);
        QVERIFY(std::fabs(all.deviation - std::sqrt(20.0 / 3)) < 1e-12);
        QVERIFY(std::fabs(all.ofMean - all.deviation / 2) < 1e-12);
        // Moved by a thousand they spread no more.
        const std::vector<double> moved{1002, 1004, 1006, 1008};
        QVERIFY(std::fabs(repeated(moved).value().deviation - all.deviation) < 1e-9);
        const std::vector<double> alike{3, 3};
        QCOMPARE(repeated(alike).value().deviation, 0.0);
    }
    void badInput()
    {
        for (const double bad : hostile({.negative = true})) {
            QCOMPARE(refused(standardOfHalfWidth(bad, Shape::triangular)),
                     std::string("measure.out-of-range half_width"));
            QCOMPARE(refused(combine(std::vector<UncertaintyPart>{{bad}})),
                     std::string("measure.out-of-range standard"));
        }
        for (const double bad : hostile({.zero = true, .negative = true})) {
            if (std::isinf(bad) && bad > 0) continue; // infinite degrees of freedom are in order
            QCOMPARE(refused(combine(std::vector<UncertaintyPart>{{1, bad}})),
                     std::string("measure.out-of-range degrees of freedom"));
        }
        for (const double bad : hostile({.negative = true, .huge = true})) {
            const std::vector<double> readings{1, bad};
            if (bad != -1) QCOMPARE(refused(repeated(readings)), std::string("measure.out-of-range readings"));
        }
        QCOMPARE(refused(combine({})), std::string("measure.nothing-to-combine"));
        QCOMPARE(refused(combine(std::vector<UncertaintyPart>{{0}})), std::string("measure.nothing-to-combine"));
        QCOMPARE(refused(combine(std::vector<UncertaintyPart>{{1}}, 1)),
                 std::string("measure.out-of-range coverage probability"));
        QCOMPARE(refused(repeated({})), std::string("measure.too-few-readings"));
        QCOMPARE(refused(repeated(std::vector<double>{1})), std::string("measure.too-few-readings"));
    }
};

QTEST_GUILESS_MAIN(TestUncertainty)
#include "uncertainty.moc"
