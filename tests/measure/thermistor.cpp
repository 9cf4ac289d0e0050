// SPDX-License-Identifier: GPL-3.0-or-later
// What holds of every curve, and what is refused. The worked values stand in tests/reference/temperature.cpp.
#include "core/measure/thermistor.h"

#include "tests/measure/refusal.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::tests::hostile;
using proofwalk::tests::refused;

class TestThermistor : public QObject {
    Q_OBJECT

private slots:
    void thereAndBack()
    {
        const BetaCurve curve{10000, 3950};
        QCOMPARE(thermistorResistance_ohm(curve, 25).value(), 10000.0);
        double before = 1e12;
        for (double t = -40; t <= 120; t += 20) {
            const double r = thermistorResistance_ohm(curve, t).value();
            QVERIFY(r < before); // warmer is less
            QVERIFY(std::fabs(thermistorTemperature_c(curve, r).value() - t) < 1e-9);
            before = r;
        }
    }
    // With C = 0 it is the beta equation, of a = 1/298.15 - ln(R25)/B and b = 1/B.
    void steinhartHartHoldsTheBetaEquation()
    {
        const SteinhartHart same{1 / 298.15 - std::log(10000.0) / 3950, 1.0 / 3950, 0};
        for (const double r : {2000.0, 10000.0, 90000.0})
            QVERIFY(std::fabs(thermistorTemperature_c(same, r).value()
                              - thermistorTemperature_c(BetaCurve{10000, 3950}, r).value())
                    < 1e-9);
    }
    void badInput()
    {
        for (const double bad : hostile({.zero = true, .negative = true, .huge = true})) {
            QCOMPARE(refused(thermistorResistance_ohm({bad, 3950}, 25)), std::string("measure.out-of-range at25c_ohm"));
            QCOMPARE(refused(thermistorResistance_ohm({10000, bad}, 25)), std::string("measure.out-of-range beta_k"));
            QCOMPARE(refused(thermistorTemperature_c(BetaCurve{10000, 3950}, bad)),
                     std::string("measure.out-of-range resistance_ohm"));
            QCOMPARE(refused(thermistorTemperature_c(SteinhartHart{1e-3, 2e-4, 1e-7}, bad)),
                     std::string("measure.out-of-range resistance_ohm"));
        }
        for (const double bad : hostile({.huge = true})) {
            QCOMPARE(refused(thermistorResistance_ohm({10000, 3950}, bad)),
                     std::string("measure.out-of-range temperature_c"));
            QCOMPARE(refused(thermistorTemperature_c(SteinhartHart{bad, 2e-4, 1e-7}, 1)),
                     std::string("measure.out-of-range a"));
        }
        QCOMPARE(refused(thermistorTemperature_c(BetaCurve{10000, 3950}, 1e-6)),
                 std::string("measure.out-of-range resistance_ohm"));
        QCOMPARE(refused(thermistorTemperature_c(SteinhartHart{0, 0, 0}, 10000)),
                 std::string("measure.out-of-range resistance_ohm"));
    }
};

QTEST_GUILESS_MAIN(TestThermistor)
#include "thermistor.moc"
