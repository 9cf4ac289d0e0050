// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/person.h"

#include <cmath>

namespace proofwalk::report {

namespace {

// On a grid where the shoulders are 30 wide and the person faces right.
QPainterPath coat()
{
    QPainterPath path(QPointF(-6, -15));
    path.quadTo(-1.5, -15.5, 1, -14);
    path.lineTo(14, -9);
    path.lineTo(14, 9);
    path.lineTo(1, 14);
    path.quadTo(-1.5, 15.5, -6, 15);
    path.quadTo(-11, 12, -11, 0);
    path.quadTo(-11, -12, -6, -15);
    path.closeSubpath();
    return path;
}

/// One print, pointing right, of length 1: sole and heel.
QPainterPath print()
{
    QPainterPath path;
    path.addRoundedRect(QRectF(-0.12, -0.22, 0.62, 0.44), 0.22, 0.22);
    path.addRoundedRect(QRectF(-0.5, -0.16, 0.28, 0.32), 0.14, 0.16);
    return path;
}

} // namespace

void drawPerson(Drawing& drawing, QPointF centre, double shoulders, double heading_deg, const QColor& colour)
{
    const QColor& pale = drawing.inks().personEdge;
    QPainter& painter = drawing.painter();
    painter.save();
    painter.translate(centre);
    painter.rotate(heading_deg);
    painter.scale(shoulders / 30, shoulders / 30);
    drawing.stroke(coat(), pale, 5);
    drawing.fill(coat(), colour);
    // Between the forearms one looks down past the chest; the sheet lies across the hands.
    QPainterPath chest(QPointF(-2, -8.6));
    chest.quadTo(5, -8, 8.6, -5.4);
    chest.lineTo(8.6, 5.4);
    chest.quadTo(5, 8, -2, 8.6);
    chest.closeSubpath();
    drawing.fill(chest, pale);
    drawing.fill(QRectF(8.6, -5.6, 3.4, 11.2), pale);
    QPainterPath head;
    head.addEllipse(QPointF(-2.4, 0), 8.4, 8.4);
    drawing.fill(head, pale);
    QPainterPath crown;
    crown.addEllipse(QPointF(-2.4, 0), 6.7, 6.7);
    drawing.fill(crown, colour);
    drawing.line(7.6, -5.8, 7.6, 5.8, colour, 1.5);
    painter.restore();
}

void drawFootprints(Drawing& drawing, QPointF from, QPointF to, double length, const QColor& colour)
{
    const QPointF along = to - from;
    const double way = std::hypot(along.x(), along.y());
    if (length <= 0 || way < length) {
        return;
    }
    const auto steps = static_cast<int>((way - length) / (printPitch * length)) + 1;
    const double first = (way - (steps - 1) * printPitch * length) / 2;
    QPainter& painter = drawing.painter();
    painter.save();
    painter.translate(from);
    painter.rotate(std::atan2(along.y(), along.x()) * 180 / M_PI);
    for (int step = 0; step < steps; ++step) {
        painter.save();
        painter.translate(first + step * printPitch * length, (step % 2 == 0 ? -0.37 : 0.37) * length);
        painter.scale(length, length);
        drawing.fill(print(), colour);
        painter.restore();
    }
    painter.restore();
}

} // namespace proofwalk::report
