// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/marks.h"

namespace proofwalk::report {

QPainterPath diamond(QPointF centre, double half)
{
    QPainterPath path(centre + QPointF(0, -half));
    path.lineTo(centre + QPointF(half, 0));
    path.lineTo(centre + QPointF(0, half));
    path.lineTo(centre + QPointF(-half, 0));
    path.closeSubpath();
    return path;
}

namespace {

QPainterPath disc(QPointF centre, double r)
{
    QPainterPath path;
    path.addEllipse(centre, r, r);
    return path;
}

void drawPass(Drawing& drawing, QPointF c, double r)
{
    drawing.fill(disc(c, r), drawing.inks().passInk);
    QPainterPath tick(c + QPointF(-0.50 * r, 0.02 * r));
    tick.lineTo(c + QPointF(-0.13 * r, 0.39 * r));
    tick.lineTo(c + QPointF(0.53 * r, -0.33 * r));
    drawing.stroke(tick, drawing.inks().glyph, 0.25 * r);
}

void drawFail(Drawing& drawing, QPointF c, double r)
{
    drawing.fill(diamond(c, 1.2 * r), drawing.inks().failInk);
    const double arm = 0.33 * r;
    drawing.line(c.x() - arm, c.y() - arm, c.x() + arm, c.y() + arm, drawing.inks().glyph, 0.25 * r);
    drawing.line(c.x() - arm, c.y() + arm, c.x() + arm, c.y() - arm, drawing.inks().glyph, 0.25 * r);
}

void drawTooClose(Drawing& drawing, QPointF c, double r)
{
    drawing.fill(disc(c, r), drawing.inks().paper);
    QPainter& painter = drawing.painter();
    painter.save();
    painter.setClipPath(disc(c, r), Qt::IntersectClip);
    drawing.fill(QRectF(c.x() - r, c.y() - r, r, 2 * r), drawing.inks().closeFill);
    drawing.hatch(QRectF(c.x(), c.y() - r, r, 2 * r), drawing.inks().closeInk, 0.55 * r, 0.13 * r);
    painter.restore();
    drawing.stroke(disc(c, 0.93 * r), drawing.inks().closeInk, 0.15 * r);
    drawing.line(c.x(), c.y() - 1.3 * r, c.x(), c.y() + 1.3 * r, drawing.inks().closeInk, 0.27 * r);
}

void drawNoAccess(Drawing& drawing, QPointF c, double r)
{
    const QRectF bricked(c.x() - 0.85 * r, c.y() - 0.7 * r, 1.7 * r, 1.4 * r);
    drawing.fill(bricked, drawing.inks().paper);
    drawing.hatch(bricked, drawing.inks().accessInk, 0.5 * r, 0.12 * r);
    drawing.frame(bricked, drawing.inks().accessInk, 0.12 * r);
    for (const double x : {bricked.left(), bricked.right()}) {
        drawing.line(x, c.y() - 1.05 * r, x, c.y() + 1.05 * r, drawing.inks().accessInk, 0.26 * r);
    }
}

void drawRunning(Drawing& drawing, QPointF c, double r)
{
    for (const double y : {-0.95 * r, 0.95 * r}) {
        drawing.line(c.x() - 1.1 * r, c.y() + y, c.x() + 1.1 * r, c.y() + y, drawing.inks().runInk, 0.22 * r);
    }
    QPainterPath shoulders;
    shoulders.addEllipse(c + QPointF(-0.1 * r, 0), 0.3 * r, 0.62 * r);
    drawing.stroke(shoulders, drawing.inks().runInk, 0.16 * r);
    drawing.fill(disc(c, 0.32 * r), drawing.inks().runInk);
    QPainterPath forearms(c + QPointF(0.05 * r, -0.5 * r));
    forearms.lineTo(c + QPointF(0.6 * r, -0.28 * r));
    forearms.lineTo(c + QPointF(0.6 * r, 0.28 * r));
    forearms.lineTo(c + QPointF(0.05 * r, 0.5 * r));
    drawing.stroke(forearms, drawing.inks().runInk, 0.16 * r);
}

void drawRetest(Drawing& drawing, QPointF c, double r)
{
    const double radius = 0.82 * r;
    const QRectF box(c.x() - radius, c.y() - radius, 2 * radius, 2 * radius);
    QPainterPath ring;
    ring.arcMoveTo(box, 60);
    ring.arcTo(box, 60, -310);
    drawing.stroke(ring, drawing.inks().runInk, 0.22 * r);
    QPainterPath head(c + QPointF(-0.42 * r, -1.18 * r));
    head.lineTo(c + QPointF(0.2 * r, -0.72 * r));
    head.lineTo(c + QPointF(-0.5 * r, -0.28 * r));
    head.closeSubpath();
    drawing.fill(head, drawing.inks().runInk);
}

/// The second outline of a mark that stands for others: its own shape.
void drawAround(Drawing& drawing, QPointF c, double r, Verdict verdict)
{
    const QColor colour = inkOf(verdict, drawing.inks());
    switch (verdict) {
    case Verdict::fail: drawing.stroke(diamond(c, 1.25 * r), colour, 0.18 * r); break;
    case Verdict::noAccess:
    case Verdict::running: drawing.frame(QRectF(c.x() - r, c.y() - r, 2 * r, 2 * r), colour, 0.18 * r); break;
    case Verdict::notApplicable: break;
    case Verdict::pass:
    case Verdict::tooClose:
    case Verdict::toDo:
    case Verdict::retest: drawing.stroke(disc(c, r), colour, 0.18 * r); break;
    }
}

} // namespace

QColor inkOf(Verdict verdict, const Palette& inks)
{
    switch (verdict) {
    case Verdict::pass: return inks.passInk;
    case Verdict::fail: return inks.failInk;
    case Verdict::tooClose: return inks.closeInk;
    case Verdict::noAccess: return inks.accessInk;
    case Verdict::running:
    case Verdict::retest: return inks.runInk;
    case Verdict::toDo:
    case Verdict::notApplicable: return inks.ink2;
    }
    return inks.ink2;
}

QColor tintOf(Verdict verdict, const Palette& inks)
{
    switch (verdict) {
    case Verdict::pass: return inks.done;
    case Verdict::fail: return inks.failTint;
    case Verdict::tooClose: return inks.closeTint;
    case Verdict::noAccess:
    case Verdict::retest: return inks.accessTint;
    case Verdict::running:
    case Verdict::toDo:
    case Verdict::notApplicable: return inks.paper;
    }
    return inks.paper;
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
        drawing.fill(disc(centre, 0.9 * r), drawing.inks().paper);
        drawing.stroke(disc(centre, 0.82 * r), drawing.inks().ink2, 0.2 * r);
        break;
    case Verdict::notApplicable:
        drawing.line(centre.x() - 0.6 * r, centre.y(), centre.x() + 0.6 * r, centre.y(), drawing.inks().ink2, 0.26 * r);
        break;
    }
}

void drawVerdict(Drawing& drawing, QPointF centre, double r, Verdict verdict, ProofSeen seen)
{
    if (seen == ProofSeen::inBulk || seen == ProofSeen::byItsLike) {
        drawAround(drawing, centre, r, verdict);
        drawVerdict(drawing, centre, 0.7 * r, verdict);
        return;
    }
    drawVerdict(drawing, centre, r, verdict);
    const QPointF beside = centre + QPointF(1.05 * r, -1.15 * r);
    if (seen == ProofSeen::byTheEar) {
        drawEar(drawing, beside, 1.5 * r);
    } else if (seen == ProofSeen::byPartner) {
        drawPartner(drawing, beside, 1.5 * r);
    }
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
    drawing.stroke(outer, drawing.inks().ink, 0.13);
    QPainterPath inner(QPointF(0.24, 0.4));
    inner.cubicTo(QPointF(0.26, 0.26), QPointF(0.46, 0.28), QPointF(0.42, 0.42));
    drawing.stroke(inner, drawing.inks().ink, 0.1);
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
    drawing.fill(person, drawing.inks().ink);
}

void drawPlate(Drawing& drawing, QPointF topLeft, const QString& figure)
{
    const QRectF box(topLeft.x(), topLeft.y(), 22, 22);
    drawing.frame(box.adjusted(0.9, 0.9, -0.9, -0.9), drawing.inks().ink, 1.8);
    drawing.textCentre(box.center().x(), box.center().y() + 5.2, figure, {Face::figure, 13, drawing.inks().ink});
}

} // namespace proofwalk::report
