// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/roompicture.h"

#include "core/report/marks.h"
#include "core/report/person.h"

#include "qml/parts/kinds.h"
#include "qml/parts/words.h"

#include <QMouseEvent>

#include <algorithm>
#include <array>

namespace proofwalk::parts {
namespace {

constexpr double wall = 6;
constexpr double targetHalf = 24;
constexpr double apart = 26; ///< two marks nearer than this would lie over each other

/// Places in shares of the room beyond its door; `window` opens the wall there.
struct Chosen {
    const char* word = nullptr;
    QPointF share;
};
constexpr std::array<Chosen, 6> byWord{{{"window.drawn.window", {0.5, 0.0}},
                                        {"window.drawn.door", {-0.22, 0.0}},
                                        {"window.drawn.corner", {1.0, 0.0}},
                                        {"window.drawn.ceiling", {0.55, 0.5}},
                                        {"window.drawn.floor", {0.5, 1.0}},
                                        {"window.drawn.wall", {1.0, 0.5}}}};
/// Else the next free of six, clockwise from the top left; then a row along the middle.
constexpr std::array<QPointF, 11> free6{{{0.1, 0.0},
                                         {0.5, 0.0},
                                         {1.0, 0.0},
                                         {1.0, 1.0},
                                         {0.55, 1.0},
                                         {0.15, 1.0},
                                         {0.3, 0.5},
                                         {0.5, 0.5},
                                         {0.7, 0.5},
                                         {0.85, 0.5},
                                         {0.15, 0.5}}};

const Chosen* chosenBy(const QString& position)
{
    for (const Chosen& each : byWord)
        if (position.contains(phrase(each.word), Qt::CaseInsensitive)) return &each;
    return nullptr;
}

} // namespace

RoomPicture::RoomPicture(QQuickItem* parent) : RowReader(QSizeF(220, 90), parent)
{
    setAcceptedMouseButtons(Qt::LeftButton);
}

void RoomPicture::setSpots(QAbstractItemModel* spots)
{
    if (setSource(spots)) Q_EMIT spotsChanged();
}

void RoomPicture::reread() { place(); }

void RoomPicture::geometryChange(const QRectF& now, const QRectF& before)
{
    RowReader::geometryChange(now, before);
    place();
}

QRectF RoomPicture::room() const { return QRectF(0, 0, width(), height()).adjusted(wall, wall, -wall, -wall); }

QRectF RoomPicture::doorway() const
{
    const QRectF inside = room();
    const double high = std::clamp(0.4 * inside.height(), 18.0, 40.0);
    return {0, inside.bottom() - 4 - high, wall, high};
}

QPointF RoomPicture::person() const
{
    const QRectF inside = room();
    return {inside.left() + std::clamp(0.24 * inside.width(), 26.0, 80.0), doorway().center().y()};
}

void RoomPicture::place()
{
    const QRectF inside = room();
    // Marks keep clear of walls and person.
    const QRectF ground(QPointF(person().x() + 28, inside.top() + 12),
                        QPointF(inside.right() - 14, inside.bottom() - 12));
    const auto at = [&](const QPointF& share) {
        return QPointF(std::max(inside.left() + 14, ground.left() + share.x() * ground.width()),
                       ground.top() + share.y() * ground.height());
    };
    m_spots.clear();
    const auto taken = [&](const QPointF& place) {
        return std::ranges::any_of(m_spots,
                                   [&](const Spot& spot) { return QLineF(spot.place, place).length() < apart; });
    };
    for (int row = 0; row < rows(); ++row) {
        Spot spot;
        spot.verdict = RowReader::at(row, "verdict").toInt();
        spot.here = RowReader::at(row, "here").toBool();
        const QString position = RowReader::at(row, "position").toString();
        const Chosen* chosen = chosenBy(position);
        spot.window = chosen == byWord.data() && !taken(at(chosen->share));
        spot.place = chosen != nullptr ? at(chosen->share) : at(free6[0]);
        for (std::size_t i = 0; taken(spot.place) && i < free6.size(); ++i) spot.place = at(free6[i]);
        m_spots.push_back(spot);
    }
    Q_EMIT placesChanged();
}

QPointF RoomPicture::spotAt(int row) const
{
    return row >= 0 && row < static_cast<int>(m_spots.size()) ? m_spots[static_cast<std::size_t>(row)].place
                                                              : QPointF(-1, -1);
}

QPointF RoomPicture::hereAt() const
{
    const auto found = std::ranges::find(m_spots, true, &Spot::here);
    return found != m_spots.end() ? found->place : QPointF(-1, -1);
}

int RoomPicture::rowAt(double x, double y) const
{
    int nearest = -1;
    double least = 0;
    for (std::size_t i = 0; i < m_spots.size(); ++i) {
        const QPointF away = m_spots[i].place - QPointF(x, y);
        const double distance = std::hypot(away.x(), away.y());
        if (std::abs(away.x()) > targetHalf || std::abs(away.y()) > targetHalf) continue;
        if (nearest < 0 || distance < least) {
            nearest = static_cast<int>(i);
            least = distance;
        }
    }
    return nearest;
}

void RoomPicture::mousePressEvent(QMouseEvent* event)
{
    m_pressed = rowAt(event->position().x(), event->position().y());
    event->setAccepted(m_pressed >= 0);
}

void RoomPicture::mouseReleaseEvent(QMouseEvent* event)
{
    const int row = rowAt(event->position().x(), event->position().y());
    if (row >= 0 && row == m_pressed) Q_EMIT spotTapped(row);
    m_pressed = -1;
}

void RoomPicture::drawShell(report::Drawing& drawing) const
{
    const report::Palette& inks = drawing.inks();
    const QRectF inside = room();
    drawing.fill(QRectF(0, 0, width(), height()), inks.ink);
    drawing.fill(inside, inks.here);
    if (inks.hereEdge != inks.here) drawing.frame(inside.adjusted(1, 1, -1, -1), inks.hereEdge, 2);
    const QRectF door = doorway();
    drawing.fill(door.adjusted(0, 0, 1, 0), inks.paper);
    QPainterPath swing(door.topRight());
    swing.arcTo(QRectF(door.right() - door.height(), door.top(), 2 * door.height(), 2 * door.height()), 90, -90);
    swing.lineTo(door.bottomRight());
    drawing.stroke(swing, inks.ink2, 1.2);
    for (const Spot& spot : m_spots) {
        if (!spot.window) continue;
        const QRectF pane(spot.place.x() - 19, 1, 38, wall - 2);
        drawing.fill(pane, inks.paper);
        drawing.frame(pane, inks.ink, 1.4);
    }
}

void RoomPicture::drawWay(report::Drawing& drawing) const
{
    const report::Palette& inks = drawing.inks();
    const QPointF you = person();
    const double shoulders = std::clamp(0.3 * room().height(), 18.0, 34.0);
    drawing.line(0, you.y(), you.x(), you.y(), inks.route, 5);
    const QPointF to = hereAt();
    double heading = 0;
    if (to.x() >= 0) {
        const QLineF way(you, to);
        heading = -way.angle();
        const double begin = shoulders / 2 + 6;
        const double end = way.length() - 16;
        if (end - begin > 8)
            drawFootprints(drawing, way.pointAt(begin / way.length()), way.pointAt(end / way.length()), 8, inks.route);
    }
    drawPerson(drawing, you, shoulders, heading, inks.route);
}

void RoomPicture::draw(report::Drawing& drawing)
{
    if (room().width() < 40 || room().height() < 20) return;
    drawShell(drawing);
    drawWay(drawing);
    const report::Palette& inks = drawing.inks();
    for (const Spot& spot : m_spots) {
        if (const auto verdict = verdictOf(spot.verdict); verdict && !spot.here)
            drawVerdict(drawing, spot.place, 7, *verdict);
    }
    for (const Spot& spot : m_spots) {
        if (!spot.here) continue;
        for (const auto& [r, colour] :
             {std::pair(10.0, inks.ink), std::pair(6.2, inks.paper), std::pair(2.4, inks.ink)}) {
            QPainterPath ring;
            ring.addEllipse(spot.place, r, r);
            drawing.fill(ring, colour);
        }
    }
}

} // namespace proofwalk::parts
