// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/stopwatchpicture.h"

#include "core/report/person.h"

#include <QTransform>

#include <algorithm>
#include <array>

namespace proofwalk::parts {
namespace {

constexpr double corridor = 24;
constexpr double reach = 7; ///< of jambs and person beyond the corridor

} // namespace

StopwatchPicture::StopwatchPicture(QQuickItem* parent) : TimedPicture(QSizeF(304, 254), parent) {}

void StopwatchPicture::setPrevious(const QList<double>& previous)
{
    if (take(m_previous, previous)) Q_EMIT previousChanged();
}

void StopwatchPicture::geometryChange(const QRectF& now, const QRectF& before)
{
    TimedPicture::geometryChange(now, before);
    if (now.size() != before.size()) Q_EMIT insideChanged();
}

QRectF StopwatchPicture::middle() const
{
    const double in = reach + corridor / 2;
    return QRectF(0, 0, width(), height()).adjusted(in, in, -in, -in);
}

QRectF StopwatchPicture::inside() const
{
    return middle().adjusted(corridor / 2, corridor / 2, -corridor / 2, -corridor / 2);
}

/// The corners in the order they are passed, with how far they lie along the way.
StopwatchPicture::Stand StopwatchPicture::stand(double part) const
{
    const QRectF m = middle();
    double left = part * 2 * (m.width() + m.height());
    const std::array<std::pair<QPointF, double>, 4> sides{{{m.topLeft(), m.width()},
                                                           {m.topRight(), m.height()},
                                                           {m.bottomRight(), m.width()},
                                                           {m.bottomLeft(), m.height()}}};
    double heading = 0;
    for (const auto& [from, length] : sides) {
        if (left <= length || heading > 260) {
            const QPointF along = QTransform().rotate(heading).map(QPointF(std::min(left, length), 0));
            return {from + along, heading};
        }
        left -= length;
        heading += 90;
    }
    return {m.topLeft(), 0};
}

QPainterPath StopwatchPicture::way(double from, double to) const
{
    const QRectF m = middle();
    const double round = 2 * (m.width() + m.height());
    QPainterPath path(stand(from).point);
    const std::array<double, 3> corners{m.width() / round, 0.5, (m.width() + m.height() + m.width()) / round};
    const std::array<QPointF, 3> points{m.topRight(), m.bottomRight(), m.bottomLeft()};
    for (std::size_t i = 0; i < corners.size(); ++i)
        if (corners[i] > from && corners[i] < to) path.lineTo(points[i]);
    path.lineTo(stand(to).point);
    return path;
}

QPointF StopwatchPicture::at(double seconds) const { return stand(share(seconds).value_or(0)).point; }

void StopwatchPicture::drawJamb(report::Drawing& drawing, double part) const
{
    const Stand here = stand(part);
    const QPointF across = QTransform().rotate(here.heading_deg + 90).map(QPointF(corridor / 2 + 5, 0));
    const QPointF a = here.point - across;
    const QPointF b = here.point + across;
    drawing.line(a.x(), a.y(), b.x(), b.y(), drawing.inks().ink, 6);
}

void StopwatchPicture::drawWalls(report::Drawing& drawing) const
{
    const report::Palette& inks = drawing.inks();
    const double half = corridor / 2;
    const QRectF outer = middle().adjusted(-half, -half, half, half);
    const QRectF inner = inside();
    drawing.fill(outer, inks.film);
    drawing.hatch(QRectF(outer.left(), outer.top(), outer.width(), corridor), inks.hair, 8, 1);
    drawing.hatch(QRectF(outer.left(), inner.bottom(), outer.width(), corridor), inks.hair, 8, 1);
    drawing.hatch(QRectF(outer.left(), inner.top(), corridor, inner.height()), inks.hair, 8, 1);
    drawing.hatch(QRectF(inner.right(), inner.top(), corridor, inner.height()), inks.hair, 8, 1);
    drawing.fill(inner, inks.paper);
    drawing.frame(outer.adjusted(1, 1, -1, -1), inks.ink, 2);
    drawing.frame(inner.adjusted(-1, -1, 1, 1), inks.ink, 2);
    const auto opens = share(lower());
    const auto closes = share(upper());
    if (opens || closes) {
        const QPainterPath doorway = way(opens.value_or(0), closes.value_or(1));
        drawing.stroke(doorway, inks.paper, corridor + 2);
        drawing.stroke(doorway, inks.done, corridor - 4);
    }
}

void StopwatchPicture::drawPrevious(report::Drawing& drawing) const
{
    for (const double seconds : m_previous) {
        const auto part = share(seconds);
        if (!part) continue;
        const Stand there = stand(*part);
        const QPointF across = QTransform().rotate(there.heading_deg + 90).map(QPointF(corridor / 2 - 3, 0));
        QPainterPath bar(there.point - across);
        bar.lineTo(there.point + across);
        QPainterPath dot;
        dot.addEllipse(there.point, 5, 5);
        drawing.stroke(bar, drawing.inks().paper, 5);
        drawing.stroke(dot, drawing.inks().paper, 3);
        drawing.stroke(bar, drawing.inks().ink, 2.5);
        drawing.fill(dot, drawing.inks().ink);
    }
}

void StopwatchPicture::draw(report::Drawing& drawing)
{
    if (inside().width() <= 0 || inside().height() <= 0) return;
    const report::Palette& inks = drawing.inks();
    drawWalls(drawing);
    const auto now = share(elapsed());
    const bool begun = now && elapsed() > 0;
    if (begun) {
        drawing.stroke(way(0, *now), inks.paper, 20);
        drawing.stroke(way(0, *now), inks.runInk, 16);
    }
    drawJamb(drawing, 0);
    if (const auto opens = share(lower())) drawJamb(drawing, *opens);
    if (const auto closes = share(upper())) drawJamb(drawing, *closes);
    drawPrevious(drawing);
    if (begun) {
        const Stand here = stand(*now);
        drawPerson(drawing, here.point, 25, here.heading_deg, inks.runInk);
    }
}

} // namespace proofwalk::parts
