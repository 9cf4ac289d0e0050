// SPDX-License-Identifier: GPL-3.0-or-later
// Where you stand: floor and room, and the way there. A way that does not fit beside them goes beneath.
import QtQuick
import Proofwalk.Parts

Rectangle {
    id: root

    property string floor
    property string room
    property string way

    readonly property real roomStart: floorWord.text === "" ? 0 : floorWord.width + 8
    readonly property bool beneath: way !== ""
        && Theme.margin + roomStart + Math.ceil(roomWord.implicitWidth) + 12 + Math.ceil(wayWord.implicitWidth) + 12 > width
    readonly property real lineHeight: Math.max(roomWord.height, floorWord.height)

    implicitHeight: Math.max(36, lineHeight + (beneath ? wayWord.height + 2 : 0) + 10)
    color: Theme.sign
    Accessible.role: Accessible.Pane
    Accessible.name: Words.join("window.join.list", [floor, room, way])

    Lettering {
        id: floorWord
        x: Theme.margin
        y: root.beneath ? 4 : (root.height - 2 - height) / 2
        width: Math.min(Math.ceil(implicitWidth), (root.width - 2 * Theme.margin) * 0.5)
        text: root.floor
        color: Theme.signInk
        font.pixelSize: Theme.lead
        Accessible.ignored: true
    }
    Lettering {
        id: roomWord
        x: Theme.margin + root.roomStart
        y: floorWord.y
        width: Math.min(Math.ceil(implicitWidth), root.width - x - 12)
        text: root.room
        color: Theme.signInk
        font.pixelSize: Theme.lead
        font.bold: true
        Accessible.ignored: true
    }
    Lettering {
        id: wayWord
        x: root.beneath ? Theme.margin : root.width - 12 - width
        y: root.beneath ? floorWord.y + root.lineHeight + 1 : (root.height - 2 - height) / 2
        width: Math.min(Math.ceil(implicitWidth), root.width - Theme.margin - 12)
        text: root.way
        color: Theme.signInk
        font.pixelSize: Theme.label
        Accessible.ignored: true
    }
    Rectangle {
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        height: 2
        color: Theme.dark ? Theme.hereEdge : Theme.ink
    }
}
