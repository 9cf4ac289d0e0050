// SPDX-License-Identifier: GPL-3.0-or-later
// What holds of every platinum thermometer, and what is refused. Worked values: tests/reference/temperature.cpp.
#include "core/measure/platinum.h"

#include "tests/measure/refusal.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::tests::hostile;
using proofwalk::tests::refused;

class TestPlatinum : public QObject {
    Q_OBJECT

private slots:
    void thereAndBack()
    {
        double before = 0;
        for (double t = -200; t <= 850; t += 25) {
            const double r = platinumResistance_ohm(100, t).value();
            QVERIFY(r > before);
            QVERIFY(std::fabs(platinumTemperature_c(100, r).value() - t) < 1e-8);
            QVERIFY(std::fabs(platinumResistance_ohm(1000, t).value() - 10 * r) < 1e-9); // scale
            before = r;
        }
        QCOMPARE(platinumResistance_ohm(100, 0).value(), 100.0);
    }
    // IEC 60751: at 0 °C 0.15 and 0.30, at 100 °C 0.35 and 0.80 °C (from memory).
    void classes()
    {
        QCOMPARE(platinumTolerance_c(PlatinumClass::a, 0).value(), 0.15);
        QCOMPARE(platinumTolerance_c(PlatinumClass::a, 100).value(), 0.35);
        QCOMPARE(platinumTolerance_c(PlatinumClass::b, -100).value(), 0.80);
        QCOMPARE(refused(platinumTolerance_c(PlatinumClass::a, 651)),
                 std::string("measure.out-of-range temperature_c"));
    }
    void badInput()
    {
        for (const double bad : hostile({.zero = true, .negative = true, .huge = true})) {
            QCOMPARE(refused(platinumResistance_ohm(bad, 20)), std::string("measure.out-of-range at_zero_ohm"));
            QCOMPARE(refused(platinumTemperature_c(bad, 100)), std::string("measure.out-of-range at_zero_ohm"));
            QCOMPARE(refused(platinumTemperature_c(100, bad)), std::string("measure.out-of-range resistance_ohm"));
        }
        for (const double bad : hostile({.huge = true})) {
            QCOMPARE(refused(platinumResistance_ohm(100, bad)), std::string("measure.out-of-range temperature_c"));
            QCOMPARE(refused(platinumTolerance_c(PlatinumClass::b, bad)),
                     std::string("measure.out-of-range temperature_c"));
        }
        QCOMPARE(refused(platinumResistance_ohm(100, -201)), std::string("measure.out-of-range temperature_c"));
    }
};

QTEST_GUILESS_MAIN(TestPlatinum)
#include "platinum.moc"
