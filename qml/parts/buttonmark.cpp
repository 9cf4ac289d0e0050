// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/buttonmark.h"

#include "core/report/marks.h"

#include <algorithm>

namespace proofwalk::parts {

void ButtonMark::paint(QPainter* painter)
{
    report::Palette inks;
    inks.passInk = inks.failInk = inks.closeInk = inks.closeFill = inks.accessInk = inks.runInk = inks.ink2 = m_colour;
    inks.paper = inks.glyph = m_taken ? m_ground : m_colour;
    report::Drawing drawing(*painter, inks);
    // The diamond reaches 1.2 radii.
    const double r = std::min(width(), height()) / 2 / (m_mark == verdict::Fail ? 1.2 : 1.05);
    report::drawVerdict(drawing, QPointF(width() / 2, height() / 2), r, static_cast<report::Verdict>(m_mark));
}

} // namespace proofwalk::parts
