// SPDX-License-Identifier: GPL-3.0-or-later
// What holds of every timing, and what is refused. The worked values stand in tests/reference/timer.cpp.
#include "core/measure/timing.h"

#include "tests/measure/refusal.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::tests::hostile;
using proofwalk::tests::refused;

class TestTiming : public QObject {
    Q_OBJECT

private slots:
    // A late start shortens what is shown, a late stop lengthens it, both together do neither.
    void latenessIsTakenOffTheRightEnd()
    {
        const auto duration = [](HandEnds ends) {
            return timedByHand({.shown_s = 30, .ends = ends}).value().duration_s;
        };
        QCOMPARE(duration(HandEnds::none), 30.0);
        QCOMPARE(duration(HandEnds::both), 30.0);
        QVERIFY(std::fabs(duration(HandEnds::stop) - 29.89) < 1e-12);
        QVERIFY(std::fabs(duration(HandEnds::start) - 30.11) < 1e-12);
    }
    void everyPartAddsUncertainty()
    {
        const auto u = [](const HandTiming& timing) { return timedByHand(timing).value().standard_s; };
        QCOMPARE(u({.shown_s = 30, .ends = HandEnds::none}), 0.0);
        QVERIFY(u({.shown_s = 30}) > u({.shown_s = 30, .ends = HandEnds::stop}));
        QVERIFY(u({.shown_s = 30, .display_s = 1}) > u({.shown_s = 30}));
        QVERIFY(u({.shown_s = 3000, .clock_ppm = 50}) > u({.shown_s = 30, .clock_ppm = 50}));
        QCOMPARE(timedByHand({.shown_s = 30}).value().expanded_s, 2 * u({.shown_s = 30}));
        // A clock alone: 3600 s at 50 ppm is 0.18 s, over sqrt 3 0.10392 s.
        QVERIFY(std::fabs(u({.shown_s = 3600, .ends = HandEnds::none, .clock_ppm = 50}) - 0.103923) < 1e-6);
    }
    // Two stamps of whole seconds: 1 / sqrt 12 each, 0.408 s together.
    void stampsOfWholeSeconds()
    {
        const SignalTiming timing{.shown_s = 30, .start = {1, 0}, .stop = {1, 0}};
        QVERIFY(std::fabs(timedBySignals(timing).value().standard_s - 0.408248) < 1e-6);
        QCOMPARE(timedBySignals(timing).value().duration_s, 30.0);
    }
    // The same way at both ends cancels; a longer one at the stop came late, at the start early.
    void theWayOfTheSound()
    {
        const auto at = [](double start_m, double stop_m) {
            return timedBySignals({.shown_s = 10, .start = {0, start_m}, .stop = {0, stop_m}}).value().duration_s;
        };
        QCOMPARE(at(20, 20), 10.0);
        QVERIFY(std::fabs(at(0, 343.2) - 9) < 1e-12);
        QVERIFY(std::fabs(at(343.2, 0) - 11) < 1e-12);
    }
    void moreTimingsNarrowTheMean()
    {
        const double one = handMeanUncertainty_s(1, HandEnds::both).value();
        QVERIFY(std::fabs(handMeanUncertainty_s(4, HandEnds::both).value() - one / 2) < 1e-12);
        QCOMPARE(handMeanUncertainty_s(4, HandEnds::none).value(), 0.0);
    }
    void hostileNumbers()
    {
        for (const double bad : hostile({.negative = true, .huge = true})) {
            QCOMPARE(refused(timedByHand({.shown_s = bad})), std::string("measure.out-of-range shown_s"));
            QCOMPARE(refused(timedByHand({.shown_s = 1, .reaction = {0.11, bad}})),
                     std::string("measure.out-of-range reaction_spread_s"));
            QCOMPARE(refused(timedByHand({.shown_s = 1, .display_s = bad})),
                     std::string("measure.out-of-range display_s"));
            QCOMPARE(refused(timedByHand({.shown_s = 1, .clock_ppm = bad})),
                     std::string("measure.out-of-range clock_ppm"));
            QCOMPARE(refused(timedBySignals({.shown_s = bad})), std::string("measure.out-of-range shown_s"));
            QCOMPARE(refused(timedBySignals({.shown_s = 1, .start = {bad, 0}})),
                     std::string("measure.out-of-range resolution_s"));
            QCOMPARE(refused(timedBySignals({.shown_s = 1, .stop = {0, bad}})),
                     std::string("measure.out-of-range distance_m"));
            QCOMPARE(refused(timedBySignals({.shown_s = 1, .soundSpeed_m_per_s = bad})),
                     std::string("measure.out-of-range sound_m_per_s"));
            QCOMPARE(refused(timedBySignals({.shown_s = 1, .clocksApart_s = bad})),
                     std::string("measure.out-of-range clocks_apart_s"));
        }
        QCOMPARE(refused(handMeanUncertainty_s(0, HandEnds::both)), std::string("measure.out-of-range timings"));
    }
};

QTEST_GUILESS_MAIN(TestTiming)
#include "timing.moc"
