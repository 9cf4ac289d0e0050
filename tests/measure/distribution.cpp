// SPDX-License-Identifier: GPL-3.0-or-later
// What holds of the distributions for every input; tests/reference holds them against tables and a second way.
#include "core/measure/distribution.h"

#include "tests/measure/refusal.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::tests::hostile;
using proofwalk::tests::refused;

class TestDistribution : public QObject {
    Q_OBJECT

private slots:
    void quantileIsTheInverse()
    {
        double before = -std::numeric_limits<double>::infinity();
        for (const double p : {1e-12, 1e-3, 0.1, 0.5, 0.9, 0.999}) {
            const double z = normalQuantile(p).value();
            QVERIFY(z > before);
            QVERIFY(std::fabs(normalBelow(z) / p - 1) < 1e-12);
            before = z;
        }
    }
    void studentNearsTheNormal()
    {
        constexpr double infinity = std::numeric_limits<double>::infinity();
        const double normal = normalQuantile(0.975).value();
        double before = infinity;
        for (const double freedom : {1.0, 2.0, 10.0, 1e4}) {
            const double t = studentQuantile(0.975, freedom).value();
            QVERIFY(t < before && t > normal);
            before = t;
        }
        QVERIFY(std::fabs(studentQuantile(0.975, infinity).value() - normal) < 1e-12);
    }
    // The beta distribution with b = 1 is p = x^a.
    void betaOfOne()
    {
        for (const double a : {0.5, 1.0, 5.0, 59.0})
            QVERIFY(std::fabs(betaQuantile(0.05, a, 1).value() - std::pow(0.05, 1 / a)) < 1e-12);
        QVERIFY(betaQuantile(1e-9, 3, 4).value() < betaQuantile(0.5, 3, 4).value());
    }
    void binomial()
    {
        QCOMPARE(binomialAtMost(3, 3, 0.4).value(), 1.0);
        QCOMPARE(binomialAtMost(0, 3, 0).value(), 1.0);
        QCOMPARE(binomialAtMost(0, 3, 1).value(), 0.0);
        QVERIFY(std::fabs(binomialAtMost(0, 3, 0.4).value() - 0.216) < 1e-15); // 0.6^3
        QVERIFY(binomialAtMost(1, 3, 0.4).value() > 0.216);
    }
    void badInput()
    {
        for (const double bad : hostile({.zero = true, .negative = true, .huge = true})) {
            QCOMPARE(refused(normalQuantile(bad)), std::string("measure.out-of-range probability"));
            QCOMPARE(refused(studentQuantile(bad, 3)), std::string("measure.out-of-range probability"));
            QCOMPARE(refused(betaQuantile(bad, 1, 1)), std::string("measure.out-of-range probability"));
            QCOMPARE(refused(betaQuantile(0.5, bad, 1)), std::string("measure.out-of-range shape"));
            QCOMPARE(refused(betaQuantile(0.5, 1, bad)), std::string("measure.out-of-range shape"));
            if (bad != 0) QCOMPARE(refused(binomialAtMost(1, 2, bad)), std::string("measure.out-of-range chance"));
        }
        QCOMPARE(refused(normalQuantile(1)), std::string("measure.out-of-range probability"));
        QCOMPARE(refused(studentQuantile(0.5, 0.5)), std::string("measure.out-of-range degrees of freedom"));
        QCOMPARE(refused(binomialAtMost(3, 2, 0.5)), std::string("measure.out-of-range hits"));
        QCOMPARE(refused(binomialAtMost(-1, 2, 0.5)), std::string("measure.out-of-range hits"));
        QCOMPARE(refused(binomialAtMost(0, 0, 0.5)), std::string("measure.out-of-range tries"));
    }
};

QTEST_GUILESS_MAIN(TestDistribution)
#include "distribution.moc"
