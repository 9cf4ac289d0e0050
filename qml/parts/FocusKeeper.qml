// SPDX-License-Identifier: GPL-3.0-or-later
// Keeps the keyboard's place where it can be seen. What had it may be hidden by what it did itself: a row that is done, a
// page that gave way. Its place is then at the first that can take it, of what still stands around it.
import QtQuick
import QtQuick.Window

Item {
    id: root

    readonly property Item at: Window.activeFocusItem
    readonly property bool lost: at !== null && (!at.visible || !at.enabled)

    function holds(around: Item, item: Item): bool {
        for (let up = item; up; up = up.parent)
            if (up === around) return true;
        return false;
    }
    function find() {
        if (!lost) return;
        for (let around = at.parent; around; around = around.parent) {
            if (!around.visible || !around.enabled) continue;
            const next = around.nextItemInFocusChain(true);
            if (!next || !next.visible || !next.enabled || !holds(around, next)) continue;
            next.forceActiveFocus(Qt.OtherFocusReason);
            return;
        }
    }

    onAtChanged: soon.restart()
    onLostChanged: soon.restart()

    // Whoever hid it may be about to say itself where the place is now.
    Timer { id: soon; interval: 0; onTriggered: root.find() }
}
