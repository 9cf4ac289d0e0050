// SPDX-License-Identifier: GPL-3.0-or-later
// The head of a page of the handover, with the way back to the stair.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

Item {
    id: head

    property string title
    property bool backed: true ///< there is a way back; beside the stair none is needed

    implicitHeight: Math.max(56, words.height + 20)

    IconButton {
        id: back
        objectName: "back"
        visible: head.backed
        x: 8
        anchors.verticalCenter: parent.verticalCenter
        icon: "back"
        name: Words.of("window.handover.back")
        framed: false
        onClicked: Whereabouts.go(Whereabouts.Handover)
    }
    HeadText {
        id: words
        x: head.backed ? 60 : Theme.margin
        width: parent.width - x - Theme.margin
        anchors.verticalCenter: parent.verticalCenter
        text: head.title
    }
    Rectangle { anchors.bottom: parent.bottom; width: parent.width; height: 1; color: Theme.hair }
}
