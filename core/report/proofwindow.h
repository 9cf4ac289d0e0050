// SPDX-License-Identifier: GPL-3.0-or-later
// A proof is a window in the wall: lit once it is proved.
#pragma once

#include "core/report/contents.h"
#include "core/report/drawing.h"

namespace proofwalk::report {

/// A proof's window, 17 wide, with its letter; stood on its point if it failed, a dash if it is not promised.
/// `centre` is the window's.
void drawProof(Drawing& drawing, QPointF centre, const Proof& proof, const QString& letter);

/// The window of the key, 20 wide, with the glyph of proof 0 to 3: input, response, output, received.
void drawProofKey(Drawing& drawing, QPointF centre, std::size_t proof, bool byItsLike = false);

/// The window of the screen, 20 wide, with the glyph of proof 0 to 3. Lit: filled. Under way: an outline, its
/// foot filled
/// as far as `progress` (0 to 1) says. Promised: an outline. Not promised: a dash. Failed: filled, with the corners of
/// the fail mark standing out on its four sides, so that grey tells it from lit. A second outline, ear or person as
/// for verdicts.
void drawProofWindow(Drawing& drawing, QPointF centre, std::size_t proof, const Proof& state, double progress);

} // namespace proofwalk::report
