// SPDX-License-Identifier: GPL-3.0-or-later
// Leaks, shorts and earth: pairs of inverse functions, and what must be refused. Figures stand in tests/reference/loop.
#include "core/measure/loopfaults.h"

#include "tests/measure/refusal.h"

#include <QtTest>

#include <cmath>
#include <functional>
#include <limits>

using namespace proofwalk;
using tests::inputOf;

namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();

} // namespace

class TestLoopFaults : public QObject {
    Q_OBJECT

private slots:
    void leakageThereAndBack()
    {
        for (const double leak : {50.0, 4700.0, 22000.0, 1e6}) {
            const double found = measure::withLeakage_ohm(4700, leak).value();
            QVERIFY(found < 4700);
            QVERIFY(std::fabs(measure::leakage_ohm(4700, found).value() / leak - 1) < 1e-9);
        }
        // What hides in 5 % is what takes 5 % off.
        const double hidden = measure::leastHiddenLeakage_ohm(4700, 5).value();
        QVERIFY(std::fabs(measure::withLeakage_ohm(4700, hidden).value() - 0.95 * 4700) < 1e-9);
    }
    void dividerThereAndBack()
    {
        const measure::Divider divider{5, 2200};
        for (const double loop : {10.0, 2200.0, 4716.84, 1e6}) {
            const double volts = measure::terminal_v(divider, loop).value();
            QVERIFY(std::fabs(measure::loopFromVoltage_ohm(divider, volts).value() / loop - 1) < 1e-9);
            const double slope = (measure::loopFromVoltage_ohm(divider, volts + 1e-7).value() - loop) / 1e-7;
            QVERIFY(std::fabs(measure::ohmsPerVolt(divider, volts).value() / slope - 1) < 1e-3);
        }
    }
    // Kirchhoff at the two poles for leaks of 100 and 20 kilohm and a meter of 1 megohm, worked as the meter would see it.
    void earthThereAndBack()
    {
        const double supply = 24, plus = 1e5, minus = 2e4, meter = 1e6;
        const auto beside = [](double a, double b) { return a * b / (a + b); };
        const double plusSeen = supply * beside(plus, meter) / (beside(plus, meter) + minus);
        const double minusSeen = supply * beside(minus, meter) / (beside(minus, meter) + plus);
        const auto found = measure::earthLeakage({supply, plusSeen, minusSeen, meter}).value();
        QVERIFY(std::fabs(found.plus_ohm / plus - 1) < 1e-9);
        QVERIFY(std::fabs(found.minus_ohm / minus - 1) < 1e-9);
    }
    void earthOnOneSide()
    {
        // Only plus leaks: against plus the meter bridges nothing and reads 0.
        const auto found = measure::earthLeakage({24, 0, 12, 1e6}).value();
        QCOMPARE(found.plus_ohm, 1e6);
        QCOMPARE(found.minus_ohm, infinity);
    }
    void distanceGrowsWithResistanceAndShrinksWithWarmth()
    {
        const measure::ShortSeen seen{.found_ohm = 3.2, .leads_ohm = 0.15, .ohm_per_km = 84.2151};
        auto further = seen, warmer = seen;
        further.found_ohm = 4;
        warmer.cable_c = 40;
        const double metres = measure::distanceToShort_m(seen).value();
        QVERIFY(measure::distanceToShort_m(further).value() > metres);
        QVERIFY(measure::distanceToShort_m(warmer).value() < metres);
    }
    void resistorsDrift()
    {
        const auto still = measure::resistorWindow(5600, 1, 100, 0).value();
        QCOMPARE(still.least_ohm, 5544.0);
        QCOMPARE(still.most_ohm, 5656.0);
        QVERIFY(measure::resistorWindow(5600, 1, 100, 40)->most_ohm > still.most_ohm);
    }
    void refusedByName()
    {
        for (const double bad : {0.0, -1.0, infinity, -infinity, std::nan(""), 1e308}) {
            QCOMPARE(inputOf(measure::leakage_ohm(bad, 100)), std::string("sound_ohm"));
            QCOMPARE(inputOf(measure::leakage_ohm(4700, bad)), std::string("found_ohm"));
            QCOMPARE(inputOf(measure::withLeakage_ohm(4700, bad)), std::string("leak_ohm"));
            QCOMPARE(inputOf(measure::leastHiddenLeakage_ohm(4700, bad)), std::string("below_pct"));
            QCOMPARE(inputOf(measure::terminal_v({bad, 2200}, 4700)), std::string("source_v"));
            QCOMPARE(inputOf(measure::terminal_v({5, bad}, 4700)), std::string("pull_up_ohm"));
            QCOMPARE(inputOf(measure::terminal_v({5, 2200}, bad)), std::string("loop_ohm"));
            QCOMPARE(inputOf(measure::earthLeakage({bad, 1, 1, 1e6})), std::string("supply_v"));
            QCOMPARE(inputOf(measure::earthLeakage({24, 1, 1, bad})), std::string("meter_ohm"));
            QCOMPARE(inputOf(measure::resistorWindow(bad, 1, 100, 40)), std::string("nominal_ohm"));
            QCOMPARE(inputOf(measure::distanceToShort_m({.found_ohm = 3, .ohm_per_km = bad})),
                     std::string("ohm_per_km"));
        }
        QCOMPARE(inputOf(measure::leakage_ohm(4700, 4700)), std::string("found_ohm"));
        QCOMPARE(inputOf(measure::loopFromVoltage_ohm({5, 2200}, 5)), std::string("terminal_v"));
        QCOMPARE(inputOf(measure::ohmsPerVolt({5, 2200}, -0.1)), std::string("terminal_v"));
        QCOMPARE(inputOf(measure::earthLeakage({24, -1, 1, 1e6})), std::string("plus_v"));
        QCOMPARE(inputOf(measure::earthLeakage({24, 20, 5, 1e6})), std::string("minus_v"));
        QCOMPARE(inputOf(measure::earthLeakage({24, 0, 0, 1e6})), std::string("plus_v"));
        QCOMPARE(inputOf(measure::distanceToShort_m({.found_ohm = 0.1, .leads_ohm = 0.15, .ohm_per_km = 84})),
                 std::string("found_ohm"));
        QCOMPARE(inputOf(measure::distanceToShort_m({.found_ohm = 1, .ohm_per_km = 84, .cable_c = 91})),
                 std::string("wanted_c"));
        QCOMPARE(inputOf(measure::resistorWindow(5600, 100, 100, 40)), std::string("tolerance_pct"));
        QCOMPARE(inputOf(measure::resistorWindow(5600, 1, -1, 40)), std::string("coefficient_ppm_per_k"));
        QCOMPARE(inputOf(measure::resistorWindow(5600, 1, 100, 201)), std::string("change_k"));
        QCOMPARE(inputOf(measure::resistorWindow(5600, 1, 1e5, 100)), std::string("change_k"));
    }
};

QTEST_GUILESS_MAIN(TestLoopFaults)
#include "loopfaults.moc"
