// SPDX-License-Identifier: GPL-3.0-or-later
// A reading on its scale: a limit is a wall, what is allowed is the doorway in it.
#pragma once

#include "core/report/contents.h"
#include "core/report/drawing.h"

namespace proofwalk::report {

/// Which stretch of numbers a scale shows: the doorway with some wall beside it, and the value with its whisker.
struct Span {
    double low = 0;
    double high = 1; ///< above low
};

/// The stretch for a scale that has a limit or a value. Every limit, the value and its whisker lie inside.
Span spanOf(const Scale& scale);

/// Draws it into the box, 18 to 20 high. A scale that holds neither limit nor finite value draws nothing.
void drawScale(Drawing& drawing, const QRectF& box, const Scale& scale);

/// Counted trials: the doorway opens once all have succeeded.
void drawTrials(Drawing& drawing, const QRectF& box, const Trials& trials);

} // namespace proofwalk::report
