// SPDX-License-Identifier: GPL-3.0-or-later
// A room in a list of devices begins with its wall: the route passes through the doorway in it.
import QtQuick
import Proofwalk.Parts

Rectangle {
    id: root

    property string room
    property string count
    /// The first of the list: the route begins in its doorway.
    property bool first: false
    property bool here: false
    /// Every device answered as planned.
    property bool finished: false
    /// The walk has passed its doorway.
    property bool walked: here || finished

    readonly property real route: 24

    implicitHeight: Math.max(Theme.target, Math.max(words.height, number.height) + 18)
    color: here ? Theme.here : finished ? Theme.done : Theme.film
    Accessible.role: Accessible.Heading
    Accessible.name: Words.join("window.join.list", [room, count])

    Rectangle {
        visible: root.here && Theme.dark
        anchors.fill: parent
        color: "transparent"
        border { width: 2; color: Theme.hereEdge }
    }
    // The wall, left and right of the doorway, and its jambs.
    Rectangle {
        width: root.route - 13
        height: 5
        color: Theme.ink
    }
    Rectangle {
        x: root.route + 13
        width: root.width - x
        height: 5
        color: Theme.ink
    }
    Rectangle {
        x: root.route - 16
        y: -2.5
        width: 3
        height: 10
        color: Theme.ink
    }
    Rectangle {
        x: root.route + 13
        y: -2.5
        width: 3
        height: 10
        color: Theme.ink
    }

    Rectangle {
        visible: root.walked
        x: root.route - width / 2
        y: root.first ? 5 : 0
        width: 5
        height: root.height - y
        color: Theme.route
    }
    Footprints {
        visible: !root.walked
        x: root.route - width / 2
        y: 12
        width: 14
        height: root.height - y - 2
        vertical: true
    }

    LeadText {
        id: words
        x: 48
        y: (root.height + 5 - height) / 2
        width: number.x - x - 8
        text: root.room
        Accessible.ignored: true
    }
    BodyText {
        id: number
        x: root.width - Theme.margin - width
        y: (root.height + 5 - height) / 2
        width: Math.min(Math.ceil(implicitWidth), root.width * 0.35)
        horizontalAlignment: Text.AlignRight
        text: root.count
        Accessible.ignored: true
    }
}
