// SPDX-License-Identifier: GPL-3.0-or-later
// The marks: a verdict's shape, the ear. They speak wall, doorway and corridor, and can be told
// apart without colour.
#pragma once

#include "core/report/contents.h"
#include "core/report/drawing.h"

namespace proofwalk::report {

/// The ink of a verdict's mark.
QColor inkOf(Verdict verdict, const Palette& inks = {});

/// The pale fill of a row or room with that verdict; paper for those that have none.
QColor tintOf(Verdict verdict, const Palette& inks = {});

/// A square stood on its point, `half` from its centre to each corner.
QPainterPath diamond(QPointF centre, double half);

/// pass disc and tick, fail diamond and cross, too close a disc cut by a jamb, no access a doorway walled up, running a
/// head in a corridor, to do an open ring, n/a a dash, retest a ring with a head. `r` is the disc's radius.
void drawVerdict(Drawing& drawing, QPointF centre, double r, Verdict verdict);

/// The same with how it was seen: smaller within a second outline of its own shape where another stood for it, a small
/// ear or person at its right, 1.5 r high.
void drawVerdict(Drawing& drawing, QPointF centre, double r, Verdict verdict, ProofSeen seen);

/// A small ear, a second person: in a box of that height.
void drawEar(Drawing& drawing, QPointF topLeft, double height);
void drawPartner(Drawing& drawing, QPointF topLeft, double height);

/// A paper plate with an ink edge and a figure in it, 22 wide.
void drawPlate(Drawing& drawing, QPointF topLeft, const QString& figure);

} // namespace proofwalk::report
