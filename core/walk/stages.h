// SPDX-License-Identifier: GPL-3.0-or-later
// A device's steps as they are done on site: what belongs to one movement of the hand is one stage, answered at once.
#pragma once

#include "core/walk/stepview.h"

#include <vector>

namespace proofwalk::walk {

/// Steps that are done and seen together, one after the other, with nothing between: never more than three, of one
/// signal, none of them a figure, none of life safety beside another, and a caution only before the first.
struct Stage {
    std::vector<StepKey> steps;
    bool possible = false; ///< the steps mean something in the present state of the areas
    bool answered = false; ///< every one of them has a standing answer and is not to retest
};

/// The device's core steps, first those that can be done in the present state, then those of its zone; each lot in the
/// sheet's order; extended ones only where `extended` asks
/// for them or they were answered.
std::vector<Stage> stagesOf(const State& state, const ScopeDevice& device, bool extended);

/// The first stage that can be done now and is not answered; the first unanswered one if none can; stages.size() if all
/// are answered.
std::size_t stageInHand(const std::vector<Stage>& stages);

} // namespace proofwalk::walk
