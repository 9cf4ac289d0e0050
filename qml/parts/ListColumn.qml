// SPDX-License-Identifier: GPL-3.0-or-later
// A list for the keyboard too: Tab comes to it as a whole, the arrows go from row to row, Return takes the row.
import QtQuick
import Proofwalk.Parts

ListView {
    id: root

    property string name

    /// The row was taken by the keyboard. Rows say for themselves when they are touched.
    signal activated(int row)

    activeFocusOnTab: count > 0 || activeFocus // Qt refuses to take it from what has the focus
    boundsBehavior: Flickable.StopAtBounds
    clip: true
    keyNavigationEnabled: true
    highlightMoveDuration: 0
    highlightResizeDuration: 0
    Accessible.role: Accessible.List
    Accessible.name: name

    onActiveFocusChanged: if (activeFocus && currentIndex >= 0) positionViewAtIndex(currentIndex, ListView.Contain)

    Keys.onReturnPressed: if (currentItem) activated(currentIndex)
    Keys.onEnterPressed: if (currentItem) activated(currentIndex)
    Keys.onPressed: event => {
        const shown = Math.max(1, Math.floor(height / Theme.target) - 1);
        const rows = {
            [Qt.Key_PageUp]: currentIndex - shown, [Qt.Key_PageDown]: currentIndex + shown,
            [Qt.Key_Home]: 0, [Qt.Key_End]: count - 1
        };
        if (rows[event.key] === undefined) return;
        currentIndex = Math.max(0, Math.min(count - 1, rows[event.key]));
        event.accepted = true;
    }

    // Not as "highlight": in Qt 6.4 that cannot be bound.
    Rectangle {
        z: 5
        visible: Keyboard.inUse && root.activeFocus && root.currentItem !== null
        x: root.currentItem ? root.currentItem.x : 0
        y: root.currentItem ? root.currentItem.y : 0
        width: root.currentItem ? root.currentItem.width : 0
        height: root.currentItem ? root.currentItem.height : 0
        color: "transparent"
        border { width: 2; color: Theme.route }
    }
    ScrollMark { page: root }
}
