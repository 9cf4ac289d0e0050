// SPDX-License-Identifier: GPL-3.0-or-later
// Source: Ohm's law on the loop's network; each case beside its vector in measure-vectors.json. Tolerance 1e-9.
#include "core/measure/loop.h"
#include "core/measure/cable.h"
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
    }
    void statesThatCannotBeToldApart()
    {
        const Vector v("loop-03");
        measure::LoopWiring wiring{
            .resistors = 2, .eol_ohm = v.in("r1"), .alarm_ohm = v.in("r2"), .tolerance_pct = 100 * v.in("tol")};
        QVERIFY(v.agrees("normal_hi", *measure::loopWindow(wiring, LoopState::closed).value().upper_ohm));
        QVERIFY(v.agrees("alarm_lo", *measure::loopWindow(wiring, LoopState::alarm).value().lower_ohm));
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
    }
};

QTEST_GUILESS_MAIN(LoopReference)
#include "loop.moc"
