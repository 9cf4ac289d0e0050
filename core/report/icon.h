// SPDX-License-Identifier: GPL-3.0-or-later
// A device's own drawing, from icons/KIND.svg.
#pragma once

#include "core/report/drawing.h"

#include <string>

namespace proofwalk::report {

/// Whether the kind has a drawing of its own; one without gets `unknown`.
bool hasIcon(const std::string& kind);

/// Draws it `side` wide in that colour, which is written into the SVG's text (no shader, no second file).
void drawIcon(Drawing& drawing, QPointF topLeft, double side, const std::string& kind, const QColor& colour = ink);

} // namespace proofwalk::report
