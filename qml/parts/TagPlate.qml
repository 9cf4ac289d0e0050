// SPDX-License-Identifier: GPL-3.0-or-later
// A device's tag on its plate.
import QtQuick
import Proofwalk.Parts

Rectangle {
    id: root

    property string text
    property bool failed: false

    implicitWidth: Math.max(112, words.implicitWidth + 24)
    implicitHeight: Math.max(40, words.implicitHeight + 8)
    radius: 2
    color: failed ? Theme.failBtn : Theme.ink

    FigureText {
        id: words
        anchors.centerIn: parent
        width: Math.min(Math.ceil(implicitWidth), root.width - 16)
        horizontalAlignment: Text.AlignHCenter
        text: root.text
        color: root.failed ? Theme.btnInk : Theme.paper
        font.pixelSize: Theme.head
    }
}
