// SPDX-License-Identifier: GPL-3.0-or-later
// What was expected and what was seen instead, as two rooms with one wall.
import QtQuick
import Proofwalk.Parts

Item {
    id: root

    property string expected
    property string seen
    /// What stands in the second room instead of plain words.
    default property alias content: host.data

    readonly property bool hosted: host.children.length > 0
    readonly property real half: (width - 12) / 2

    implicitHeight: Math.max(left.height, hosted ? host.childrenRect.height + 8 : right.height) + 16

    Rectangle { anchors.fill: parent; color: Theme.ink }
    Rectangle {
        x: 4
        y: 4
        width: root.half
        height: parent.height - 8
        color: Theme.done
    }
    Rectangle {
        x: root.width - width - 4
        y: 4
        width: root.half
        height: parent.height - 8
        color: Theme.failT
    }
    Column {
        id: left
        x: 12
        y: 8
        width: root.half - 16

        Caption { text: Words.of("window.fault.expected"); color: Theme.ink; width: parent.width }
        BodyText { text: root.expected; font.bold: true; width: parent.width }
    }
    Column {
        id: right
        visible: !root.hosted
        x: root.half + 16
        y: 8
        width: root.half - 16

        Caption { text: Words.of("window.fault.seen"); color: Theme.ink; width: parent.width }
        BodyText { text: root.seen; font.bold: true; width: parent.width }
    }
    Item {
        id: host
        x: root.half + 12
        y: 8
        width: root.half - 8
        height: childrenRect.height
    }
}
