// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a cold thumb meets what it aims at.
#pragma once

#include "tests/qml/rig/finding.h"

#include <QQuickWindow>

namespace proofwalk::rig {

/// In units, each way (the design's own limits; WCAG 2.2, 2.5.5 asks for 44, from memory).
constexpr double leastTarget = 48, leastVerdict = 64;

/// Rules: small-target (a control less than 48 wide or high, a VerdictButton less than 64 high), targets-overlap (two
/// controls share ground, unless one stands in the other), out-of-reach (a control the window or an ancestor cuts to
/// less than half, and nothing scrolls).
Findings targets(const QQuickWindow& window);

} // namespace proofwalk::rig
