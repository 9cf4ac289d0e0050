// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/doorpicture.h"

#include <algorithm>

namespace proofwalk::parts {
namespace {

using report::Drawing;

// On a grid 34 wide and 31 high; the floor is at 28, below it the open leaf's foot.
constexpr double gridWidth = 34;
constexpr double gridHeight = 31;
constexpr double floorAt = 28;

void drawKnob(Drawing& drawing, double x, const QColor& colour) { drawing.fill(QRectF(x, 14, 2, 3.4), colour); }

QPainterPath polygon(const QPolygonF& points)
{
    QPainterPath path;
    path.addPolygon(points);
    path.closeSubpath();
    return path;
}

void drawHere(Drawing& drawing)
{
    const report::Palette& inks = drawing.inks();
    drawing.fill(QRectF(12.5, 1.5, 17, floorAt - 1.5), inks.here);
    if (inks.hereEdge != inks.here) drawing.frame(QRectF(14.5, 3.5, 13, floorAt - 4.5), inks.hereEdge, 2);
    QPainterPath frame(QPointF(12, floorAt));
    frame.lineTo(12, 1.5);
    frame.lineTo(30, 1.5);
    frame.lineTo(30, floorAt);
    drawing.stroke(frame, inks.ink, 3);
    const QPainterPath leaf = polygon({{11.2, 1.2}, {2, 4.4}, {2, 30.2}, {11.2, floorAt}});
    drawing.fill(leaf, inks.paper);
    drawing.stroke(leaf, inks.ink, 1.7);
    drawKnob(drawing, 4.6, inks.ink);
}

void drawBeen(Drawing& drawing)
{
    const report::Palette& inks = drawing.inks();
    drawing.fill(QRectF(8, 2.5, 18.5, floorAt - 2.5), inks.ink);
    drawing.fill(polygon({{10.3, 4.8}, {17.6, 7}, {17.6, floorAt + 0.2}, {10.3, floorAt - 1.6}}), inks.paper);
    drawKnob(drawing, 14.6, inks.ink);
}

void drawAhead(Drawing& drawing)
{
    const report::Palette& inks = drawing.inks();
    QPainterPath frame(QPointF(9, floorAt));
    frame.lineTo(9, 3.4);
    frame.lineTo(25.5, 3.4);
    frame.lineTo(25.5, floorAt);
    drawing.stroke(frame, inks.ink2, 1.9);
    drawKnob(drawing, 20.5, inks.ink2);
}

} // namespace

DoorPicture::DoorPicture(QQuickItem* parent) : Drawn({gridWidth, gridHeight}, parent) {}

void DoorPicture::setWay(int way)
{
    if (take(m_way, way)) Q_EMIT wayChanged();
}

void DoorPicture::draw(Drawing& drawing)
{
    const double scale = std::min(width() / gridWidth, height() / gridHeight);
    drawing.painter().translate((width() - scale * gridWidth) / 2, height() - scale * gridHeight);
    drawing.painter().scale(scale, scale);
    switch (m_way) {
    case Here: drawHere(drawing); break;
    case Been: drawBeen(drawing); break;
    case Ahead: drawAhead(drawing); break;
    default: break;
    }
}

} // namespace proofwalk::parts
