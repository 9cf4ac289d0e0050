// SPDX-License-Identifier: GPL-3.0-or-later
// How long it really was, and how surely: a stopwatch in the hand, or two signals heard or logged.
//   [1] American Journal of Physics 87 (2019) 110, abstract: 4304 stopwatch times of trained timekeepers; reaction to
//       one expected event 0.11 s late, spread 0.07 s; start and stop of one kind: no bias, spread 0.10 s.
//   [2] JCGM 100:2008: a display step d gives d / sqrt 12, a clock error of at most e gives t e / sqrt 3.
#pragma once

#include "core/base/result.h"

namespace proofwalk::measure {

/// Which of the two moments a person caught; the other was caught by the program or the panel.
enum class HandEnds { none, start, stop, both };

/// A hand's habit, of one expected event, from [1]. An untrained hand is taken as twice as uncertain (common practice);
/// whoever taps ten times or more to a beat has figures of their own, by repeated() of the lateness.
struct Reaction {
    double late_s = 0.11;
    double spread_s = 0.07;
};

struct HandTiming {
    double shown_s = 0; ///< as the stopwatch shows it, zero to 1e6
    HandEnds ends = HandEnds::both;
    Reaction reaction{};
    double display_s = 0; ///< its last place; 0 leaves it out
    double clock_ppm = 0; ///< its clock's greatest error, parts in a million; 50 covers a phone (common practice)
};

struct Timing {
    double duration_s = 0;
    double standard_s = 0; ///< u
    double expanded_s = 0; ///< U = 2 u
};

/// u = sqrt(n spread^2 + d^2 / 12 + (t e / sqrt 3)^2), n the moments caught by hand, after [1] and [2]. A hand at both
/// ends is late at both: nothing is corrected. At the stop alone the time shown is too long by its lateness, at the
/// start alone too short.
/// Holds for events that are expected; one that surprises costs 0.15 to 0.3 s more (common knowledge, no figure of
/// [1]).
/// Errors: measure.out-of-range {input, found, wanted}: anything below zero or not finite; a spread above 10 s.
Result<Timing> timedByHand(const HandTiming& timing);

/// One moment caught without a hand.
struct SignalEnd {
    double resolution_s = 0; ///< the step in which it is known: a frame of the recording, a second of a panel's stamp
    double distance_m = 0; ///< from the sounder to the ear, if it was heard; 0 if it came by wire
};

struct SignalTiming {
    double shown_s = 0;
    SignalEnd start{};
    SignalEnd stop{};
    double clock_ppm = 0;
    double clocksApart_s = 0; ///< standard uncertainty of the difference of two clocks; 0 if it is one
    double soundSpeed_m_per_s = 343.2; ///< at 20 °C in air
};

/// The time less the way of the sound, t - (d_stop - d_start) / c; u = sqrt(sum d_i^2 / 12 + (t e / sqrt 3)^2 +
/// clocks^2), after [2]. What a panel or a network takes to stamp and deliver is not in it.
/// Errors: measure.out-of-range {input, found, wanted}; sound from 300 to 360 m/s, ways to 1000 m.
Result<Timing> timedBySignals(const SignalTiming& timing);

/// The standard uncertainty of the mean of n timings by the same hand, from its spread: spread sqrt(ends) / sqrt n,
/// after
/// [1] and [2]. To be held against s / sqrt n of the timings themselves; where that is larger, it is what counts.
/// Errors: measure.out-of-range: n from 1 to 100000.
Result<double> handMeanUncertainty_s(int timings, HandEnds ends, const Reaction& reaction = {});

} // namespace proofwalk::measure
