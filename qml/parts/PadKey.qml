// SPDX-License-Identifier: GPL-3.0-or-later
// A key of the number pad. It leaves the keyboard's place to the pad.
import QtQuick
import Proofwalk.Parts

Pressable {
    id: root

    property string text
    /// A figure or a sign: larger, in the figures' face.
    property bool sign: false
    /// Filled with ink: it says in what the figures are.
    property bool filled: false

    readonly property bool solid: filled || inked

    name: text
    takesFocus: false
    focusInset: -2
    implicitWidth: Math.max(76, Math.ceil(words.implicitWidth) + 16)
    implicitHeight: Math.max(Theme.target, words.implicitHeight + 8)

    Rectangle {
        anchors.fill: parent
        radius: Theme.radius
        color: root.solid ? Theme.ink : Theme.paper
        border { width: 2; color: root.solid ? Theme.ink : Theme.ink2 }
    }
    Lettering {
        id: words
        anchors.centerIn: parent
        width: root.width - 12
        horizontalAlignment: Text.AlignHCenter
        text: root.text
        color: root.solid ? Theme.paper : Theme.ink
        font.family: Theme.figures
        font.bold: true
        font.pixelSize: root.sign ? Theme.head : Theme.text
        Accessible.ignored: true
    }
}
