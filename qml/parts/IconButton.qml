// SPDX-License-Identifier: GPL-3.0-or-later
// A small act whose icon says it; its name is heard, and written where there is room.
import QtQuick
import Proofwalk.Parts

Pressable {
    id: root

    property string icon
    /// With the edge of a button; without, as in a bar.
    property bool framed: true
    property color colour: Theme.ink

    Rectangle {
        visible: root.framed || root.inked
        anchors.fill: parent
        radius: Theme.radius
        color: root.inked ? Theme.ink : Theme.paper
        border { width: 2; color: Theme.ink }
    }

    Icon {
        anchors.centerIn: parent
        width: 24
        height: 24
        name: root.icon
        colour: root.inked ? Theme.paper : root.colour
    }
}
