// SPDX-License-Identifier: GPL-3.0-or-later
// When a sound begins and ends, from its level. A beginning is a rise and an end is a fall, each against what came just
// before, not the crossing of one line: in a room that echoes for seconds the level never comes down to such a line.
#pragma once

#include "core/measure/level.h"

namespace proofwalk::measure {

/// One time the sound was on.
struct Pulse {
    double from_s = 0;
    double to_s = 0; ///< when the level has fallen by half, the echo's share not taken off
    double decay_s = 0; ///< the echo's share of to_s, from how slowly the level falls
    double level_db = 0; ///< over the floor
};

/// The pulses of a level, none shorter and no gap between them shorter than 30 ms (common practice).
/// turn_db: by how much a rise or a fall must exceed the waves of the level, at most 0.4 of its contrast.
/// None if the level rises less than 5 dB: then nothing goes on and off.
std::vector<Pulse> pulsesOf(const Level& level, double turn_db);

} // namespace proofwalk::measure
