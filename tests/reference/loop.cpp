// SPDX-License-Identifier: GPL-3.0-or-later
// Source: Ohm's law on the loop's network; each case beside its vector in measure-vectors.json. Tolerance 1e-9.
#include "core/measure/loop.h"
#include "core/measure/cable.h"
#include "core/measure/colourcode.h"
#include "core/measure/loopfaults.h"
#include "core/measure/loopstates.h"
#include "core/measure/networktext.h"
#include "tests/reference/vectors.h"

using namespace proofwalk;
using measure::LoopState;
using proofwalk::reference::Vector;

namespace {

/// Whether a meter of that uncertainty takes normal for alarm.
bool blurs(const measure::LoopWiring& wiring, double expandedUncertainty_ohm)
{
    const auto pairs = measure::statesNotToldApart(wiring, expandedUncertainty_ohm).value();
    return std::ranges::find(pairs, std::pair{LoopState::closed, LoopState::alarm}) != pairs.end();
}

/// A network without tolerances but those written.
measure::Network network(const std::string& text) { return measure::readNetwork(text, 0).value(); }

double nominal_ohm(const measure::Network& of, measure::Parts acted = 0)
{
    measure::Circumstances at;
    at.acted = acted;
    return measure::spanOf(of, at).nominal_ohm;
}

measure::Parts bit(const measure::Network& of, const char* name) { return measure::partBit(of.find(name).value()); }

} // namespace

class LoopReference : public QObject {
    Q_OBJECT

private slots:
    // loop-01 has its cable measured, ours may lie anywhere from nothing to that: the upper ends agree, the lower
    // one is the resistor's.
    void endOfLineResistorAlone()
    {
        const Vector v("loop-01");
        const double cable = measure::pairResistance_ohm(
                                 measure::ConductorRun{measure::conductorByName("AWG 24").value(), v.in("L"), 20})
                                 .value();
        QVERIFY(v.agrees("cable", cable));
        const auto window =
            measure::loopWindow(
                {.resistors = 1, .eol_ohm = v.in("reol"), .tolerance_pct = 100 * v.in("tol"), .cable_ohm_max = cable},
                LoopState::closed)
                .value();
        QVERIFY(v.agrees("hi", *window.upper_ohm));
        QVERIFY(v.agrees("lo", *window.lower_ohm + cable));
        // As a network its cable is as long as it is measured.
        const auto measured =
            network(fmt::format("cable={0}..{0} + eol={1} {2}%", cable, v.in("reol"), 100 * v.in("tol")));
        QVERIFY(v.agrees("nominal", nominal_ohm(measured)));
        QVERIFY(v.agrees("lo", *measure::windowOf(measured, {}).lower_ohm));
        QVERIFY(v.agrees("hi", *measure::windowOf(measured, {}).upper_ohm));
        QVERIFY(v.isServed());
    }
    void twoResistors()
    {
        const Vector v("loop-02");
        const measure::LoopWiring wiring{.resistors = 2,
                                         .eol_ohm = v.in("r1"),
                                         .alarm_ohm = v.in("r2"),
                                         .tolerance_pct = 100 * v.in("tol"),
                                         .cable_ohm_max = v.in("cmax")};
        const auto closed = measure::loopWindow(wiring, LoopState::closed).value();
        const auto alarm = measure::loopWindow(wiring, LoopState::alarm).value();
        QVERIFY(v.agrees("normal_lo", *closed.lower_ohm));
        QVERIFY(v.agrees("normal_hi", *closed.upper_ohm));
        QVERIFY(v.agrees("alarm_lo", *alarm.lower_ohm));
        QVERIFY(v.agrees("alarm_hi", *alarm.upper_ohm));
        QVERIFY(measure::statesNotToldApart(wiring, 0).value().empty());
        // Alarm lies furthest from its neighbours by loop-02's gap: a meter of half that blurs normal and alarm.
        QVERIFY(!blurs(wiring, v.out("gap") / 2 - 0.001));
        QVERIFY(blurs(wiring, v.out("gap") / 2 + 0.001));
        QVERIFY(v.agrees("gap", measure::gapBetween_ohm(closed, alarm)));
        QVERIFY(v.agrees("threshold_mid", measure::thresholdBetween_ohm(closed, alarm).value()));
        const auto as = network(fmt::format("cable={} + (alarm:nc | zone={} {}%) + eol={} {}%", v.in("cmax"),
                                            v.in("r2"), 100 * v.in("tol"), v.in("r1"), 100 * v.in("tol")));
        const measure::NetworkState acted{.acted = bit(as, "alarm")};
        QVERIFY(v.agrees("normal_lo", *measure::windowOf(as, {}).lower_ohm));
        QVERIFY(v.agrees("normal_hi", *measure::windowOf(as, {}).upper_ohm));
        QVERIFY(v.agrees("alarm_lo", *measure::windowOf(as, acted).lower_ohm));
        QVERIFY(v.agrees("alarm_hi", *measure::windowOf(as, acted).upper_ohm));
        // Half of what the window holds beside the cable.
        const auto likely = measure::windowOf(as, acted, measure::Spread::rootSumSquares);
        QVERIFY(v.agrees("alarm_rss", (*likely.upper_ohm - *likely.lower_ohm - v.in("cmax")) / 2));
        QVERIFY(v.isServed());
    }
    void statesThatCannotBeToldApart()
    {
        const Vector v("loop-03");
        measure::LoopWiring wiring{
            .resistors = 2, .eol_ohm = v.in("r1"), .alarm_ohm = v.in("r2"), .tolerance_pct = 100 * v.in("tol")};
        QVERIFY(v.agrees("normal_hi", *measure::loopWindow(wiring, LoopState::closed).value().upper_ohm));
        QVERIFY(v.agrees("alarm_lo", *measure::loopWindow(wiring, LoopState::alarm).value().lower_ohm));
        QVERIFY(v.agrees("gap", measure::gapBetween_ohm(measure::loopWindow(wiring, LoopState::closed).value(),
                                                        measure::loopWindow(wiring, LoopState::alarm).value())));
        QVERIFY(v.agrees("largest_tol_with_gap", measure::greatestTolerance_pct(v.in("r1"), v.in("r2")).value() / 100));
        QVERIFY(v.isServed());
        const std::vector pair{std::pair{LoopState::closed, LoopState::alarm}};
        QVERIFY(measure::statesNotToldApart(wiring, 0).value() == pair);
        wiring.tolerance_pct = 100 * v.out("largest_tol_with_gap") * 1.000001;
        QVERIFY(measure::statesNotToldApart(wiring, 0).value() == pair);
        wiring.tolerance_pct = 100 * v.out("largest_tol_with_gap") * 0.999999;
        QVERIFY(measure::statesNotToldApart(wiring, 0).value().empty());
    }
    void fireStyle()
    {
        const Vector v("loop-10");
        const measure::LoopWiring wiring{.resistors = 2,
                                         .fireStyle = true,
                                         .restClosed = false,
                                         .eol_ohm = v.in("reol"),
                                         .alarm_ohm = v.in("ra"),
                                         .cable_ohm_max = v.in("c")};
        QVERIFY(v.agrees("normal", *measure::loopWindow(wiring, LoopState::closed).value().upper_ohm));
        QVERIFY(v.agrees("alarm", *measure::loopWindow(wiring, LoopState::alarm).value().upper_ohm));
        QVERIFY(v.agrees("short", *measure::loopWindow(wiring, LoopState::shorted).value().upper_ohm));
        QVERIFY(v.agrees("alarm", *measure::loopWindow(wiring, LoopState::alarm).value().lower_ohm + v.in("c")));
        const auto as =
            network(fmt::format("cable={0}..{0} + (call:no + ra={1} | eol={2})", v.in("c"), v.in("ra"), v.in("reol")));
        QVERIFY(v.agrees("normal", nominal_ohm(as)));
        QVERIFY(v.agrees("alarm", nominal_ohm(as, bit(as, "call"))));
        QVERIFY(v.isServed());
    }
    void leakage()
    {
        const Vector v("loop-04");
        const double found = measure::withLeakage_ohm(v.in("r"), v.in("leak")).value();
        QVERIFY(v.agrees("measured", found));
        QVERIFY(v.agrees("deviation_percent", 100 * (found / v.in("r") - 1)));
        QVERIFY(v.agrees("leak_from_measured", measure::leakage_ohm(v.in("r"), found).value()));
        QVERIFY(v.isServed());
    }
    void hiddenLeakage()
    {
        const Vector v("loop-05");
        QVERIFY(v.agrees("leak_min", measure::leastHiddenLeakage_ohm(v.in("r"), 100 * v.in("w")).value()));
        QVERIFY(v.isServed());
    }
    void distanceToAShort()
    {
        const Vector v("loop-06");
        measure::ShortSeen seen{.found_ohm = v.in("rm"), .leads_ohm = v.in("rl"), .ohm_per_km = v.in("r")};
        QVERIFY(v.agrees("metres", measure::distanceToShort_m(seen).value()));
        seen.cable_c = 35;
        QVERIFY(v.agrees("metres_at_35C", measure::distanceToShort_m(seen).value()));
        QVERIFY(v.isServed());
    }
    void twoDetectorsInAlarm()
    {
        const Vector v("loop-07");
        const auto as = network(fmt::format("cable={0}..{0} + (a:nc | ra={1}) + (b:nc | rb={1}) + eol={2}", v.in("c"),
                                            v.in("r2"), v.in("r1")));
        QVERIFY(v.agrees("normal", nominal_ohm(as)));
        QVERIFY(v.agrees("one", nominal_ohm(as, bit(as, "a"))));
        QVERIFY(v.agrees("one", nominal_ohm(as, bit(as, "b"))));
        QVERIFY(v.agrees("two", nominal_ohm(as, bit(as, "a") | bit(as, "b"))));
        QVERIFY(v.isServed());
    }
    void atThePanelsTerminals()
    {
        const Vector v("loop-08");
        const measure::Divider divider{v.in("vs"), v.in("rp")};
        QVERIFY(v.agrees("v_loop", measure::terminal_v(divider, v.in("rl")).value()));
        QVERIFY(v.agrees("r_from_v", measure::loopFromVoltage_ohm(divider, v.in("vm")).value()));
        QVERIFY(v.agrees("ohm_per_volt_at_vm", measure::ohmsPerVolt(divider, v.in("vm")).value()));
        QVERIFY(v.isServed());
    }
    void earth()
    {
        const Vector v("loop-09");
        const auto found = measure::earthLeakage({v.in("v"), v.in("v1"), v.in("v2"), v.in("rm")}).value();
        QVERIFY(v.agrees("r_plus", found.plus_ohm));
        QVERIFY(v.agrees("r_minus", found.minus_ohm));
        QVERIFY(v.isServed());
    }
    void rings()
    {
        const Vector v("loop-11");
        const std::vector<std::string> rings{"yellow", "violet", "black", "brown", "brown"}; // the vector's own words
        const auto coded = measure::readRings(rings).value();
        const double ohm = base::toDouble(coded.ohm), tolerance = base::toDouble(coded.tolerance_pct) / 100;
        QVERIFY(v.agrees("ohm", ohm));
        QVERIFY(v.agrees("lo", ohm * (1 - tolerance)));
        QVERIFY(v.agrees("hi", ohm * (1 + tolerance)));
        QVERIFY(v.isServed());
    }
    void resistorInTheCold()
    {
        const Vector v("loop-12");
        const auto window =
            measure::resistorWindow(v.in("r"), 100 * v.in("tol"), 1e6 * v.in("tcr"), v.in("dt")).value();
        QVERIFY(v.agrees("lo", window.least_ohm));
        QVERIFY(v.agrees("hi", window.most_ohm));
        QVERIFY(v.agrees("half_width", window.most_ohm - v.in("r")));
        QVERIFY(v.isServed());
    }
};

QTEST_GUILESS_MAIN(LoopReference)
#include "loop.moc"
