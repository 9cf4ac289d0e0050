// SPDX-License-Identifier: GPL-3.0-or-later
// A page that may be higher than its place. The keyboard moves it, and it moves to what the keyboard has come to.
import QtQuick
import QtQuick.Window
import Proofwalk.Parts

Flickable {
    id: root

    /// What is on the page; heard when the page itself has the keyboard.
    property string name
    readonly property bool scrolls: contentHeight > height + 1
    readonly property Item focused: Window.activeFocusItem

    function move(way: real) {
        contentY = Math.max(0, Math.min(contentHeight - height, contentY + way));
    }
    /// Brings all of an item of this page into sight, or its beginning if it is higher than the page.
    function reveal(item: Item) {
        const y = item.mapToItem(contentItem, 0, 0).y;
        if (y + item.height + 8 > contentY + height) move(y + item.height + 8 - contentY - height);
        if (y - 8 < contentY) move(y - 8 - contentY);
    }
    function holds(item: Item): bool {
        for (let up = item; up; up = up.parent)
            if (up === contentItem) return true;
        return false;
    }

    function follow() {
        if (focused && focused !== root && holds(focused)) reveal(focused);
    }

    contentWidth: width
    contentHeight: contentItem.childrenRect.height
    boundsBehavior: Flickable.StopAtBounds
    flickableDirection: Flickable.VerticalFlick
    clip: true
    activeFocusOnTab: (scrolls && name !== "") || activeFocus
    Accessible.role: Accessible.Pane
    Accessible.name: name
    Accessible.ignored: name === ""
    onFocusedChanged: follow()
    onContentHeightChanged: if (Keyboard.inUse) grown.restart()
    Keys.onPressed: event => {
        const ways = {
            [Qt.Key_PageUp]: -height * 0.8, [Qt.Key_PageDown]: height * 0.8,
            [Qt.Key_Up]: -Theme.target, [Qt.Key_Down]: Theme.target,
            [Qt.Key_Home]: -contentHeight, [Qt.Key_End]: contentHeight
        };
        if (!scrolls || ways[event.key] === undefined) return;
        move(ways[event.key]);
        event.accepted = true;
    }

    // What grew above it may have pushed what the keyboard is at out of sight.
    Timer { id: grown; interval: 0; onTriggered: root.follow() }

    ScrollMark { page: root }

    Rectangle {
        parent: root
        z: 21
        visible: Keyboard.inUse && root.activeFocus && root.focused === root
        anchors.fill: parent
        color: "transparent"
        border { width: 2; color: Theme.route }
    }
}
