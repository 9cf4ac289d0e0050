// SPDX-License-Identifier: GPL-3.0-or-later
// In Qt 6.4 a Loader cannot instantiate a bound component, and without the pragma qmllint takes ids for unqualified.
// qmllint disable unqualified
// A list for the keyboard too: Tab comes to it as a whole, the arrows go from row to row, Return takes the row.
import QtQuick
import Proofwalk.Parts

ListView {
    id: root

    property string name

    /// The row was taken by the keyboard. Rows say for themselves when they are touched.
    signal activated(int row)

    activeFocusOnTab: count > 0
    boundsBehavior: Flickable.StopAtBounds
    clip: true
    keyNavigationEnabled: true
    highlight: Rectangle {
        z: 5
        visible: Keyboard.inUse && root.activeFocus
        color: "transparent"
        border { width: 2; color: Theme.route }
    }
    highlightMoveDuration: 0
    highlightResizeDuration: 0
    Accessible.role: Accessible.List
    Accessible.name: name

    onActiveFocusChanged: if (activeFocus && currentIndex >= 0) positionViewAtIndex(currentIndex, ListView.Contain)

    Keys.onReturnPressed: activated(currentIndex)
    Keys.onEnterPressed: activated(currentIndex)
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

    ScrollMark { page: root }
}
