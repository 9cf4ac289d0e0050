// SPDX-License-Identifier: GPL-3.0-or-later
// What can hurt, before the step that can. Never yellow: that is where you stand.
import QtQuick
import Proofwalk.Parts

Rectangle {
    id: root

    property string title
    property string text

    implicitHeight: Math.max(72, lines.height + 24)
    color: Theme.band
    Accessible.role: Accessible.AlertMessage
    Accessible.name: title === "" ? text : title + ". " + text

    Icon {
        x: Theme.margin
        anchors.verticalCenter: parent.verticalCenter
        width: 48
        height: 48
        name: "caution"
        colour: Theme.bandInk
    }
    Column {
        id: lines
        x: 78
        anchors.verticalCenter: parent.verticalCenter
        width: root.width - x - Theme.margin
        spacing: 2

        LeadText {
            visible: text !== ""
            width: parent.width
            text: root.title
            color: Theme.bandInk
            Accessible.ignored: true
        }
        BodyText {
            visible: text !== ""
            width: parent.width
            text: root.text
            color: Theme.bandInk
            Accessible.ignored: true
        }
    }
}
