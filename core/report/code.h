// SPDX-License-Identifier: GPL-3.0-or-later
// The square code (ISO/IEC 18004, made by libqrencode) and the ink of a signature.
#pragma once

#include "core/report/contents.h"
#include "core/report/drawing.h"

namespace proofwalk::report {

/// Draws the code of `text` as filled squares, error correction M. The caller leaves four squares of quiet around it.
/// Error: report.code-too-long {found (bytes)}.
Result<void> drawCode(Drawing& drawing, const QRectF& box, const std::string& text);

/// Draws the strokes as large as the box allows, in proportion. A stroke of one point is a dot.
void drawInk(Drawing& drawing, const QRectF& box, const Ink& strokes);

} // namespace proofwalk::report
