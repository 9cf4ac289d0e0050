// SPDX-License-Identifier: GPL-3.0-or-later
// What a device promises, by the plan alone (EVENTS.md, "Scope").
#pragma once

#include "core/walk/scope.h"

namespace proofwalk::walk {

/// Fills `promised` of a device whose zone, kind and signalZones are set.
void fillPromises(ScopeDevice& device, const plan::Plan& plan);

/// Whether the step belongs on the device's card: it serves no proof, or one that the device (for input: that signal)
/// promises.
bool isPromised(const ScopeDevice& device, const catalogue::Step& step);

} // namespace proofwalk::walk
