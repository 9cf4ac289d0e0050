// SPDX-License-Identifier: GPL-3.0-or-later
// What holds of the reference function, and what is refused. The table's values: tests/reference/temperature.cpp.
#include "core/measure/thermocouple.h"

#include "tests/measure/refusal.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::tests::hostile;
using proofwalk::tests::refused;

class TestThermocouple : public QObject {
    Q_OBJECT

private slots:
    void thereAndBack()
    {
        double before = -10;
        for (double t = -270; t <= 1372; t += 2) {
            const double mv = typeKVoltage_mv(t).value();
            QVERIFY(mv > before);
            if (t > -260) QVERIFY(std::fabs(typeKTemperature_c(mv).value() - t) < 1e-6);
            before = mv;
        }
    }
    // The two polynomials meet at 0 °C, in value and nearly in slope.
    void noStepAtZero() { QVERIFY(std::fabs(typeKVoltage_mv(-1e-9).value() - typeKVoltage_mv(0).value()) < 1e-8); }
    void millivoltsAreAdded()
    {
        QVERIFY(std::fabs(typeKJunction_c(0, 22).value() - 22) < 1e-6);
        const double mv = typeKVoltage_mv(180).value() - typeKVoltage_mv(25).value();
        QVERIFY(std::fabs(typeKJunction_c(mv, 25).value() - 180) < 1e-6);
    }
    void badInput()
    {
        for (const double bad : hostile({.huge = true})) {
            QCOMPARE(refused(typeKVoltage_mv(bad)), std::string("measure.out-of-range temperature_c"));
            QCOMPARE(refused(typeKTemperature_c(bad)), std::string("measure.out-of-range voltage_mv"));
            QCOMPARE(refused(typeKJunction_c(bad, 22)), std::string("measure.out-of-range voltage_mv"));
            QCOMPARE(refused(typeKJunction_c(1, bad)), std::string("measure.out-of-range cold_junction_c"));
        }
        QCOMPARE(refused(typeKVoltage_mv(1372.1)), std::string("measure.out-of-range temperature_c"));
        QCOMPARE(refused(typeKTemperature_c(54.9)), std::string("measure.out-of-range voltage_mv"));
    }
};

QTEST_GUILESS_MAIN(TestThermocouple)
#include "thermocouple.moc"
