// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/person.h"

#include "core/report/person.h"

#include <algorithm>

namespace proofwalk::parts {

Person::Person(QQuickItem* parent) : Drawn({32, 32}, parent) {}

void Person::setHeading(double heading)
{
    if (take(m_heading, heading)) Q_EMIT headingChanged();
}

void Person::setTimed(bool timed)
{
    if (take(m_timed, timed)) Q_EMIT timedChanged();
}

void Person::draw(report::Drawing& drawing)
{
    if (!std::isfinite(m_heading)) return;
    const report::Palette& inks = drawing.inks();
    // With its pale edge the figure is 35 for shoulders of 30; whichever way it turns it stays inside.
    const double shoulders = std::min(width(), height()) * 30 / 36;
    drawPerson(drawing, QPointF(width() / 2, height() / 2), shoulders, m_heading - 90,
               m_timed ? inks.runInk : inks.route);
}

} // namespace proofwalk::parts
