// SPDX-License-Identifier: GPL-3.0-or-later
// Where one step stands (EVENTS.md, "Verdict of a step").
#pragma once

#include "core/walk/state.h"

#include <vector>

namespace proofwalk::walk {

struct StepView {
    Verdict verdict = Verdict::toDo;
    std::vector<const Attempt*> deciding; ///< standing attempts that none of the others has seen
    const Attempt* newest = nullptr; ///< of the deciding ones that have the verdict, by stamp: its reading is shown
    bool disagreement = false;            ///< they differ, and nobody has answered having seen both
    const Told<RepairBody>* retestFor = nullptr; ///< the repair that put it in doubt

    bool answered() const { return !deciding.empty(); }
};

/// Pointers into the state; good until the next apply().
StepView viewStep(const State& state, const StepKey& key);

/// Every attempt at the step that stands and counts, oldest first.
std::vector<const Attempt*> standingAttempts(const State& state, const StepKey& key);

} // namespace proofwalk::walk
