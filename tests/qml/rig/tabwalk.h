// SPDX-License-Identifier: GPL-3.0-or-later
// The page worked by the keyboard alone: what Tab reaches, and whether one sees where one is.
#pragma once

#include "tests/qml/rig/finding.h"

#include <QQuickWindow>

namespace proofwalk::rig {

/// Presses Tab until the walk repeats. Rules: not-reached (a visible, enabled control no Tab leads to), focus-hidden
/// (what has the focus is not to be seen; WCAG 2.2, 2.4.11, from memory), no-focus-mark (a control looks the same with
/// the focus as without; 2.4.7; only with `marks`, which takes two grabs a control), endless (the walk does not end).
Findings tabWalk(QQuickWindow& window, bool marks = false);

} // namespace proofwalk::rig
