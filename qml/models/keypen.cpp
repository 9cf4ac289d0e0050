// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/keypen.h"

#include <QJsonArray>
#include <QJsonDocument>

#include <algorithm>

namespace proofwalk::models {

void KeyPen::step(int right, int downwards)
{
    // The field is five wide and two high: steps look alike in both directions.
    constexpr int across = 20, along = 50;
    m_at = {std::clamp(m_at.x() + right * across, 0, 1000), std::clamp(m_at.y() + downwards * along, 0, 1000)};
    if (m_down) m_strokes.back().push_back(m_at);
    Q_EMIT moved();
}

void KeyPen::press()
{
    m_down = !m_down;
    if (m_down) m_strokes.push_back({m_at});
    Q_EMIT moved();
}

void KeyPen::clear()
{
    m_strokes.clear();
    m_down = false;
    Q_EMIT moved();
}

QString KeyPen::ink() const
{
    QJsonArray strokes;
    for (const auto& stroke : m_strokes) {
        QJsonArray points;
        for (const QPoint& point : stroke) points.append(QJsonArray{point.x(), point.y()});
        strokes.append(points);
    }
    return QString::fromUtf8(QJsonDocument(strokes).toJson(QJsonDocument::Compact));
}

} // namespace proofwalk::models
