// SPDX-License-Identifier: GPL-3.0-or-later
// A line of the plan: a room's wall, or a device in it with its zone.
import QtQuick
import Proofwalk.Parts

Item {
    id: line

    required property int index
    required property bool wall
    required property string tag
    required property string zone
    required property string title
    required property string note
    required property string icon

    implicitHeight: wall ? room.implicitHeight : Math.max(60, words.height + 16)
    height: implicitHeight
    Accessible.role: Accessible.ListItem
    Accessible.name: Words.join("window.join.list", [wall ? "" : tag, title, note])

    RoomWall {
        id: room
        visible: line.wall
        width: line.width
        room: line.title
        count: line.note
        first: line.index === 0
    }
    FigureText {
        id: number
        visible: !line.wall
        x: Theme.margin
        anchors.verticalCenter: parent.verticalCenter
        width: 36
        text: line.zone
        font.pixelSize: Theme.lead
        Accessible.ignored: true
    }
    Icon {
        visible: !line.wall
        x: 60
        anchors.verticalCenter: parent.verticalCenter
        name: line.icon === "" ? "unknown" : line.icon
        colour: Theme.ink
    }
    Column {
        id: words
        visible: !line.wall
        x: 96
        anchors.verticalCenter: parent.verticalCenter
        width: plate.x - x - 8

        BodyText { width: parent.width; text: line.title; Accessible.ignored: true }
        Caption { width: parent.width; text: line.note; visible: text !== ""; Accessible.ignored: true }
    }
    FigureText {
        id: plate
        visible: !line.wall
        x: line.width - width - Theme.margin
        anchors.verticalCenter: parent.verticalCenter
        text: line.tag
        font.pixelSize: Theme.text
        Accessible.ignored: true
    }
    RowRule { visible: !line.wall; anchors { left: parent.left; right: parent.right; bottom: parent.bottom } }
}
