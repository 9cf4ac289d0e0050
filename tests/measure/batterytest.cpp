// SPDX-License-Identifier: GPL-3.0-or-later
// A battery under load, charging and lasting: properties and refusals. Figures with sources: tests/reference/battery.
#include "core/measure/batterytest.h"
#include "core/measure/peukert.h"

#include "tests/measure/refusal.h"

#include <QtTest>

#include <cmath>
#include <limits>

using namespace proofwalk;
using measure::DischargeOutlook;
using tests::inputOf;

namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();

/// Readings at 15 and 30 minutes of a test of an hour that must end above 10.5 V; U as given.
DischargeOutlook outlook(double at15_v, double at30_v, double expanded_v = 0.05)
{
    const std::vector<measure::DischargeReading> readings{{15, at15_v}, {30, at30_v}};
    return measure::judgeDischarge({10.5, 60, expanded_v}, readings).value().outlook;
}

} // namespace

class TestBatteryTest : public QObject {
    Q_OBJECT

private slots:
    void readingsUnderLoad()
    {
        // Straight on: V(60) = V30 - 2 (V15 - V30); it may be wrong by 5 U.
        QCOMPARE(outlook(12.2, 12.1), DischargeOutlook::nothingAgainst); // 11.9 +- 0.25
        QCOMPARE(outlook(12.0, 11.4), DischargeOutlook::fallsShort);     // 10.2 +- 0.25
        QCOMPARE(outlook(12.0, 11.5), DischargeOutlook::tooClose);       // 10.5 +- 0.25
        QCOMPARE(outlook(11.0, 10.52), DischargeOutlook::fallsShort);    // 9.56
        QCOMPARE(outlook(11.0, 10.4), DischargeOutlook::belowEnd);
        QCOMPARE(outlook(10.52, 10.52), DischargeOutlook::tooClose); // flat, but the reading itself is too near
        QCOMPARE(outlook(10.4, 11.0), DischargeOutlook::belowEnd);   // whatever came later
    }
    void aPassIsNeverSaid()
    {
        // Of the four words none is a pass, however good the readings; and more uncertainty never says more.
        QCOMPARE(outlook(13, 13, 0), DischargeOutlook::nothingAgainst);
        for (double expanded_v = 0; expanded_v < 1; expanded_v += 0.05)
            for (const double at30_v : {12.1, 11.5, 11.2}) {
                const auto now = outlook(12.2, at30_v, expanded_v), vaguer = outlook(12.2, at30_v, expanded_v + 0.05);
                QVERIFY(now == vaguer || vaguer == DischargeOutlook::tooClose);
            }
    }
    void loadLineHoldsBothPoints()
    {
        const auto line = measure::loadLine({12.7, 0.1, 12.3, 4.1, 0.01}).value();
        QVERIFY(std::fabs(measure::terminalVoltage_v(line, 0.1).value() - 12.7) < 1e-12);
        QVERIFY(std::fabs(measure::terminalVoltage_v(line, 4.1).value() - 12.3) < 1e-12);
        QCOMPARE(inputOf(measure::terminalVoltage_v(line, 200)), std::string("current_a"));
        QCOMPARE(inputOf(measure::terminalVoltage_v(line, std::nan(""))), std::string("current_a"));
    }
    void rechargeThereAndBack()
    {
        const measure::Recharge recharge{17, 0.8, 0.85, 0.42};
        for (const double hours : {5.0, 24.0, 72.0}) {
            const double total = measure::chargerCurrent(recharge, hours)->total_a;
            QVERIFY(std::fabs(measure::rechargeTime_h(recharge, total).value() - hours) < 1e-9);
        }
    }
    void peukertAtTheRatedCurrent()
    {
        for (const double k : {1.0, 1.15, 1.4}) {
            const measure::PeukertBattery battery{7, 20, k};
            QVERIFY(std::fabs(measure::lastsFor_h(battery, 0.35).value() - 20) < 1e-9);
            QVERIFY(std::fabs(measure::equivalentCurrent_a(battery, 0.35).value() - 0.35) < 1e-12);
            QVERIFY(measure::lastsFor_h(battery, 1).value() > measure::lastsFor_h(battery, 1.1).value());
            // The equivalent current drains the rated ampere hours in the time the current lasts.
            const double hours = measure::lastsFor_h(battery, 2).value();
            QVERIFY(std::fabs(measure::equivalentCurrent_a(battery, 2).value() * hours - 7) < 1e-9);
        }
    }
    void dutyThatJustLasts()
    {
        const measure::PeukertBattery battery{18, 20, 1.15};
        const std::vector<measure::Load> loads{{0.42, 24}, {3.8, 1.0 / 12}};
        const auto use = measure::dutyUse(battery, loads).value();
        const auto just = measure::dutyUse({use.needed_ah, 20, 1.15}, loads).value();
        QVERIFY(std::fabs(just.used - 1) < 1e-9);
    }
    void warmFloatsLower()
    {
        QVERIFY(measure::floatVoltage_v(6, 2.275, -3, 30).value() < measure::floatVoltage_v(6, 2.275, -3, 20).value());
        QVERIFY(std::fabs(measure::floatVoltage_v(6, 2.275, -3, 20).value() - 13.65) < 1e-9);
    }
    void dischargeRefused()
    {
        const auto code = [](std::vector<measure::DischargeReading> readings) {
            return measure::judgeDischarge({10.5, 60, 0.05}, readings).error().code;
        };
        QCOMPARE(code({}), std::string("measure.discharge-readings"));
        QCOMPARE(code({{15, 12}}), std::string("measure.discharge-readings"));
        QCOMPARE(code({{30, 12}, {15, 12}}), std::string("measure.discharge-readings"));
        QCOMPARE(code({{15, 12}, {15, 12}}), std::string("measure.discharge-readings"));
        QCOMPARE(code({{15, 12}, {61, 12}}), std::string("measure.out-of-range"));
        const std::vector<measure::DischargeReading> sound{{15, 12}, {30, 11.9}};
        for (const double bad : {0.0, -1.0, infinity, std::nan(""), 1e308}) {
            QCOMPARE(inputOf(measure::judgeDischarge({bad, 60, 0.05}, sound)), std::string("end_v"));
            QCOMPARE(inputOf(measure::judgeDischarge({10.5, bad, 0.05}, sound)), std::string("required_min"));
            const std::vector<measure::DischargeReading> volts{{15, bad}, {30, 12}};
            QCOMPARE(inputOf(measure::judgeDischarge({10.5, 60, 0.05}, volts)), std::string("volts"));
        }
        QCOMPARE(inputOf(measure::judgeDischarge({10.5, 60, -1}, sound)), std::string("expanded_v"));
    }
    void refusedByName()
    {
        for (const double bad : {0.0, -1.0, infinity, -infinity, std::nan(""), 1e308}) {
            QCOMPARE(inputOf(measure::loadLine({bad, 0, 12, 5, 0.01})), std::string("light_v"));
            QCOMPARE(inputOf(measure::loadLine({12.7, 0, bad, 5, 0.01})), std::string("heavy_v"));
            QCOMPARE(inputOf(measure::loadLine({12.7, 0, 12, bad, 0.01})), std::string("heavy_a"));
            QCOMPARE(inputOf(measure::lastsFor_h({bad, 20, 1.1}, 1)), std::string("capacity_ah"));
            QCOMPARE(inputOf(measure::lastsFor_h({7, bad, 1.1}, 1)), std::string("rated_h"));
            QCOMPARE(inputOf(measure::lastsFor_h({7, 20, bad}, 1)), std::string("exponent"));
            QCOMPARE(inputOf(measure::equivalentCurrent_a({7, 20, 1.1}, bad)), std::string("current_a"));
            QCOMPARE(inputOf(measure::lastsForOneAmpereForm_h(bad, 1.1, 1)), std::string("capacity_1a_ah"));
            QCOMPARE(inputOf(measure::chargerCurrent({bad, 0.8, 0.85, 0}, 24)), std::string("capacity_ah"));
            QCOMPARE(inputOf(measure::chargerCurrent({17, bad, 0.85, 0}, 24)), std::string("share"));
            QCOMPARE(inputOf(measure::chargerCurrent({17, 0.8, bad, 0}, 24)), std::string("efficiency"));
            QCOMPARE(inputOf(measure::chargerCurrent({17, 0.8, 0.85, 0}, bad)), std::string("hours"));
            QCOMPARE(inputOf(measure::rechargeTime_h({17, 0.8, 0.85, 0.42}, bad)), std::string("charger_a"));
            QCOMPARE(inputOf(measure::floatVoltage_v(6, bad, -3, 20)), std::string("cell_at_20_v"));
        }
        QCOMPARE(inputOf(measure::loadLine({12.7, 5, 12, 5, 0.01})), std::string("heavy_a"));
        QCOMPARE(inputOf(measure::loadLine({12, 0, 12, 5, 0.01})), std::string("heavy_v"));
        QCOMPARE(inputOf(measure::rechargeTime_h({17, 0.8, 0.85, 0.42}, 0.42)), std::string("charger_a"));
        QCOMPARE(inputOf(measure::floatVoltage_v(0, 2.275, -3, 20)), std::string("cells"));
        QCOMPARE(inputOf(measure::floatVoltage_v(6, 2.275, 1, 20)), std::string("change_mv_per_k"));
        QCOMPARE(inputOf(measure::floatVoltage_v(6, 2.275, -3, 51)), std::string("temperature_c"));
        QCOMPARE(measure::dutyUse({7, 20, 1.1}, {}).error().code, std::string("measure.loads"));
        QCOMPARE(inputOf(measure::dutyUse({7, 20, 1.1}, std::vector<measure::Load>{{1, -1}})), std::string("hours"));
    }
};

QTEST_GUILESS_MAIN(TestBatteryTest)
#include "batterytest.moc"
