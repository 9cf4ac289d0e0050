// SPDX-License-Identifier: GPL-3.0-or-later
// A verdict to give: its mark and its word. Filled, it is the one the page expects ("as planned"), and its second
// line says what it answers and what stays open.
import QtQuick
import Proofwalk.Parts

Pressable {
    id: root

    property string text
    property string second
    property int mark: Verdict.Pass
    property bool filled: false

    readonly property color background: inked ? Theme.ink
        : !filled ? Theme.paper
        : mark === Verdict.Pass ? Theme.passBtn
        : mark === Verdict.Fail ? Theme.failBtn : Theme.routeBtn
    readonly property color foreground: inked ? Theme.paper : filled ? Theme.btnInk : Theme.ink

    name: text
    more: second
    implicitWidth: label.implicitWidth + 16
    implicitHeight: Math.max(Theme.verdict, label.implicitHeight + 12)

    Rectangle {
        anchors.fill: parent
        radius: Theme.radius
        color: root.background
        border { width: 2; color: root.inked || !root.filled ? Theme.ink : root.background }
    }

    KeyLabel {
        id: label
        anchors.centerIn: parent
        room: root.width - 16
        text: root.text
        second: root.second
        colour: root.foreground
        figures: true
        size: root.filled ? Theme.head : Theme.lead
        pictureSize: root.filled ? 34 : 25

        // On a fill, and while it is not durable, the mark is cut out of the button's own words' colour.
        ButtonMark {
            visible: root.filled || root.inked
            anchors.fill: parent
            mark: root.mark
            taken: !root.busy
            colour: root.foreground
            ground: root.background
        }
        VerdictMark {
            visible: !root.filled && !root.inked
            anchors.fill: parent
            mark: root.mark
        }
    }
}
