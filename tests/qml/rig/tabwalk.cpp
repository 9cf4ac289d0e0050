// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/rig/tabwalk.h"

#include "tests/qml/rig/controls.h"

#include <QTest>

#include <algorithm>

namespace proofwalk::rig {
namespace {

constexpr int most = 400;

/// The control that holds what has the focus: a field's inner item has it, not the field.
bool isAt(const QQuickItem& control, const std::vector<QQuickItem*>& visited)
{
    return std::ranges::any_of(visited,
                               [&](const QQuickItem* item) { return holds(control, *item) || holds(*item, control); });
}

bool isSeen(const QQuickWindow& window, const QQuickItem& item)
{
    for (const auto& shown : shownItems(window))
        if (shown.item == &item) return !shown.covered && shown.seen.height() > 1 && shown.seen.width() > 1;
    return false;
}

/// A row of a list that is one stop: the arrows come to it.
bool isRow(const QQuickItem& item)
{
    for (const auto* up = item.parentItem(); up != nullptr; up = up->parentItem())
        if (up->inherits("QQuickListView") && up->activeFocusOnTab()) return true;
    return false;
}

QImage around(QQuickWindow& window, const QQuickItem& item)
{
    const QRect rect = item.mapRectToScene({0, 0, item.width(), item.height()}).toAlignedRect().adjusted(-4, -4, 4, 4);
    return window.grabWindow().copy(rect.intersected({0, 0, window.width(), window.height()}));
}

} // namespace

Findings tabWalk(QQuickWindow& window, bool marks)
{
    Findings findings;
    window.requestActivate();
    if (!QTest::qWaitForWindowActive(&window, 2000))
        return {{QStringLiteral("not-reached"), {}, QStringLiteral("no active window")}};
    std::vector<QQuickItem*> visited;
    QQuickItem* before = window.activeFocusItem();
    for (int step = 0;; ++step) {
        if (step == most) {
            findings.push_back({QStringLiteral("endless"), {}, QStringLiteral("%1 steps").arg(most)});
            break;
        }
        QTest::keyClick(&window, Qt::Key_Tab);
        QCoreApplication::processEvents();
        auto* at = window.activeFocusItem();
        if (at == nullptr || at == before || std::ranges::find(visited, at) != visited.end()) break;
        visited.push_back(at);
        before = at;
        if (at->inherits("QQuickRootItem")) continue;
        if (!isSeen(window, *at)) findings.push_back({QStringLiteral("focus-hidden"), describe(*at), {}});
        // A list marks its row as long as it has the focus itself, so the row alone cannot be made to lose it.
        if (!marks || isRow(*at)) continue;
        const QImage with = around(window, *at);
        at->setFocus(false);
        QCoreApplication::processEvents();
        if (with == around(window, *at)) findings.push_back({QStringLiteral("no-focus-mark"), describe(*at), {}});
        at->forceActiveFocus(Qt::TabFocusReason);
    }
    for (const auto& control : controlsOf(window))
        if (!control.shown.covered && control.enabled && !isRow(*control.shown.item)
            && !isAt(*control.shown.item, visited))
            findings.push_back({QStringLiteral("not-reached"), describe(*control.shown.item), {}});
    return findings;
}

} // namespace proofwalk::rig
