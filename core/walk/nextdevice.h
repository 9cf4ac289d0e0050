// SPDX-License-Identifier: GPL-3.0-or-later
// Which device to go to next.
#pragma once

#include "core/walk/state.h"

#include <string>

namespace proofwalk::walk {

/// The next in walking order after the device of that tag (from the first if the tag is empty or unknown), going round,
/// that has a stage which can be done now and is not answered; a device to retest counts. nullptr if there is none.
const ScopeDevice* nextDevice(const State& state, const std::string& afterTag);

} // namespace proofwalk::walk
