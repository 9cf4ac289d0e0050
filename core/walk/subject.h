// SPDX-License-Identifier: GPL-3.0-or-later
// Commands name things as people do: a device by its tag, a zone by its number, a timer by its name and area.
#pragma once

#include "core/walk/line.h"
#include "core/walk/state.h"

namespace proofwalk::walk {

/// The id behind "device", "zone", "area", or "timer" with "area". Exactly one of them must be given.
/// Errors: command.subject-missing; walk.device-unknown, walk.zone-unknown, walk.area-unknown, walk.timer-unknown
/// {found, nearest}.
Result<std::string> subjectOf(const Scope& scope, Line& line);

/// The step behind a subject, "step" and, where several signals have one of that name, "signal". A device's card shows
/// its zone's steps too, so a device with a zone's step is that zone's.
/// Errors besides: walk.no-sheet {kind}; walk.step-unknown {found, nearest}; walk.step-ambiguous {found, wanted}.
Result<StepKey> stepOf(const Scope& scope, Line& line);

} // namespace proofwalk::walk
