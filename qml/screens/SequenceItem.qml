// SPDX-License-Identifier: GPL-3.0-or-later
// One step on the strip: behind you with its mark and figure, in hand with all its words, or ahead.
import QtQuick
import Proofwalk.Parts

Item {
    id: item

    required property int index
    required property string act
    required property string expect
    required property string caution
    required property string never
    required property bool timed
    required property bool core
    required property int verdict
    required property int seen
    required property string figure
    required property bool answered
    required property bool here
    required property bool possible
    property bool begun: false ///< the route comes from above
    property bool last: false
    property bool brief: false ///< second lines only in the step in hand
    default property alias more: holder.data

    signal taken()

    implicitHeight: here ? warning.height + inside.height + 14 : Math.max(48, plain.height + 12)

    CautionBand {
        id: warning
        visible: item.here && (item.caution !== "" || item.never !== "")
        width: parent.width
        height: visible ? implicitHeight : 0
        title: item.never
        text: item.caution
    }
    Rectangle {
        visible: item.here
        anchors { fill: parent; topMargin: warning.height }
        color: Theme.openBg

        Rectangle { width: 6; height: parent.height; color: Theme.route }
    }
    // The route: a band behind you, footprints ahead.
    Rectangle {
        x: 24
        y: warning.height
        width: 5
        height: item.answered ? parent.height - y : 20
        visible: item.answered || (item.here && item.begun)
        color: Theme.route
    }
    Footprints {
        visible: !item.answered && !item.last
        x: 20
        y: item.here ? warning.height + 46 : (item.height + 22) / 2 + 6
        width: 12
        height: Math.max(0, parent.height - y - 2)
        vertical: true
    }

    Pressable {
        anchors { fill: parent; topMargin: warning.height }
        visible: !item.here
        activeFocusOnTab: false // the strip is one stop; the arrows go from step to step
        name: item.act
        more: Words.join("window.join.list", [item.figure, item.expect])
        focusInset: 2
        onClicked: item.taken()
    }

    VerdictMark {
        visible: !item.here || item.answered
        x: 26 - width / 2
        y: warning.height + (item.here ? 10 : (parent.height - height) / 2)
        width: 22
        height: 22
        mark: item.verdict
        seen: item.seen
    }
    Person {
        visible: item.here && !item.answered
        x: 26 - width / 2
        y: warning.height + 6
        width: 28
        height: 28
        heading: 180
    }

    Column {
        id: plain
        visible: !item.here
        x: 52
        anchors.verticalCenter: parent.verticalCenter
        width: parent.width - x - Theme.margin - (figureWord.visible ? figureWord.width + 8 : 0)

        BodyText { width: parent.width; text: item.act; color: item.answered ? Theme.ink2 : Theme.ink; Accessible.ignored: true }
        Caption {
            visible: text !== "" && !item.brief
            width: parent.width
            text: Words.join("window.join.about", [item.core ? "" : Words.of("window.sequence-extra"), item.expect])
            Accessible.ignored: true
        }
    }
    FigureText {
        id: figureWord
        visible: !item.here && text !== ""
        anchors { right: parent.right; rightMargin: Theme.margin; verticalCenter: parent.verticalCenter }
        text: item.figure
        font.pixelSize: Theme.text
        Accessible.ignored: true
    }
    Column {
        id: inside
        visible: item.here
        x: 52
        y: warning.height + 7
        width: parent.width - x - Theme.margin
        spacing: 2

        LeadText { width: parent.width; text: item.act }
        BodyText { visible: text !== ""; width: parent.width; text: item.expect }
        Caption { visible: !item.core; width: parent.width; text: Words.of("window.sequence-extra") }
        Column { id: holder; width: parent.width; spacing: 4 }
    }
    RowRule { x: 52; width: parent.width - x; anchors.bottom: parent.bottom; visible: !item.here }
}
