// SPDX-License-Identifier: GPL-3.0-or-later
// One of several: chosen, it is filled with ink.
import QtQuick
import Proofwalk.Parts

Pressable {
    id: root

    property string text
    property bool chosen: false

    readonly property bool solid: chosen || inked

    name: text
    Accessible.role: Accessible.RadioButton
    Accessible.checkable: true
    Accessible.checked: chosen
    implicitWidth: label.implicitWidth + 20
    implicitHeight: Math.max(Theme.target, label.implicitHeight + 16)

    Rectangle {
        anchors.fill: parent
        radius: Theme.radius
        color: root.solid ? Theme.ink : Theme.paper
        border { width: 2; color: Theme.ink }
    }

    KeyLabel {
        id: label
        anchors.centerIn: parent
        room: root.width - 20
        text: root.text
        colour: root.solid ? Theme.paper : Theme.ink
        pictureSize: 14

        Rectangle {
            anchors.fill: parent
            radius: width / 2
            color: root.solid ? Theme.paper : "transparent"
            border { width: root.solid ? 0 : 2; color: Theme.ink }
        }
    }
}
