// SPDX-License-Identifier: GPL-3.0-or-later
// A reading with its small scale; leads to the device whose card shows it.
import QtQuick
import Proofwalk.Parts

Pressable {
    id: line

    required property string subject
    required property string step
    required property string figure
    required property string limits
    required property string time
    required property string tag
    required property string word
    required property real value
    required property real uncertainty
    required property real lower
    required property real upper
    required property int verdict
    property bool broad: false

    signal taken()

    name: Words.join("window.join.list", [subject, step, figure, limits, word, time])
    shut: tag === ""
    focusInset: 2
    activeFocusOnTab: false
    implicitHeight: Math.max(64, words.height + 12, figures.height + 12)
    height: implicitHeight
    onClicked: taken()

    Rectangle { anchors.fill: parent; color: line.inked ? Theme.pick : Theme.paper }
    VerdictMark {
        x: Theme.margin
        anchors.verticalCenter: parent.verticalCenter
        width: 20
        height: 20
        mark: line.verdict
    }
    Column {
        id: words
        x: 48
        anchors.verticalCenter: parent.verticalCenter
        width: line.width * 0.5 - x

        BodyText { width: parent.width; text: line.subject; font.bold: true; Accessible.ignored: true }
        Caption { width: parent.width; text: line.step; Accessible.ignored: true }
    }
    Column {
        id: figures
        x: line.width * 0.5 + 8
        anchors.verticalCenter: parent.verticalCenter
        width: line.width - x - Theme.margin

        BodyText { width: parent.width; text: line.figure; font.bold: true; Accessible.ignored: true }
        DoorwayScale {
            visible: !isNaN(line.lower) || !isNaN(line.upper)
            width: Math.min(parent.width, 220)
            height: visible ? 20 : 0
            lower: line.lower
            upper: line.upper
            value: line.value
            uncertainty: line.uncertainty
            mark: line.verdict
        }
        Caption { width: parent.width; text: line.limits; visible: text !== ""; Accessible.ignored: true }
    }
    RowRule { anchors { left: parent.left; right: parent.right; bottom: parent.bottom } }
}
