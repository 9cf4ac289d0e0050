// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/proofwindow.h"

#include "core/report/marks.h"

#include <algorithm>

namespace proofwalk::report {

namespace {

bool isStoodFor(const Proof& proof) { return proof.seen == ProofSeen::inBulk || proof.seen == ProofSeen::byItsLike; }

/// A window of the wall: filled, outlined or with its foot filled; a second outline where another stood for it.
void drawWindow(Drawing& drawing, const QRectF& box, const Proof& proof)
{
    const bool lit = proof.state == ProofState::lit;
    const QColor edge = lit ? drawing.inks().passInk : drawing.inks().ink;
    drawing.fill(box, drawing.inks().paper);
    if (proof.state == ProofState::underWay) {
        drawing.fill(QRectF(box.left(), box.bottom() - 5, box.width(), 5), drawing.inks().done);
    }
    if (isStoodFor(proof)) {
        drawing.fill(box.adjusted(2.6, 2.6, -2.6, -2.6), edge);
        drawing.frame(box.adjusted(0.6, 0.6, -0.6, -0.6), edge, 1.2);
    } else if (lit) {
        drawing.fill(box, edge);
    } else {
        drawing.frame(box.adjusted(0.75, 0.75, -0.75, -0.75), edge, 1.5);
    }
}

// The glyphs of the four proofs on a grid of 15, as strokes and as filled parts.
QPainterPath glyphStroke(std::size_t proof)
{
    QPainterPath path;
    switch (proof) {
    case 0: // a wire that reaches the panel box
        path.moveTo(3, 7.5);
        path.lineTo(8, 7.5);
        path.addRect(8.7, 2.7, 4, 9.6);
        break;
    case 1: // a house
        path.moveTo(1.8, 13.2);
        path.lineTo(1.8, 6.4);
        path.lineTo(7.5, 1.6);
        path.lineTo(13.2, 6.4);
        path.lineTo(13.2, 13.2);
        path.closeSubpath();
        break;
    case 2: // the panel box, its arm driven up
        path.addRect(1.7, 5.2, 4, 8);
        path.moveTo(6, 11.6);
        path.lineTo(9.4, 11.6);
        path.lineTo(12, 4.5);
        break;
    default: // a wall, and dashes
        path.moveTo(1.8, 1.5);
        path.lineTo(1.8, 13.5);
        path.moveTo(3.6, 8.5);
        path.lineTo(5.6, 8.5);
        break;
    }
    return path;
}

QPainterPath glyphFill(std::size_t proof)
{
    QPainterPath path;
    switch (proof) {
    case 0: path.addEllipse(QPointF(2.8, 7.5), 2.5, 2.5); break;
    case 1: // a bell mouth
        path.moveTo(6.4, 7);
        path.lineTo(8.6, 7);
        path.lineTo(10.8, 11.2);
        path.lineTo(4.2, 11.2);
        path.closeSubpath();
        break;
    case 2: // the contact
        path.addRect(9.4, 1.2, 5, 4.2);
        break;
    default: // a house far off
        path.moveTo(6.8, 13.5);
        path.lineTo(6.8, 8.2);
        path.lineTo(10.6, 4.8);
        path.lineTo(14.4, 8.2);
        path.lineTo(14.4, 13.5);
        path.closeSubpath();
        break;
    }
    return path;
}

void drawGlyph(Drawing& drawing, QPointF topLeft, double side, std::size_t proof, const QColor& colour)
{
    QPainter& painter = drawing.painter();
    painter.save();
    painter.translate(topLeft);
    painter.scale(side / 15, side / 15);
    drawing.stroke(glyphStroke(proof), colour, 1.8);
    drawing.fill(glyphFill(proof), colour);
    painter.restore();
}

/// The screen's window in its box of 20, without its glyph.
void drawPane(Drawing& drawing, const QRectF& box, const Proof& proof, double progress)
{
    const Palette& inks = drawing.inks();
    const bool lit = proof.state == ProofState::lit;
    if (proof.state == ProofState::failed) {
        const QPainterPath star = diamond(box.center(), 10);
        QPainterPath pane;
        pane.addRect(box.adjusted(2.6, 2.6, -2.6, -2.6));
        drawing.fill(star.united(pane), inks.failInk);
        return;
    }
    drawing.fill(box, inks.paper);
    if (isStoodFor(proof)) {
        drawing.frame(box.adjusted(0.5, 0.5, -0.5, -0.5), lit ? inks.passInk : inks.ink, 1);
        drawing.fill(box.adjusted(2.5, 2.5, -2.5, -2.5), lit ? inks.passInk : inks.paper);
    } else if (lit) {
        drawing.fill(box, inks.passInk);
    } else {
        drawing.frame(box.adjusted(0.75, 0.75, -0.75, -0.75), inks.ink, 1.5);
    }
    if (proof.state == ProofState::underWay) {
        const double width = (box.width() - 3) * std::clamp(progress, 0.0, 1.0);
        drawing.fill(QRectF(box.left() + 1.5, box.bottom() - 4.5, width, 3), inks.runInk);
    }
}

} // namespace

void drawProof(Drawing& drawing, QPointF centre, const Proof& proof, const QString& letter)
{
    if (proof.state == ProofState::notPromised) {
        drawing.line(centre.x() - 4.5, centre.y(), centre.x() + 4.5, centre.y(), drawing.inks().ink2, 1.8);
        return;
    }
    const QRectF box(centre.x() - 8.5, centre.y() - 8.5, 17, 17);
    const bool failed = proof.state == ProofState::failed;
    if (failed) {
        // On its point like the verdict: in grey, a square that failed could not be told from one that is lit.
        drawing.fill(diamond(centre, 12.5), drawing.inks().failInk);
        if (isStoodFor(proof)) {
            drawing.stroke(diamond(centre, 10.2), drawing.inks().glyph, 1);
        }
    } else {
        drawWindow(drawing, box, proof);
    }
    const bool filled = failed || proof.state == ProofState::lit || isStoodFor(proof);
    const QColor colour = filled ? drawing.inks().glyph : drawing.inks().ink;
    drawing.textCentre(centre.x(), centre.y() + 4.8, letter, {Face::figure, 13, colour});
    const QPointF beside(box.right() + 1.2, box.top() - 0.5);
    if (proof.seen == ProofSeen::byTheEar) {
        drawEar(drawing, beside, 10.5);
    } else if (proof.seen == ProofSeen::byPartner) {
        drawPartner(drawing, beside, 10.5);
    }
}

void drawProofKey(Drawing& drawing, QPointF centre, std::size_t proof, bool byItsLike)
{
    const QRectF box(centre.x() - 10, centre.y() - 10, 20, 20);
    drawing.fill(box, drawing.inks().passInk);
    if (byItsLike) {
        const QRectF around = box.adjusted(-2.4, -2.4, 2.4, 2.4);
        drawing.frame(around, drawing.inks().passInk, 1.2);
    }
    drawGlyph(drawing, box.topLeft() + QPointF(2.5, 2.5), 15, proof, drawing.inks().glyph);
}

void drawProofWindow(Drawing& drawing, QPointF centre, std::size_t proof, const Proof& state, double progress)
{
    const Palette& inks = drawing.inks();
    if (state.state == ProofState::notPromised) {
        drawing.line(centre.x() - 6, centre.y(), centre.x() + 6, centre.y(), inks.ink2, 2);
        return;
    }
    const QRectF box(centre.x() - 10, centre.y() - 10, 20, 20);
    drawPane(drawing, box, state, progress);
    const bool filled = state.state == ProofState::lit || state.state == ProofState::failed;
    const bool small = state.state == ProofState::failed || isStoodFor(state);
    const double side = small ? 12.5 : state.state == ProofState::underWay ? 13 : 15;
    const double up = state.state == ProofState::underWay ? 1.8 : 0;
    drawGlyph(drawing, centre - QPointF(side / 2, side / 2 + up), side, proof, filled ? inks.glyph : inks.ink);
    const QPointF beside(box.right() + 1.5, box.top());
    if (state.seen == ProofSeen::byTheEar) {
        drawEar(drawing, beside, 13);
    } else if (state.seen == ProofSeen::byPartner) {
        drawPartner(drawing, beside, 13);
    }
}

} // namespace proofwalk::report
