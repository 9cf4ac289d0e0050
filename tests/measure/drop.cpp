// SPDX-License-Identifier: GPL-3.0-or-later
// Drops along a supply circuit: properties and refusals. Figures with sources stand in tests/reference/cable.
#include "core/measure/drop.h"

#include "tests/measure/refusal.h"

#include <QtTest>

#include <cmath>
#include <limits>
#include <random>

using namespace proofwalk;
using measure::Appliance;
using measure::Supply;
using tests::inputOf;

namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();
constexpr Supply supply{20.4, 10, 10};

template <class T>
std::string codeOf(const Result<T>& result)
{
    return result ? "" : result.error().code;
}

std::vector<measure::Conductor> table()
{
    return {{"thick", 2.5, 7.41, 20, true, "", ""},
            {"thin", 0.5, 36, 20, true, "", ""},
            {"middle", 1, 18.1, 20, true, "", ""}};
}

} // namespace

class TestDrop : public QObject {
    Q_OBJECT

private slots:
    // Never more than the lump at the end, and the same if there is but one appliance.
    void lumpIsTheWorst()
    {
        std::mt19937 engine(7);
        const auto uniform = [&](double to) { return to * std::generate_canonical<double, 32>(engine); };
        for (unsigned round = 0; round < 200; ++round) {
            std::vector<Appliance> appliances;
            for (unsigned i = 0; i <= round % 10; ++i) appliances.push_back({uniform(20), uniform(0.1), 0});
            const double lump = measure::lumpDrop_v(supply, appliances).value();
            const double end = measure::pointToPoint(supply, appliances).value().back().voltage_v;
            QVERIFY(supply.source_v - end <= lump + 1e-12);
            if (appliances.size() == 1) QVERIFY(std::fabs(supply.source_v - end - lump) < 1e-12);
        }
    }
    void furtherIsLower()
    {
        const std::vector<Appliance> appliances{{10, 0.1, 2}, {10, 0.2, 0}, {20, 0, 3}};
        const auto at = measure::pointToPoint(supply, appliances).value();
        QVERIFY(at[0].voltage_v > at[1].voltage_v && at[1].voltage_v > at[2].voltage_v);
        // Ohm's and Kirchhoff's laws hold at what was found: each power is drawn, each segment carries what lies beyond.
        QVERIFY(std::fabs(at[2].current_a * at[2].voltage_v - 3) < 1e-9);
        QVERIFY(std::fabs((at[0].current_a - 0.1) * at[0].voltage_v - 2) < 1e-9);
        QVERIFY(std::fabs(at[1].drop_v - 0.2 * (at[1].current_a + at[2].current_a)) < 1e-12);
    }
    void morePowerThanTheCircuitCarries()
    {
        // Through 2.5 ohm at most 20.4^2 / 10 = 41.616 W.
        const Supply far{20.4, 2500, 0};
        const std::vector<Appliance> just{{1, 0, 41.6}}, over{{1, 0, 41.63}};
        QVERIFY(measure::pointToPoint(far, just).has_value());
        QCOMPARE(codeOf(measure::pointToPoint(far, over)), std::string("measure.no-operating-point"));
        QCOMPARE(codeOf(measure::regulatedState(20.4, 2.5, 41.63)), std::string("measure.no-operating-point"));
        const std::vector<Appliance> current{{1, 9, 0}};
        QCOMPARE(codeOf(measure::pointToPoint(far, current)), std::string("measure.no-operating-point"));
    }
    void lessVoltageMoreCurrent()
    {
        double before = 0;
        for (const double ohm : {0.1, 0.5, 1.0, 2.0, 2.5}) {
            const auto state = measure::regulatedState(20.4, ohm, 40).value();
            QVERIFY(state.current_a > before);
            before = state.current_a;
        }
    }
    void longestRunIsJustLongEnough()
    {
        const auto run = measure::longestRun(supply, 16, 2).value();
        const double drop = measure::runDrop_v(supply, run.length_m, 2).value();
        QVERIFY(std::fabs(supply.source_v - drop - 16) < 1e-9);
    }
    void theSmallestThatWillDo()
    {
        const std::vector<Appliance> appliances{{100, 0.5, 0}};
        // 3.6, 1.81 and 0.741 V of drop at 20 °C.
        const auto named = [&](double least_v, double celsius = 20) {
            const auto found = measure::smallestConductor(24, least_v, celsius, appliances, table());
            return found ? found->name : found.error().code;
        };
        QCOMPARE(named(20), std::string("thin"));
        QCOMPARE(named(21), std::string("middle"));
        QCOMPARE(named(22.5), std::string("thick"));
        QCOMPARE(named(23.5), std::string("measure.no-conductor"));
        QCOMPARE(named(20.3, 60), std::string("middle")); // 3.6 V become 4.17 V
    }
    void refusedByName()
    {
        for (const double bad : {-1.0, infinity, -infinity, std::nan(""), 1e308}) {
            const std::vector<Appliance> length{{bad, 1, 0}}, current{{1, bad, 0}}, power{{1, 0, bad}};
            QCOMPARE(inputOf(measure::pointToPoint(supply, length)), std::string("segment_m"));
            QCOMPARE(inputOf(measure::pointToPoint(supply, current)), std::string("current_a"));
            QCOMPARE(inputOf(measure::pointToPoint(supply, power)), std::string("power_w"));
            QCOMPARE(inputOf(measure::runDrop_v({24, bad, 1}, 1, 1)), std::string("feed_ohm_per_km"));
            QCOMPARE(inputOf(measure::runDrop_v({24, 1, bad}, 1, 1)), std::string("return_ohm_per_km"));
            QCOMPARE(inputOf(measure::runDrop_v(supply, bad, 1)), std::string("length_m"));
            QCOMPARE(inputOf(measure::regulatedState(bad, 1, 1)), std::string("source_v"));
            QCOMPARE(inputOf(measure::regulatedState(24, bad, 1)), std::string("loop_ohm"));
            QCOMPARE(inputOf(measure::regulatedState(24, 1, bad)), std::string("power_w"));
            QCOMPARE(inputOf(measure::longestRun(supply, bad, 1)), std::string("least_v"));
            QCOMPARE(inputOf(measure::longestRun(supply, 16, bad)), std::string("current_a"));
        }
        const std::vector<Appliance> power{{1, 0, 5}};
        QCOMPARE(inputOf(measure::lumpDrop_v(supply, power)), std::string("power_w"));
        QCOMPARE(codeOf(measure::pointToPoint(supply, {})), std::string("measure.loads"));
        QCOMPARE(inputOf(measure::longestRun(supply, 20.4, 1)), std::string("least_v"));
        QCOMPARE(inputOf(measure::longestRun({20.4, 0, 0}, 16, 1)), std::string("feed_ohm_per_km"));
        QCOMPARE(inputOf(measure::smallestConductor(24, 24, 20, power, table())), std::string("least_v"));
        QCOMPARE(inputOf(measure::smallestConductor(24, 20, 91, power, table())), std::string("wanted_c"));
    }
};

QTEST_GUILESS_MAIN(TestDrop)
#include "drop.moc"
