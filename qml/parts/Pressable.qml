// SPDX-License-Identifier: GPL-3.0-or-later
// The base of everything that is touched: a name and a role for who cannot see it, Space and Return for who cannot
// touch it, an edge that shows where the keyboard is, and one signal. It draws nothing but that edge.
import QtQuick
import Proofwalk.Parts

Item {
    id: root

    /// What it is called aloud, and what is said after it.
    property string name
    property string more
    /// Taken, but not durable yet: drawn as pressed, and deaf until it is.
    property bool busy: false
    /// Cannot now. It stays in reach, so that its reason is found; it is deaf.
    property bool shut: false
    /// A tap moves the keyboard's place here too.
    property bool takesFocus: true
    /// The focus edge's distance from the border: outside, or inside (above 0) where there is no room around.
    property int focusInset: -3

    readonly property bool down: area.pressed || keyDown
    readonly property bool inked: (down && !shut) || busy
    readonly property bool focusShown: Keyboard.inUse && activeFocus // in this order: Keyboard must be there before the first key
    property bool keyDown: false

    signal clicked()

    /// As if it had been touched.
    function press() {
        if (enabled && !busy && !shut) clicked();
    }

    activeFocusOnTab: true
    implicitWidth: Theme.target
    implicitHeight: Theme.target

    Accessible.role: Accessible.Button
    Accessible.name: root.name
    Accessible.description: root.more
    Accessible.focusable: true
    Accessible.onPressAction: root.press()

    onActiveFocusChanged: if (!activeFocus) keyDown = false

    Keys.onPressed: event => {
        if (event.key !== Qt.Key_Space && event.key !== Qt.Key_Return && event.key !== Qt.Key_Enter) return;
        if (!event.isAutoRepeat) keyDown = true;
        event.accepted = true;
    }
    Keys.onReleased: event => {
        if (event.key !== Qt.Key_Space && event.key !== Qt.Key_Return && event.key !== Qt.Key_Enter) return;
        event.accepted = true;
        if (event.isAutoRepeat || !keyDown) return;
        keyDown = false;
        press();
    }

    MouseArea {
        id: area
        anchors.fill: parent
        onPressed: if (root.takesFocus) root.forceActiveFocus(Qt.MouseFocusReason)
        onClicked: root.press()
        // Two quick taps are two presses: the same digit twice. Qt makes a double click of the second.
        onDoubleClicked: root.press()
    }

    Rectangle {
        z: 10
        visible: root.focusShown
        anchors { fill: parent; margins: root.focusInset }
        color: "transparent"
        radius: root.focusInset < 0 ? Theme.radius - root.focusInset : 0
        border { width: 2; color: Theme.route }
    }
}
