// SPDX-License-Identifier: GPL-3.0-or-later
// Which pattern a row of soundings makes, judged by the times between their beginnings, which an echo does not move;
// how long pulses and pauses last is judged apart.
//   [1] ISO 8201: temporal-three, on 0.5 s three times with 0.5 s between, then off 1.5 s; 10 % on each (as quoted on a
//       public page: the appendix of a Canadian building code).
//   [2] NFPA 720 and NFPA 72: temporal-four, on 0.1 s four times with 0.1 s between, then off 5 s; 10 % from memory.
//   Its
//       pause may be counted from the last pulse or from the gap after it: 5.0 and 5.1 s are both right.
//   Recognised within 20 % of the times between beginnings, held to within 10 %; two whole cycles at least: common
//   practice.
#pragma once

#include "core/base/result.h"

#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace proofwalk::measure {

/// What a recording or a row of soundings holds. Pulsed: on and off in a rhythm that is neither of the two.
enum class Pattern { temporalThree, temporalFour, steady, pulsed, none, undecided };

/// "temporal-three", "temporal-four", "steady", "pulsed", "none", "undecided".
std::string_view wordOf(Pattern pattern);

/// One stretch in which the sound is on, in seconds from the beginning.
struct Sounding {
    double from_s = 0;
    double to_s = 0;
};

/// The times of one pattern, in seconds.
struct PatternShape {
    int pulses = 0; ///< in a cycle
    double step_s = 0; ///< from one pulse's beginning to the next one's
    double rest_s = 0; ///< from the last pulse's beginning to the next cycle's
    double restMost_s = 0; ///< the same, counted the longer way
    double pulse_s = 0; ///< how long a pulse is on
    double pause_s = 0; ///< how long it is off after the last
    double cycle_s() const { return (pulses - 1) * step_s + rest_s; }
};

/// The shape of temporal-three or temporal-four, after [1] and [2].
PatternShape shapeOf(Pattern pattern);

/// What is wrong with a pattern that was recognised.
enum class PatternFault { pulse, gap, pause, missingPulse, extraPulse };

/// "pulse", "gap", "pause", "missing-pulse", "extra-pulse".
std::string_view wordOf(PatternFault fault);

/// How long the parts of whole cycles last, in seconds.
struct PatternTimes {
    std::vector<double> pulses_s;
    std::vector<double> gaps_s;
    std::vector<double> pauses_s;
};

struct PatternSight {
    Pattern pattern = Pattern::none;
    std::vector<double> onsetIntervals_s; ///< from each beginning to the next
    std::optional<double> period_s; ///< of the cycle, or of any rhythm that repeats
    int cyclesSeen = 0; ///< whole or not; one cut off by an end of the row is not counted
    int cyclesWhole = 0;
    double explained = 0; ///< share of the soundings that belong to the pattern, 0 to 1
    PatternTimes times; ///< as given, no echo taken off
    bool missingPulse = false;
    bool extraPulse = false;
};

/// The pattern of soundings in order of time. One sounding of 6.5 s or more and no other is steady (longer than any
/// cycle: our choice); a rhythm that repeats is pulsed; anything else is none.
/// Errors: measure.out-of-range {input from_s or to_s} if they are not finite, not in order, overlap, or lie outside
/// 0 s to a day; none at all is Pattern::none.
Result<PatternSight> sightOfPattern(std::span<const Sounding> soundings);

struct PatternDurations {
    std::optional<bool> conform; ///< nothing: within the uncertainty of a limit
    std::vector<PatternFault> faults; ///< the parts that are wrong beyond the uncertainty
};

/// Whether the times are right: pulses less the decay, gaps and pauses with it added, each within 10 %.
/// decay_s: how much longer each pulse seems by the echo; uncertainty_s: of one time, 0 for exact ones.
/// Errors: measure.out-of-range for a pattern without prescribed times, no times, decay_s or uncertainty_s below zero.
Result<PatternDurations> judgeDurations(Pattern pattern, const PatternTimes& times, double decay_s,
                                        double uncertainty_s);

} // namespace proofwalk::measure
