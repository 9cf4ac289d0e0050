// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/trialboxes.h"

#include <algorithm>

namespace proofwalk::parts {
namespace {

constexpr double side = 21; // with its edge
constexpr double pitch = 31;

double wide(int boxes) { return boxes > 0 ? (boxes - 1) * pitch + side : 0; }

} // namespace

TrialBoxes::TrialBoxes(QQuickItem* parent) : Drawn({0, side}, parent) {}

void TrialBoxes::keep(int& kept, int value)
{
    if (!take(kept, value)) return;
    setImplicitWidth(wide(boxes()));
    Q_EMIT countsChanged();
}

int TrialBoxes::boxes() const { return std::max({m_wanted, m_tries, 0}); }

void TrialBoxes::draw(report::Drawing& drawing)
{
    const int count = boxes();
    if (count == 0) return;
    const double scale = std::min(height() / side, width() / wide(count));
    const report::Palette& inks = drawing.inks();
    drawing.painter().scale(scale, scale);
    for (int i = 0; i < count; ++i) {
        const QRectF box(i * pitch + 1, 1, side - 2, side - 2);
        if (i < m_hits) {
            drawing.fill(box.adjusted(-1, -1, 1, 1), inks.ink);
        } else if (i < m_tries) {
            drawing.fill(box, inks.paper);
            drawing.frame(box, inks.failInk, 2);
            const QRectF cross = box.adjusted(4.5, 4.5, -4.5, -4.5);
            drawing.line(cross.left(), cross.top(), cross.right(), cross.bottom(), inks.failInk, 2.8);
            drawing.line(cross.left(), cross.bottom(), cross.right(), cross.top(), inks.failInk, 2.8);
        } else {
            drawing.fill(box, inks.paper);
            drawing.frame(box, inks.ink, 2);
        }
    }
}

} // namespace proofwalk::parts
