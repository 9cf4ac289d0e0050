// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/footprints.h"

#include "core/report/person.h"

namespace proofwalk::parts {

Footprints::Footprints(QQuickItem* parent) : Drawn({60, 12}, parent) {}

void Footprints::setVertical(bool vertical)
{
    if (!take(m_vertical, vertical)) return;
    setImplicitSize(implicitHeight(), implicitWidth());
    Q_EMIT verticalChanged();
}

void Footprints::setLength(double length)
{
    if (take(m_length, length)) Q_EMIT lengthChanged();
}

void Footprints::draw(report::Drawing& drawing)
{
    const QPointF from = m_vertical ? QPointF(width() / 2, 0) : QPointF(0, height() / 2);
    const QPointF to = m_vertical ? QPointF(width() / 2, height()) : QPointF(width(), height() / 2);
    drawFootprints(drawing, from, to, m_length, drawing.inks().route);
}

} // namespace proofwalk::parts
