// SPDX-License-Identifier: GPL-3.0-or-later
// An act in words, with an icon and a second line if it has them. A button that cannot act now is drawn as what it
// is, a door that is shut (dashed), and its second line says why.
import QtQuick
import Proofwalk.Parts

Pressable {
    id: root

    enum Style { Plain, Edged, Filled, Pass, Fail, Shut }

    property string text
    property string second
    property string icon
    property int style: ActionButton.Plain
    /// 64 high, with larger words: the act this page is for.
    property bool tall: false
    /// The size of its words, where the usual one does not suit.
    property int wordSize: 0
    /// The icon above the words.
    property bool stacked: false

    readonly property bool solid: style === ActionButton.Filled || style === ActionButton.Pass
                                  || style === ActionButton.Fail
    readonly property color foreground: inked ? Theme.paper
        : solid ? Theme.btnInk
        : style === ActionButton.Edged ? Theme.route : Theme.ink
    readonly property color background: inked ? Theme.ink
        : style === ActionButton.Filled ? Theme.routeBtn
        : style === ActionButton.Pass ? Theme.passBtn
        : style === ActionButton.Fail ? Theme.failBtn : Theme.paper

    shut: style === ActionButton.Shut
    name: text
    more: second
    implicitWidth: label.implicitWidth + 24
    implicitHeight: Math.max(tall ? Theme.verdict : Theme.target, label.implicitHeight + 12)

    Rectangle {
        visible: !root.shut
        anchors.fill: parent
        radius: Theme.radius
        color: root.background
        border {
            width: 2
            color: root.inked ? Theme.ink : root.solid ? root.background : root.foreground
        }
    }

    DashEdge {
        visible: root.shut
        anchors.fill: parent
        fill: Theme.paper
        colour: Theme.ink
    }

    KeyLabel {
        id: label
        anchors.centerIn: parent
        room: root.width - 24
        text: root.text
        second: root.second
        icon: root.icon
        stacked: root.stacked
        iconSize: root.tall && root.second !== "" ? 32 : 24
        colour: root.foreground
        figures: root.solid || root.tall
        size: root.wordSize > 0 ? root.wordSize : root.tall ? (root.solid || root.shut ? Theme.head : Theme.lead)
            : root.solid ? Theme.lead : Theme.text
    }
}
