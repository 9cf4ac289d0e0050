// SPDX-License-Identifier: GPL-3.0-or-later
// Two sounders of one pattern that did not begin together. The ear then hears neither: their pulses fill each other's
// pauses. Their sum still repeats with the pattern's cycle, and folded over it, shows both.
#pragma once

#include "core/measure/level.h"

#include <optional>

namespace proofwalk::measure {

/// How a level folded over one cycle is made up.
struct Folded {
    double period_s = 0;
    double offset_s = 0;  ///< between the two, 0 to half a cycle
    double one = 0;       ///< correlation with one sounder's cycle, -1 to 1
    double two = 0;       ///< with two sounders that far apart
    double march = 0;     ///< with an even beat of four to temporal-three's cycle; 0 for temporal-four
    double block = 0;     ///< with one pulse a cycle, however long
    double repeats = 0;   ///< share of the level's variance that repeats with the cycle
};

/// Folds the level over the cycle of temporal-three or -four (within 10 %) that repeats best.
/// Nothing if the recording holds fewer than two cycles, or nothing rises.
std::optional<Folded> foldedOver(const Level& level, Pattern pattern);

} // namespace proofwalk::measure
