// SPDX-License-Identifier: GPL-3.0-or-later
// A word that leads somewhere.
import QtQuick
import Proofwalk.Parts

Pressable {
    id: root

    property string text
    property int alignment: Text.AlignLeft

    name: text
    focusInset: 0
    Accessible.role: Accessible.Link
    implicitWidth: Math.max(Theme.target, Math.ceil(words.implicitWidth))
    implicitHeight: Math.max(Theme.target, words.implicitHeight)

    Lettering {
        id: words
        anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter }
        horizontalAlignment: root.alignment
        text: root.text
        color: root.inked ? Theme.ink : Theme.route
        font.bold: true
        Accessible.ignored: true
    }
}
