// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/verdictmark.h"

#include "core/report/marks.h"

#include <algorithm>

namespace proofwalk::parts {
namespace {

constexpr double side = 20;
constexpr double besideShare = 0.6; ///< of the side: ear or partner at the right

bool hasBeside(int seen) { return seen == seen::Ear || seen == seen::Partner; }

} // namespace

VerdictMark::VerdictMark(QQuickItem* parent) : Drawn({side, side}, parent) {}

void VerdictMark::setMark(int mark)
{
    if (take(m_mark, mark)) Q_EMIT markChanged();
}

void VerdictMark::setSeen(int seen)
{
    if (!take(m_seen, seen)) return;
    setImplicitWidth(hasBeside(seen) ? side * (1 + besideShare) : side);
    Q_EMIT seenChanged();
}

void VerdictMark::draw(report::Drawing& drawing)
{
    const auto mark = verdictOf(m_mark);
    const auto seen = seenOf(m_seen);
    if (!mark || !seen) return;
    const double beside = hasBeside(m_seen) ? besideShare : 0;
    const double box = std::min(height(), width() / (1 + beside));
    const bool around = *seen == report::ProofSeen::inBulk || *seen == report::ProofSeen::byItsLike;
    // The widest shape must stay inside: the jamb of too close and the diamond, or the outline around them.
    const double r = box / (around ? 2.8 : 2.6);
    const double spare = width() - box * (1 + beside);
    drawVerdict(drawing, QPointF(spare / 2 + box / 2, height() / 2), r, *mark, *seen);
}

} // namespace proofwalk::parts
