// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/duewall.h"

#include "core/report/drawing.h"
#include "qml/parts/theme.h"

namespace proofwalk::parts {

DueWall::DueWall(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    setImplicitHeight(36);
    connect(&Theme::instance(), &Theme::changed, this, [this] { update(); });
}

void DueWall::setJambs(int jambs)
{
    if (jambs == m_jambs || jambs < 1) return;
    m_jambs = jambs;
    Q_EMIT changed();
    update();
}

void DueWall::setChosen(int chosen)
{
    if (chosen == m_chosen) return;
    m_chosen = chosen;
    Q_EMIT changed();
    update();
}

void DueWall::paint(QPainter* painter)
{
    const Tokens& tokens = Theme::instance().tokens();
    report::Drawing drawing(*painter);
    const double share = width() / m_jambs, reach = height() / 2, middle = reach;
    const double thick = height() * 0.56, upper = middle - thick / 2;
    const auto jambAt = [&](int jamb) { return share * (jamb + 0.5); };
    const double open = jambAt(0), shut = jambAt(m_chosen);
    for (const QRectF& wall : {QRectF(0, upper, open, thick), QRectF(shut, upper, width() - shut, thick)})
        drawing.hatch(wall, tokens.ink2, 6, 1);
    drawing.fill(QRectF(open, upper, shut - open, thick), tokens.pick);
    drawing.line(0, upper, width(), upper, tokens.ink, 2);
    drawing.line(0, upper + thick, width(), upper + thick, tokens.ink, 2);
    for (int jamb = 0; jamb < m_jambs; ++jamb) {
        const bool here = jamb == m_chosen;
        const double x = jambAt(jamb), high = here ? reach : reach * 0.85, broad = here ? 10 : jamb == 0 ? 6 : 4;
        drawing.fill(QRectF(x - broad / 2, middle - high, broad, 2 * high), here ? tokens.route : tokens.ink);
    }
}

} // namespace proofwalk::parts
