// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/inkpad.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QMouseEvent>
#include <QQmlInfo>

#include <algorithm>

namespace proofwalk::parts {
namespace {

constexpr double shape = 2.5;  ///< width by height
constexpr int thousand = 1000;
constexpr int leastMove = 4;   ///< thousandths: nearer points are the same place

/// Nothing if it is no list of strokes of points within the field.
std::optional<std::vector<std::vector<QPoint>>> strokesOf(const QString& ink)
{
    const QJsonDocument document = QJsonDocument::fromJson(ink.toUtf8());
    if (!document.isArray()) return {};
    const auto whole = [](const QJsonValue& value) {
        const int number = value.toInt(-1);
        return number >= 0 && number <= thousand ? std::optional(number) : std::nullopt;
    };
    std::vector<std::vector<QPoint>> strokes;
    for (const auto& stroke : document.array()) {
        std::vector<QPoint> points;
        for (const auto& point : stroke.toArray()) {
            const QJsonArray pair = point.toArray();
            const auto x = whole(pair.at(0));
            const auto y = whole(pair.at(1));
            if (pair.size() != 2 || !x || !y) return {};
            points.emplace_back(*x, *y);
        }
        if (points.empty()) return {};
        strokes.push_back(std::move(points));
    }
    return strokes;
}

} // namespace

InkPad::InkPad(QQuickItem* parent) : Drawn({320, 128}, parent)
{
    setAcceptedMouseButtons(Qt::LeftButton);
    // A page that scrolls must not take the pen away in the middle of a name.
    setKeepMouseGrab(true);
    setKeepTouchGrab(true);
}

QString InkPad::ink() const
{
    QJsonArray strokes;
    for (const Stroke& stroke : m_strokes) {
        QJsonArray points;
        for (const QPoint& point : stroke) points.append(QJsonArray{point.x(), point.y()});
        strokes.append(points);
    }
    return QString::fromUtf8(QJsonDocument(strokes).toJson(QJsonDocument::Compact));
}

void InkPad::setInk(const QString& ink)
{
    if (ink == this->ink()) return;
    auto strokes = ink.isEmpty() ? std::optional(std::vector<Stroke>{}) : strokesOf(ink);
    if (!strokes) {
        qmlWarning(this) << "ink is no list of strokes in thousandths";
        return;
    }
    m_strokes = std::move(*strokes);
    m_down = false;
    update();
    Q_EMIT inkChanged();
}

void InkPad::clear()
{
    m_down = false;
    if (m_strokes.empty()) return;
    m_strokes.clear();
    update();
    Q_EMIT inkChanged();
}

QRectF InkPad::field() const
{
    const double wide = std::min(width(), height() * shape);
    const double high = wide / shape;
    return {(width() - wide) / 2, (height() - high) / 2, wide, high};
}

void InkPad::lay(QPointF place)
{
    const QRectF box = field();
    const QPoint point(qRound((place.x() - box.left()) / box.width() * thousand),
                       qRound((place.y() - box.top()) / box.height() * thousand));
    if (point.x() < 0 || point.x() > thousand || point.y() < 0 || point.y() > thousand) {
        m_off = true;
        return;
    }
    // Back from beyond the edge: a new stroke, not a line along the edge.
    if (!m_down || m_off) {
        m_strokes.emplace_back();
    } else if ((m_strokes.back().back() - point).manhattanLength() < leastMove) {
        return;
    }
    m_down = true;
    m_off = false;
    m_strokes.back().push_back(point);
    update();
}

void InkPad::lift()
{
    if (m_down) Q_EMIT inkChanged();
    m_down = false;
    m_off = false;
}

void InkPad::mousePressEvent(QMouseEvent* event)
{
    lay(event->position());
    event->setAccepted(m_down);
}

void InkPad::mouseMoveEvent(QMouseEvent* event) { lay(event->position()); }

void InkPad::mouseReleaseEvent(QMouseEvent* event)
{
    lay(event->position());
    lift();
}

void InkPad::mouseUngrabEvent() { lift(); }

void InkPad::draw(report::Drawing& drawing)
{
    const report::Palette& inks = drawing.inks();
    const QRectF box = field();
    QPen line = report::penOf(inks.ink2, 1);
    line.setDashPattern({4, 4});
    drawing.painter().setPen(line);
    const double y = std::round(box.top() + 0.75 * box.height()) + 0.5;
    drawing.painter().drawLine(QPointF(box.left() + 0.06 * box.width(), y),
                               QPointF(box.right() - 0.06 * box.width(), y));
    const double width = std::max(1.5, box.height() / 50);
    for (const Stroke& stroke : m_strokes) {
        QPolygonF points;
        for (const QPoint& point : stroke)
            points << QPointF(box.left() + point.x() * box.width() / thousand,
                              box.top() + point.y() * box.height() / thousand);
        drawing.painter().setPen(QPen(inks.ink, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        if (points.size() == 1) drawing.painter().drawPoint(points.first());
        else drawing.painter().drawPolyline(points);
    }
}

} // namespace proofwalk::parts
