// SPDX-License-Identifier: GPL-3.0-or-later
// What is temporary and still stands: accounts on test, things to be put back.
#pragma once

#include "core/walk/state.h"

#include <vector>

namespace proofwalk::walk {

/// The newest standing on-test of each account that no standing off-test has seen, by account.
/// Pointers into the state; good until the next apply().
std::vector<const Told<OnTestBody>*> accountsOnTest(const State& state);

/// What was done for the time of the work and is not yet put back, oldest first.
std::vector<const Told<TemporaryBody>*> notPutBack(const State& state);

/// The standing put-back of something temporary; nullptr while there is none.
const Told<PutBackBody>* putBackOf(const State& state, const Told<TemporaryBody>& temporary);

} // namespace proofwalk::walk
