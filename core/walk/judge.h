// SPDX-License-Identifier: GPL-3.0-or-later
// The verdict of one attempt by itself (EVENTS.md, "Verdict of an attempt").
#pragma once

#include "core/walk/state.h"

namespace proofwalk::walk {

/// Fills verdict, counts and outsideAdvice from the answer and the step. Pure: neither clock nor other attempts matter.
void judgeAttempt(Attempt& attempt, const ScopeStep& step);

} // namespace proofwalk::walk
