// SPDX-License-Identifier: GPL-3.0-or-later
// How a zone's loop is wired, as the plan tells it, in the terms of core/measure/loop.h.
#pragma once

#include "core/measure/conductor.h"
#include "core/measure/loop.h"
#include "core/plan/plan.h"

#include <optional>
#include <span>

namespace proofwalk::walk {

/// The wiring with its cable at 20 °C; nothing if the zone is no loop, or a column that is needed is empty.
/// Errors: those of conductorByName and pairResistance_ohm.
Result<std::optional<measure::LoopWiring>> loopWiring(const plan::Zone& zone,
                                                      std::span<const measure::Conductor> conductors);

} // namespace proofwalk::walk
