// SPDX-License-Identifier: GPL-3.0-or-later
// What one reading of a supervised loop can be, physically: which of its states it fits, and if none, between which
// it stands. Advice to whoever looks for the cause; never a verdict.
#pragma once

#include "core/measure/loop.h"

namespace proofwalk::measure {

struct LoopSight {
    std::vector<LoopState> fits; ///< every state whose window holds the reading; empty: none
    std::optional<LoopState> below; ///< the state whose window ends nearest beneath it
    std::optional<LoopState> above; ///< the state whose window begins nearest over it
    double fromClosed_ohm = 0; ///< how far outside the window at rest: above 0 too high, below 0 too low, 0 inside
};

/// The reading in ohms against all four windows. Errors: those of loopWindow; measure.out-of-range for a reading
/// that is below zero or not finite.
Result<LoopSight> sightOf(const LoopWiring& wiring, double reading_ohm);

} // namespace proofwalk::measure
