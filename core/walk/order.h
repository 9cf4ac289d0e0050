// SPDX-License-Identifier: GPL-3.0-or-later
// In which order to walk. For now the order of the plan, floor by floor as its floors are listed, room by room as the
// rooms are first met.
#pragma once

#include "core/walk/state.h"

#include <vector>

namespace proofwalk::walk {

/// Indices into scope.devices.
std::vector<std::size_t> walkingOrder(const Scope& scope);

} // namespace proofwalk::walk
