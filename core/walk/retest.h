// SPDX-License-Identifier: GPL-3.0-or-later
// What a repair puts in doubt, and must therefore be tested again.
#pragma once

#include "core/walk/state.h"

#include <string>
#include <vector>

namespace proofwalk::walk {

/// The words for what a repair may touch: device, cable, terminals, supply, radio-path, program, structure.
std::vector<std::string> touchableWords();

/// The steps to retest, each once, in plan order: the findings' own; for device, structure and radio-path every
/// answered core step of the devices concerned; for cable and terminals also the loop's steps and the input of every
/// device on the zone; for supply and program every answered core step that proves something on those zones.
/// Project choice, on the wide side: a repair that touched more than it seemed is what a retest is for.
std::vector<StepKey> stepsToRetest(const State& state, const std::vector<StepKey>& findings,
                                   const std::vector<std::string>& touched);

} // namespace proofwalk::walk
