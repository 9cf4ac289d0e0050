// SPDX-License-Identifier: GPL-3.0-or-later
// The reading in hand, large, on its scale, with the one line that measuring can say of it.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

Rectangle {
    id: band

    required property ReadingEntry entry
    required property string number
    required property string label
    /// The diagnosis stands elsewhere, in full.
    property bool bare: false
    /// What else can be done with it is reached from here.
    property bool more: false

    signal wantsMore()

    readonly property string line: entry.problem !== "" || bare ? "" : entry.diagnosis

    implicitHeight: below.y + below.height + 6
    color: Theme.openBg

    Rectangle { width: 6; height: parent.height; color: Theme.route }

    BodyText {
        id: title
        x: Theme.margin
        y: 4
        width: Math.min(Math.ceil(implicitWidth), limits.visible ? parent.width - x - 12 - limits.width - verdict.width - 24 : parent.width - x - verdict.width - 24)
        text: Words.join("window.join.on", [band.number, band.label])
        font.bold: true
    }
    Caption {
        id: limits
        visible: text !== "" && Math.ceil(title.implicitWidth) < band.width - 2 * Theme.margin - implicitWidth - verdict.width - 16
        anchors { left: title.right; leftMargin: 8; baseline: title.baseline }
        text: band.entry.limitsText
        color: Theme.ink2
        wrapMode: Text.NoWrap
    }
    Row {
        id: verdict
        visible: band.entry.valueText !== ""
        anchors { right: parent.right; rightMargin: Theme.margin }
        y: 3
        spacing: 6

        VerdictMark { width: 22; height: 22; mark: band.entry.verdict }
        BodyText { anchors.verticalCenter: parent.verticalCenter; text: band.entry.verdictWord; font.bold: true; wrapMode: Text.NoWrap }
    }

    FigureText {
        id: figure
        x: Theme.margin
        anchors { top: title.bottom; topMargin: -3 }
        width: Math.min(Math.ceil(implicitWidth), band.width * 0.45)
        text: band.entry.valueText
        color: band.entry.fresh ? Theme.ink : Theme.ink2
        font.pixelSize: text.length > 5 ? Theme.head : Theme.figure
        height: Math.max(46, implicitHeight)
        verticalAlignment: Text.AlignVCenter
    }
    Rectangle {
        id: caret
        x: figure.text === "" ? Theme.margin : figure.x + figure.width + 4
        y: figure.y + 7
        width: 3
        height: 38
        color: Theme.route
    }
    LeadText {
        id: unit
        anchors { left: caret.right; leftMargin: 6 }
        y: figure.y + 19
        text: band.entry.unitText
        wrapMode: Text.NoWrap
    }
    IconButton {
        id: moreKey
        objectName: "more"
        visible: band.more
        anchors { right: parent.right; rightMargin: visible ? 8 : Theme.margin - width; verticalCenter: figure.verticalCenter }
        icon: "more"
        name: Words.of("window.more")
        framed: false
        onClicked: band.wantsMore()
    }
    ScalePicture {
        visible: !isNaN(lower) || !isNaN(upper)
        anchors { right: moreKey.left; rightMargin: moreKey.visible ? 4 : 0; left: parent.left; leftMargin: Math.max(142, unit.x + unit.width + 12); verticalCenter: figure.verticalCenter }
        height: 38
        lower: band.entry.lower
        upper: band.entry.upper
        value: band.entry.value
        uncertainty: band.entry.uncertainty
        mark: band.entry.verdict
        Accessible.role: Accessible.Graphic
        Accessible.name: Words.join("window.join.list", [band.entry.valueText, band.entry.unitText, band.entry.limitsText, band.entry.verdictWord])
    }
    Column {
        id: below
        anchors { top: figure.bottom; left: parent.left; right: parent.right; leftMargin: Theme.margin; rightMargin: Theme.margin }

        Caption {
            visible: band.line !== ""
            width: parent.width
            horizontalAlignment: implicitWidth < width * 0.62 ? Text.AlignRight : Text.AlignLeft
            text: band.line
            color: Theme.ink
        }
        ProblemLine { width: parent.width; text: band.entry.problem }
    }
}
