// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/icon.h"

#include "core/report/icon.h"

#include "qml/parts/theme.h"

#include <algorithm>

namespace proofwalk::parts {

Icon::Icon(QQuickItem* parent) : Drawn({24, 24}, parent)
{
    connect(&Theme::instance(), &Theme::changed, this, [this] {
        if (!m_colour.isValid()) Q_EMIT colourChanged();
    });
}

void Icon::setName(const QString& name)
{
    if (take(m_name, name)) Q_EMIT nameChanged();
}

QColor Icon::colour() const { return m_colour.isValid() ? m_colour : Theme::instance().ink(); }

void Icon::setColour(const QColor& colour)
{
    if (take(m_colour, colour)) Q_EMIT colourChanged();
}

void Icon::draw(report::Drawing& drawing)
{
    const double side = std::min(width(), height());
    drawIcon(drawing, QPointF((width() - side) / 2, (height() - side) / 2), side, m_name.toStdString(), colour());
}

} // namespace proofwalk::parts
