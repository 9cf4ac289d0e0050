// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/proofmark.h"

#include "core/report/proofwindow.h"

#include <algorithm>

namespace proofwalk::parts {
namespace {

constexpr double side = 20; // of the window, as the report draws it
constexpr double beside = 13;

bool hasBeside(int seen) { return seen == seen::Ear || seen == seen::Partner; }

} // namespace

ProofMark::ProofMark(QQuickItem* parent) : Drawn({side, side}, parent) {}

void ProofMark::setKind(int kind)
{
    if (take(m_kind, kind)) Q_EMIT kindChanged();
}

void ProofMark::setProofState(int state)
{
    if (take(m_state, state)) Q_EMIT proofStateChanged();
}

void ProofMark::setSeen(int seen)
{
    if (!take(m_seen, seen)) return;
    setImplicitWidth(hasBeside(seen) ? side + beside : side);
    Q_EMIT seenChanged();
}

void ProofMark::setProgress(double progress)
{
    if (take(m_progress, progress)) Q_EMIT progressChanged();
}

void ProofMark::draw(report::Drawing& drawing)
{
    const auto state = proofOf(m_state);
    const auto seen = seenOf(m_seen);
    if (!state || !seen || m_kind < 0 || m_kind > 3) return;
    const double wide = hasBeside(m_seen) ? side + beside : side;
    const double scale = std::min(width() / wide, height() / side);
    QPainter& painter = drawing.painter();
    painter.translate((width() - scale * wide) / 2, (height() - scale * side) / 2);
    painter.scale(scale, scale);
    drawProofWindow(drawing, QPointF(side / 2, side / 2), static_cast<std::size_t>(m_kind), {*state, *seen},
                    m_progress);
}

} // namespace proofwalk::parts
