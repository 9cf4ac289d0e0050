// SPDX-License-Identifier: GPL-3.0-or-later
// A loop in the table beneath its chart; leads to the first device on it.
import QtQuick
import Proofwalk.Parts

Pressable {
    id: line

    required property string label
    required property string place
    required property string figure
    required property string spread
    required property string limits
    required property string word
    required property string tag
    required property int verdict
    property bool broad: false
    property string unit

    signal taken()

    name: Words.join("window.join.on", [label, place, figure, spread, unit, limits, word])
    shut: tag === ""
    focusInset: 2
    activeFocusOnTab: false
    implicitHeight: Math.max(Theme.target, words.height + 12)
    height: implicitHeight
    onClicked: taken()

    Rectangle { anchors.fill: parent; color: line.inked ? Theme.pick : Theme.paper }
    FigureText {
        x: line.broad ? 24 : Theme.margin
        anchors.verticalCenter: parent.verticalCenter
        width: 40
        text: line.label
        font.pixelSize: Theme.text
        Accessible.ignored: true
    }
    Column {
        id: words
        x: line.broad ? 90 : 60
        anchors.verticalCenter: parent.verticalCenter
        width: number.x - x - 8

        BodyText { width: parent.width; text: line.place; Accessible.ignored: true }
        Caption { width: parent.width; text: line.limits; visible: !line.broad && text !== ""; Accessible.ignored: true }
    }
    FigureText {
        id: number
        x: line.width * (line.broad ? 0.5 : 0.72) - width
        anchors.verticalCenter: parent.verticalCenter
        text: line.figure
        font.pixelSize: Theme.text
        Accessible.ignored: true
    }
    Caption {
        visible: line.broad
        x: number.x + number.width + 10
        anchors.verticalCenter: parent.verticalCenter
        text: line.spread + "  " + line.limits + " " + line.unit
        Accessible.ignored: true
    }
    VerdictMark {
        id: mark
        x: line.width * (line.broad ? 0.82 : 0.76)
        anchors.verticalCenter: parent.verticalCenter
        width: 20
        height: 20
        mark: line.verdict
    }
    BodyText {
        anchors { left: mark.right; leftMargin: 6; verticalCenter: parent.verticalCenter }
        width: line.width - x - 8
        text: line.word
        Accessible.ignored: true
    }
    RowRule { anchors { left: parent.left; right: parent.right; bottom: parent.bottom } }
}
