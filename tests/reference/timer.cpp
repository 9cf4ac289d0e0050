// SPDX-License-Identifier: GPL-3.0-or-later
// Sources: American Journal of Physics 87 (2019) 110, abstract; JCGM 100:2008, JCGM 106:2012; each beside its vector in
// measure-vectors.json. Tolerance: that of the vector.
#include "core/measure/conformity.h"
#include "core/measure/guard.h"
#include "core/measure/timing.h"
#include "core/measure/uncertainty.h"
#include "tests/reference/vectors.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::reference::Vector;

class TimerReference : public QObject {
    Q_OBJECT

private slots:
    void startAndStopByHand()
    {
        const Vector printed("timer-01-pub");
        const Vector v("timer-01");
        const auto timing = timedByHand({.shown_s = 30, .reaction = {0.11, v.in("s")}}).value();
        QVERIFY(printed.agrees("u_diff", timing.standard_s));
        QVERIFY(v.agrees("u_diff", timing.standard_s));
        QVERIFY(v.agrees("U", timing.expanded_s));
        QVERIFY(printed.isServed() && v.isServed());
        // The hand that is taken when nothing is said is that of the source.
        QCOMPARE(Reaction().spread_s, v.in("s"));
    }
    void entryAgainstItsLimit()
    {
        const Vector v("timer-02");
        const auto timing = timedByHand({.shown_s = v.in("y"),
                                         .reaction = {0.11, v.in("s")},
                                         .display_s = v.in("res"),
                                         .clock_ppm = v.in("ppm") * 1e6})
                                .value();
        QVERIFY(v.agrees("u", timing.standard_s));
        const auto limits = acceptanceLimits(timing.expanded_s, {}, v.in("lim")).value();
        QVERIFY(v.agrees("pass_below", limits.passTo.value()));
        QVERIFY(v.agrees("fail_above", limits.failAbove.value()));
        QVERIFY(v.agrees("p_conform",
                         conformanceProbability(timing.duration_s, timing.standard_s, {}, v.in("lim")).value()));
        QVERIFY(v.isServed());
        QVERIFY(judgeComputed(timing.duration_s, timing.expanded_s, {}, v.in("lim")).value() == Conformity::undecided);
    }
    void oneHandAtTheStop()
    {
        const Vector v("timer-03");
        const auto timing =
            timedByHand({.shown_s = v.in("y"), .ends = HandEnds::stop, .reaction = {v.in("b"), v.in("s")}}).value();
        QVERIFY(v.agrees("corrected", timing.duration_s));
        QVERIFY(v.agrees("u", timing.standard_s));
        QVERIFY(v.agrees("U", timing.expanded_s));
        QVERIFY(v.isServed());
        QCOMPARE(Reaction().late_s, v.in("b"));
    }
    void threeTimings()
    {
        const Vector v("timer-04");
        const auto all = repeated(std::vector<double>{v.in("a"), v.in("b"), v.in("c")}).value();
        QVERIFY(v.agrees("mean", all.mean));
        QVERIFY(v.agrees("s", all.deviation));
        QVERIFY(v.agrees("u_typeA", all.ofMean));
        QVERIFY(v.agrees("u_model", handMeanUncertainty_s(3, HandEnds::both).value()));
        QVERIFY(v.isServed());
    }
    void cutOffAgainstItsLimit()
    {
        const Vector v("timer-05");
        const auto timing =
            timedByHand({.shown_s = v.in("y"), .reaction = {0.11, v.in("s")}, .clock_ppm = v.in("ppm") * 1e6}).value();
        QVERIFY(v.agrees("u", timing.standard_s));
        QVERIFY(v.agrees("pass_below", acceptanceLimits(timing.expanded_s, {}, v.in("lim")).value().passTo.value()));
        QVERIFY(v.agrees("p_conform",
                         conformanceProbability(timing.duration_s, timing.standard_s, {}, v.in("lim")).value()));
        QVERIFY(v.isServed());
    }
    void fromARecording()
    {
        const Vector v("timer-06");
        const SignalTiming heard{
            .shown_s = 20, .start = {v.in("fr"), 0}, .stop = {v.in("fr"), v.in("d")}, .soundSpeed_m_per_s = v.in("c")};
        const auto timing = timedBySignals(heard).value();
        QVERIFY(v.agrees("u_frames", timing.standard_s));
        QVERIFY(v.agrees("travel", 20 - timing.duration_s));
        QVERIFY(v.isServed());
        QCOMPARE(SignalTiming().soundSpeed_m_per_s, v.in("c"));
    }
};

QTEST_GUILESS_MAIN(TimerReference)
#include "timer.moc"
