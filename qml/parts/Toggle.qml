// SPDX-License-Identifier: GPL-3.0-or-later
// Yes or no, as a window in a wall: lit or dark.
import QtQuick
import Proofwalk.Parts

Pressable {
    id: root

    property string text
    property string second
    property bool on: false

    /// It was touched; who listens sets `on` once that is so.
    signal toggled(bool wanted)

    name: text
    more: second
    focusInset: 0
    onClicked: toggled(!on)
    Accessible.role: Accessible.CheckBox
    Accessible.checkable: true
    Accessible.checked: on
    implicitWidth: 40 + Math.ceil(Math.max(words.implicitWidth, under.implicitWidth))
    implicitHeight: Math.max(Theme.target, lines.height + 12)

    Rectangle {
        id: frame
        anchors.verticalCenter: parent.verticalCenter
        x: 2
        width: 26
        height: 26
        color: root.inked ? Theme.ink : Theme.paper
        border { width: 3; color: Theme.ink }

        Rectangle {
            visible: root.on
            anchors { fill: parent; margins: 6 }
            color: root.inked ? Theme.paper : Theme.ink
        }
    }

    Column {
        id: lines
        x: 40
        anchors.verticalCenter: parent.verticalCenter
        width: root.width - x

        Lettering {
            id: words
            width: parent.width
            text: root.text
            Accessible.ignored: true
        }
        Caption {
            id: under
            visible: root.second !== ""
            width: parent.width
            text: root.second
            Accessible.ignored: true
        }
    }
}
