// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/cover.h"

namespace proofwalk::parts {

void Cover::setUp(bool up)
{
    if (up == m_up) return;
    m_up = up;
    if (up) lay();
    else lift();
}

void Cover::lay()
{
    for (auto* at = m_sheet.data(); at != nullptr && at->parentItem() != nullptr; at = at->parentItem()) {
        if (at != m_sheet && at->isFocusScope() && !at->inherits("QQuickLoader")) return;
        for (auto* beside : at->parentItem()->childItems()) {
            if (beside == at || !beside->isEnabled()) continue;
            beside->setEnabled(false);
            m_covered.emplace_back(beside);
        }
    }
}

void Cover::lift()
{
    for (const auto& item : m_covered)
        if (item != nullptr) item->setEnabled(true);
    m_covered.clear();
}

} // namespace proofwalk::parts
