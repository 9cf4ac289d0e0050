// SPDX-License-Identifier: GPL-3.0-or-later
// One subject of a round: its number, what it read, and where that stands in its doorway.
import QtQuick
import Proofwalk.Parts

Pressable {
    id: cell

    required property int index
    required property string number
    required property string label
    required property string figure
    required property double value
    required property double uncertainty
    required property double lower
    required property double upper
    required property int verdict
    required property string verdictWord
    required property bool answered

    property bool current: false
    property bool roomy: false ///< with its label
    readonly property real wantedHeight: roomy ? labelWord.y + labelWord.implicitHeight + 28 : 52

    name: Words.join("window.join.on", [number, label])
    more: Words.join("window.join.list", [figure, verdictWord])
    focusInset: 3
    takesFocus: false
    activeFocusOnTab: false
    Accessible.role: Accessible.Cell
    Accessible.selected: current

    Rectangle {
        anchors { fill: parent; rightMargin: -1; bottomMargin: -1 }
        color: cell.current ? Theme.here : Theme.paper
        border { width: cell.current ? 4 : 1; color: cell.current && Theme.dark ? Theme.hereEdge : Theme.ink }
    }
    FigureText {
        id: numberWord
        x: cell.roomy ? 10 : 7
        y: cell.roomy ? 7 : 5
        width: cell.width / 2
        text: cell.number
        font.pixelSize: cell.roomy ? Theme.lead : Theme.text
        Accessible.ignored: true
    }
    FigureText {
        visible: cell.figure !== ""
        anchors { right: parent.right; rightMargin: 7; baseline: numberWord.baseline }
        text: cell.figure
        font.pixelSize: Theme.text
        Accessible.ignored: true
    }
    VerdictMark {
        visible: cell.figure === ""
        anchors { right: parent.right; rightMargin: 7; verticalCenter: numberWord.verticalCenter }
        width: 18
        height: 18
        mark: cell.verdict
        Accessible.ignored: true
    }
    Caption {
        id: labelWord
        visible: cell.roomy
        x: 10
        y: numberWord.y + numberWord.height
        width: cell.width - 16
        text: cell.label
        color: cell.current ? Theme.ink : Theme.ink2
        Accessible.ignored: true
    }
    DoorwayScale {
        visible: !isNaN(cell.lower) || !isNaN(cell.upper)
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: 7; bottomMargin: 5 }
        height: 18
        lower: cell.lower
        upper: cell.upper
        value: cell.value
        uncertainty: cell.uncertainty
        mark: cell.verdict
        Accessible.ignored: true
    }
}
