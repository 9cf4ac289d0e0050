// SPDX-License-Identifier: GPL-3.0-or-later
// What a recording of a sounder holds: its pattern, whether its times are right, its tone. A pattern is named with
// confidence only if cycle after cycle says so; levels are relative: a phone's microphone is no sound level meter.
#pragma once

#include "core/measure/pattern.h"
#include "core/measure/tone.h"

namespace proofwalk::measure {

/// Why a recording says less than one would like.
enum class HearingDoubt {
    tooShort,    ///< not long enough for two cycles
    fewCycles,   ///< two cycles or fewer stood whole
    unlike,      ///< part of what is heard does not belong to the pattern
    weak,        ///< little louder than what sounds besides it
    outOfStep,   ///< two sounders of one pattern, begun at different times
    echo,        ///< the room sounds on so long that how long a pulse lasts cannot be told
    clipped,     ///< the recording is overdriven
};
/// "too-short", "few-cycles", "unlike", "weak", "out-of-step", "echo", "clipped".
std::string_view wordOf(HearingDoubt doubt);

struct Hearing {
    Pattern pattern = Pattern::undecided; ///< undecided: what speaks for a pattern is too weak to name it
    bool confident = false;
    std::vector<HearingDoubt> doubts;
    double length_s = 0;
    double contrast_db = 0; ///< of the sound over the rest at its frequencies, relative
    PatternSight sight;     ///< cycles, times and intervals, if pulses were heard
    PatternTimes usual;     ///< median pulse, gap and pause, the echo taken off; empty lists where none
    double decay_s = 0;     ///< median share of the echo in a pulse
    std::optional<PatternDurations> durations; ///< of temporal-three and -four
    Tone tone;
};

/// Listens. Errors: those of checkRecording.
Result<Hearing> listenTo(const Recording& recording);

} // namespace proofwalk::measure
