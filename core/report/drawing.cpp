// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/drawing.h"

#include <algorithm>

namespace proofwalk::report {

QPen penOf(const QColor& colour, double width)
{
    return {QBrush(colour), width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin};
}

void Drawing::text(double x, double y, const QString& text, const Style& style)
{
    if (text.isEmpty()) {
        return;
    }
    m_painter.save();
    m_painter.translate(x, y);
    m_painter.scale(1 / typeFactor, 1 / typeFactor);
    m_painter.setFont(fontOf(style));
    m_painter.setPen(style.colour);
    m_painter.drawText(QPointF(0, 0), text);
    m_painter.restore();
}

void Drawing::textRight(double x, double y, const QString& text, const Style& style)
{
    this->text(x - widthOf(text, style), y, text, style);
}

void Drawing::textCentre(double x, double y, const QString& text, const Style& style)
{
    this->text(x - widthOf(text, style) / 2, y, text, style);
}

double Drawing::lines(double x, double y, const QStringList& lines, const Style& style, double leading)
{
    for (const QString& line : lines) {
        text(x, y, line, style);
        y += leading;
    }
    return y;
}

void Drawing::line(double x1, double y1, double x2, double y2, const QColor& colour, double width)
{
    m_painter.setPen(penOf(colour, width));
    m_painter.drawLine(QPointF(x1, y1), QPointF(x2, y2));
}

void Drawing::rule(double y, double left, double right, const QColor& colour, double width)
{
    line(left, y, right, y, colour, width);
}

void Drawing::fill(const QRectF& box, const QColor& colour) { m_painter.fillRect(box, colour); }

void Drawing::frame(const QRectF& box, const QColor& colour, double width)
{
    m_painter.setPen(penOf(colour, width));
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawRect(box);
}

void Drawing::fill(const QPainterPath& path, const QColor& colour) { m_painter.fillPath(path, colour); }

void Drawing::stroke(const QPainterPath& path, const QColor& colour, double width)
{
    m_painter.strokePath(path, penOf(colour, width));
}

void Drawing::hatch(const QRectF& box, const QColor& colour, double apart, double width)
{
    m_painter.setPen(penOf(colour, width));
    const double w = box.width();
    const double h = box.height();
    QVector<QLineF> strokes;
    for (double along = apart / 2; along < w + h; along += apart) {
        strokes << QLineF(box.left() + std::max(0.0, along - h), box.top() + std::min(along, h),
                          box.left() + std::min(along, w), box.top() + std::max(0.0, along - w));
    }
    m_painter.drawLines(strokes);
}

} // namespace proofwalk::report
