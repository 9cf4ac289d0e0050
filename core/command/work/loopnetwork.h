// SPDX-License-Identifier: GPL-3.0-or-later
// The computations of `proofwalk work loop` over a whole network: its states, and a diagnosis from readings.
#pragma once

#include "core/command/work/topic.h"

#include <vector>

namespace proofwalk::command::work {

/// "states" and "diagnosis".
std::vector<Computation> networkComputations();

} // namespace proofwalk::command::work
