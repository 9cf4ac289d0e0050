// SPDX-License-Identifier: GPL-3.0-or-later
// Words that cannot be read: cut, run out of their place, one over another, too small.
#pragma once

#include "tests/qml/rig/finding.h"

#include <QQuickWindow>

namespace proofwalk::rig {

/// Nothing under this is shown (the design's own limit, tokens of type).
constexpr double leastType_px = 13;

/// Rules: truncated (cut or elided by the item), overflow (wider or higher than its own item), clipped (an ancestor or
/// the window cuts it; what can be scrolled into sight may be), overlap (two texts over each other), small-type,
/// half-covered (something drawn later lies over a part of it). What lies behind a sheet is passed over.
Findings legible(const QQuickWindow& window);

} // namespace proofwalk::rig
