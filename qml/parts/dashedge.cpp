// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/dashedge.h"

#include <QPainter>

namespace proofwalk::parts {

void DashEdge::setColour(const QColor& colour)
{
    if (colour == m_colour) return;
    m_colour = colour;
    update();
    Q_EMIT colourChanged();
}

void DashEdge::setFill(const QColor& fill)
{
    if (fill == m_fill) return;
    m_fill = fill;
    update();
    Q_EMIT fillChanged();
}

void DashEdge::paint(QPainter* painter)
{
    QPen pen(m_colour, 2, Qt::CustomDashLine, Qt::FlatCap, Qt::MiterJoin);
    pen.setDashPattern({3.5, 2.5}); // in line widths: 7 on, 5 off
    painter->setPen(pen);
    painter->setBrush(m_fill);
    painter->drawRoundedRect(QRectF(1, 1, width() - 2, height() - 2), 4, 4);
}

} // namespace proofwalk::parts
