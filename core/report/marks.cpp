// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/marks.h"

namespace proofwalk::report {

namespace {

QPainterPath diamond(QPointF centre, double half)
{
    QPainterPath path(centre + QPointF(0, -half));
    path.lineTo(centre + QPointF(half, 0));
    path.lineTo(centre + QPointF(0, half));
    path.lineTo(centre + QPointF(-half, 0));
    path.closeSubpath();
    return path;
}

QPainterPath disc(QPointF centre, double r)
{
    QPainterPath path;
    path.addEllipse(centre, r, r);
    return path;
}

void drawPass(Drawing& drawing, QPointF c, double r)
{
    drawing.fill(disc(c, r), passInk);
    QPainterPath tick(c + QPointF(-0.50 * r, 0.02 * r));
    tick.lineTo(c + QPointF(-0.13 * r, 0.39 * r));
    tick.lineTo(c + QPointF(0.53 * r, -0.33 * r));
    drawing.stroke(tick, paper, 0.25 * r);
}

void drawFail(Drawing& drawing, QPointF c, double r)
{
    drawing.fill(diamond(c, 1.2 * r), failInk);
    const double arm = 0.33 * r;
    drawing.line(c.x() - arm, c.y() - arm, c.x() + arm, c.y() + arm, paper, 0.25 * r);
    drawing.line(c.x() - arm, c.y() + arm, c.x() + arm, c.y() - arm, paper, 0.25 * r);
}

void drawTooClose(Drawing& drawing, QPointF c, double r)
{
    drawing.fill(disc(c, r), paper);
    QPainter& painter = drawing.painter();
    painter.save();
    painter.setClipPath(disc(c, r), Qt::IntersectClip);
    drawing.fill(QRectF(c.x() - r, c.y() - r, r, 2 * r), closeFill);
    drawing.hatch(QRectF(c.x(), c.y() - r, r, 2 * r), closeInk, 0.55 * r, 0.13 * r);
    painter.restore();
    drawing.stroke(disc(c, 0.93 * r), closeInk, 0.15 * r);
    drawing.line(c.x(), c.y() - 1.3 * r, c.x(), c.y() + 1.3 * r, closeInk, 0.27 * r);
}

void drawNoAccess(Drawing& drawing, QPointF c, double r)
{
    const QRectF bricked(c.x() - 0.85 * r, c.y() - 0.7 * r, 1.7 * r, 1.4 * r);
    drawing.fill(bricked, paper);
    drawing.hatch(bricked, accessInk, 0.5 * r, 0.12 * r);
    drawing.frame(bricked, accessInk, 0.12 * r);
    for (const double x : {bricked.left(), bricked.right()}) {
        drawing.line(x, c.y() - 1.05 * r, x, c.y() + 1.05 * r, accessInk, 0.26 * r);
    }
}

void drawRunning(Drawing& drawing, QPointF c, double r)
{
    for (const double y : {-0.95 * r, 0.95 * r}) {
        drawing.line(c.x() - 1.1 * r, c.y() + y, c.x() + 1.1 * r, c.y() + y, runInk, 0.22 * r);
    }
    QPainterPath shoulders;
    shoulders.addEllipse(c + QPointF(-0.1 * r, 0), 0.3 * r, 0.62 * r);
    drawing.stroke(shoulders, runInk, 0.16 * r);
    drawing.fill(disc(c, 0.32 * r), runInk);
    QPainterPath forearms(c + QPointF(0.05 * r, -0.5 * r));
    forearms.lineTo(c + QPointF(0.6 * r, -0.28 * r));
    forearms.lineTo(c + QPointF(0.6 * r, 0.28 * r));
    forearms.lineTo(c + QPointF(0.05 * r, 0.5 * r));
    drawing.stroke(forearms, runInk, 0.16 * r);
}

void drawRetest(Drawing& drawing, QPointF c, double r)
{
    const double radius = 0.82 * r;
    const QRectF box(c.x() - radius, c.y() - radius, 2 * radius, 2 * radius);
    QPainterPath ring;
    ring.arcMoveTo(box, 60);
    ring.arcTo(box, 60, -310);
    drawing.stroke(ring, runInk, 0.22 * r);
    QPainterPath head(c + QPointF(-0.42 * r, -1.18 * r));
    head.lineTo(c + QPointF(0.2 * r, -0.72 * r));
    head.lineTo(c + QPointF(-0.5 * r, -0.28 * r));
    head.closeSubpath();
    drawing.fill(head, runInk);
}

bool isStoodFor(const Proof& proof) { return proof.seen == ProofSeen::inBulk || proof.seen == ProofSeen::byItsLike; }

/// A window of the wall: filled, outlined or with its foot filled; a second outline where another stood for it.
void drawWindow(Drawing& drawing, const QRectF& box, const Proof& proof)
{
    const bool lit = proof.state == ProofState::lit;
    const QColor edge = lit ? passInk : ink;
    drawing.fill(box, paper);
    if (proof.state == ProofState::underWay) {
        drawing.fill(QRectF(box.left(), box.bottom() - 5, box.width(), 5), done);
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

} // namespace

QColor inkOf(Verdict verdict)
{
    switch (verdict) {
    case Verdict::pass: return passInk;
    case Verdict::fail: return failInk;
    case Verdict::tooClose: return closeInk;
    case Verdict::noAccess: return accessInk;
    case Verdict::running:
    case Verdict::retest: return runInk;
    case Verdict::toDo:
    case Verdict::notApplicable: return ink2;
    }
    return ink2;
}

QColor tintOf(Verdict verdict)
{
    switch (verdict) {
    case Verdict::pass: return done;
    case Verdict::fail: return failTint;
    case Verdict::tooClose: return closeTint;
    case Verdict::noAccess:
    case Verdict::retest: return accessTint;
    case Verdict::running:
    case Verdict::toDo:
    case Verdict::notApplicable: return paper;
    }
    return paper;
}

void drawVerdict(Drawing& drawing, QPointF centre, double r, Verdict verdict)
{
    switch (verdict) {
    case Verdict::pass: drawPass(drawing, centre, r); break;
    case Verdict::fail: drawFail(drawing, centre, r); break;
    case Verdict::tooClose: drawTooClose(drawing, centre, r); break;
    case Verdict::noAccess: drawNoAccess(drawing, centre, r); break;
    case Verdict::running: drawRunning(drawing, centre, r); break;
    case Verdict::retest: drawRetest(drawing, centre, r); break;
    case Verdict::toDo:
        drawing.fill(disc(centre, 0.9 * r), paper);
        drawing.stroke(disc(centre, 0.82 * r), ink2, 0.2 * r);
        break;
    case Verdict::notApplicable:
        drawing.line(centre.x() - 0.6 * r, centre.y(), centre.x() + 0.6 * r, centre.y(), ink2, 0.26 * r);
        break;
    }
}

void drawProof(Drawing& drawing, QPointF centre, const Proof& proof, const QString& letter)
{
    if (proof.state == ProofState::notPromised) {
        drawing.line(centre.x() - 4.5, centre.y(), centre.x() + 4.5, centre.y(), ink2, 1.8);
        return;
    }
    const QRectF box(centre.x() - 8.5, centre.y() - 8.5, 17, 17);
    const bool failed = proof.state == ProofState::failed;
    if (failed) {
        // On its point like the verdict: in grey, a square that failed could not be told from one that is lit.
        drawing.fill(diamond(centre, 12.5), failInk);
        if (isStoodFor(proof)) {
            drawing.stroke(diamond(centre, 10.2), paper, 1);
        }
    } else {
        drawWindow(drawing, box, proof);
    }
    const bool filled = failed || proof.state == ProofState::lit || isStoodFor(proof);
    drawing.textCentre(centre.x(), centre.y() + 4.8, letter, {Face::figure, 13, filled ? paper : ink});
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
    drawing.fill(box, passInk);
    if (byItsLike) {
        const QRectF around = box.adjusted(-2.4, -2.4, 2.4, 2.4);
        drawing.frame(around, passInk, 1.2);
    }
    QPainter& painter = drawing.painter();
    painter.save();
    painter.translate(box.left() + 2.5, box.top() + 2.5);
    drawing.stroke(glyphStroke(proof), paper, 1.8);
    drawing.fill(glyphFill(proof), paper);
    painter.restore();
}

void drawEar(Drawing& drawing, QPointF topLeft, double height)
{
    QPainter& painter = drawing.painter();
    painter.save();
    painter.translate(topLeft);
    painter.scale(height, height);
    QPainterPath outer(QPointF(0.04, 0.42));
    outer.cubicTo(QPointF(-0.02, 0.08), QPointF(0.32, 0.02), QPointF(0.48, 0.1));
    outer.cubicTo(QPointF(0.82, 0.26), QPointF(0.66, 0.56), QPointF(0.5, 0.68));
    outer.cubicTo(QPointF(0.38, 0.8), QPointF(0.46, 0.92), QPointF(0.24, 0.96));
    drawing.stroke(outer, ink, 0.13);
    QPainterPath inner(QPointF(0.24, 0.4));
    inner.cubicTo(QPointF(0.26, 0.26), QPointF(0.46, 0.28), QPointF(0.42, 0.42));
    drawing.stroke(inner, ink, 0.1);
    painter.restore();
}

void drawPartner(Drawing& drawing, QPointF topLeft, double height)
{
    QPainterPath person;
    person.addEllipse(topLeft + QPointF(0.36 * height, 0.24 * height), 0.22 * height, 0.22 * height);
    person.moveTo(topLeft + QPointF(0, 0.96 * height));
    person.lineTo(topLeft + QPointF(0.06 * height, 0.62 * height));
    person.lineTo(topLeft + QPointF(0.66 * height, 0.62 * height));
    person.lineTo(topLeft + QPointF(0.72 * height, 0.96 * height));
    person.closeSubpath();
    drawing.fill(person, ink);
}

void drawPlate(Drawing& drawing, QPointF topLeft, const QString& figure)
{
    const QRectF box(topLeft.x(), topLeft.y(), 22, 22);
    drawing.frame(box.adjusted(0.9, 0.9, -0.9, -0.9), ink, 1.8);
    drawing.textCentre(box.center().x(), box.center().y() + 5.2, figure, {Face::figure, 13, ink});
}

} // namespace proofwalk::report
