// SPDX-License-Identifier: GPL-3.0-or-later
// Source: IEC 60028:1925 (1/58 ohm mm2/m, 0.00393 per kelvin at 20 °C), worked by hand beside each.
#include "core/measure/cable.h"

#include "tests/measure/refusal.h"

#include <QtTest>

#include <cmath>
#include <limits>

using namespace proofwalk;
using measure::CableRun;
using tests::inputOf;

class TestCable : public QObject {
    Q_OBJECT

private slots:
    // 29 m out and back is 58 m of 1 mm2: one ohm by the definition.
    void oneOhm() { QCOMPARE(measure::pairResistance_ohm(CableRun{29, 1, 20}).value(), 1.0); }
    // 70 °C: 1 + 0.00393 x 50 = 1.1965.
    void warm() { QCOMPARE(measure::pairResistance_ohm(CableRun{29, 1, 70}).value(), 1.1965); }
    void coefficientsOfBothEndsAgree()
    {
        // The line through 20 °C with 0.00393 is the line through 75 °C with 0.00393 / (1 + 0.00393 x 55) = 0.0032314.
        const double warm = measure::resistanceByCoefficient_ohm({10, 20, 75}, 0.00393).value();
        const double back = measure::resistanceByCoefficient_ohm({warm, 75, 20}, 0.00393 / (1 + 0.00393 * 55)).value();
        QVERIFY(std::fabs(back - 10) < 1e-12);
    }
    void temperatureThereAndBack()
    {
        for (const double known : {-40.0, 20.0, 75.0})
            for (const double wanted : {-39.0, 0.0, 55.0, 89.0}) {
                const double found = measure::resistanceAtTemperature_ohm({1.452, known, wanted}).value();
                QVERIFY(std::fabs(measure::temperatureFromResistance_c(1.452, known, found).value() - wanted) < 1e-9);
            }
    }
    void thickerByGauge()
    {
        QVERIFY(measure::gaugeDiameter_mm(22).value() > measure::gaugeDiameter_mm(23).value());
        QVERIFY(std::fabs(measure::gaugeDiameter_mm(16).value() / measure::gaugeDiameter_mm(22).value() - 2) < 0.01);
    }
    void absurdInputIsNamed()
    {
        QCOMPARE(inputOf(measure::pairResistance_ohm(CableRun{1e308, 1, 20})), std::string("length_m"));
        QCOMPARE(inputOf(measure::pairResistance_ohm(CableRun{1, 1e308, 20})), std::string("section_mm2"));
        QCOMPARE(inputOf(measure::pairResistance_ohm(CableRun{1, 1e-308, 20})), std::string("section_mm2"));
        QCOMPARE(inputOf(measure::resistanceAtTemperature_ohm({1e308, 20, 30})), std::string("resistance_ohm"));
        QCOMPARE(inputOf(measure::strandedSection_mm2(7, 1e308)), std::string("diameter_mm"));
        QCOMPARE(inputOf(measure::resistanceByCoefficient_ohm({1, 20, 30}, 0)), std::string("coefficient_per_k"));
        QCOMPARE(inputOf(measure::resistanceByCoefficient_ohm({1, 20, 30}, 0.01)), std::string("coefficient_per_k"));
        QCOMPARE(inputOf(measure::temperatureFromResistance_c(1, 20, 2)), std::string("temperature_c"));
        QCOMPARE(inputOf(measure::temperatureFromResistance_c(1, 20, 1e308)), std::string("found_ohm"));
        QCOMPARE(inputOf(measure::gaugeDiameter_mm(31)), std::string("gauge"));
    }
    void refused()
    {
        constexpr double nan = std::numeric_limits<double>::quiet_NaN();
        QCOMPARE(inputOf(measure::pairResistance_ohm(CableRun{0, 1, 20})), std::string("length_m"));
        QCOMPARE(inputOf(measure::pairResistance_ohm(CableRun{nan, 1, 20})), std::string("length_m"));
        QCOMPARE(inputOf(measure::pairResistance_ohm(CableRun{1, -1, 20})), std::string("section_mm2"));
        QCOMPARE(inputOf(measure::pairResistance_ohm(CableRun{1, 1, -40.1})), std::string("temperature_c"));
        QCOMPARE(inputOf(measure::pairResistance_ohm(CableRun{1, 1, 90.1})), std::string("temperature_c"));
        QCOMPARE(inputOf(measure::resistanceAtTemperature_ohm({0, 20, 20})), std::string("resistance_ohm"));
        QCOMPARE(inputOf(measure::resistanceAtTemperature_ohm({1, 100, 20})), std::string("known_c"));
        QCOMPARE(inputOf(measure::resistanceAtTemperature_ohm({1, 20, nan})), std::string("wanted_c"));
        QCOMPARE(inputOf(measure::gaugeSection_mm2(9)), std::string("gauge"));
        QCOMPARE(inputOf(measure::gaugeSection_mm2(31)), std::string("gauge"));
        QCOMPARE(inputOf(measure::strandedSection_mm2(0, 0.2)), std::string("count"));
        QCOMPARE(inputOf(measure::strandedSection_mm2(7, 0)), std::string("diameter_mm"));
    }
};

QTEST_GUILESS_MAIN(TestCable)
#include "cable.moc"
