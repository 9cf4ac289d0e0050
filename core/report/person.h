// SPDX-License-Identifier: GPL-3.0-or-later
// You, seen from above, and your footprints ahead. Never a disc with an arrow: head, shoulders, and the sheet held in
// front, which points the way.
#pragma once

#include "core/report/drawing.h"

namespace proofwalk::report {

/// The person, `shoulders` wide from shoulder to shoulder, facing `heading_deg`: 0 to the right, 90 downwards.
void drawPerson(Drawing& drawing, QPointF centre, double shoulders, double heading_deg, const QColor& colour);

/// How far prints lie apart along the way, in lengths of one.
inline constexpr double printPitch = 1.65;

/// Footprints in pairs, left and right of the way from one point to the other, each `length` long. Never a half print.
void drawFootprints(Drawing& drawing, QPointF from, QPointF to, double length, const QColor& colour);

} // namespace proofwalk::report
