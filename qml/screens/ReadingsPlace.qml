// SPDX-License-Identifier: GPL-3.0-or-later
// The readings: one question with its chart and the same numbers beneath, or every figure on its own scale.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: page

    property bool wide: false
    property bool full: false
    property bool every: false ///< all figures instead of the question

    function open(tag: string) { if (tag !== "") Whereabouts.go(Whereabouts.Walk, "card", tag); }

    LoopReadings { id: loops }
    ReadingList { id: readings }

    Rectangle { anchors.fill: parent; color: Theme.paper }

    HeadText {
        id: question
        x: page.wide ? 24 : Theme.margin
        y: 14
        width: page.width - 2 * x - (page.wide ? other.width + 16 : 0)
        text: page.every ? Words.of("window.every-reading") : loops.question
    }
    BodyText {
        id: answer
        anchors { top: question.bottom; topMargin: 4; left: question.left }
        width: question.width
        color: Theme.ink2
        text: page.every ? Words.of(all.count > 0 ? "window.every-reading-more" : "window.no-readings") : loops.answer
    }
    ActionButton {
        id: other
        objectName: "other-question"
        x: page.wide ? page.width - width - 24 : Theme.margin
        y: page.wide ? 14 : answer.y + answer.height + 8
        width: page.wide ? implicitWidth + 16 : page.width - 2 * Theme.margin
        text: page.every ? Words.of("window.the-loops") : Words.of("window.every-reading")
        onClicked: page.every = !page.every
    }

    ChartPicture {
        id: chart
        objectName: "chart"
        visible: !page.every && table.count > 0
        anchors { top: page.wide ? answer.bottom : other.bottom; topMargin: 14; left: parent.left; right: parent.right }
        height: visible ? Math.min(page.height * 0.46, page.wide ? 400 : 260) : 0
        points: loops
        unit: loops.unit
        axis: loops.axis
        nominal: loops.nominal
        Accessible.role: Accessible.Graphic
        Accessible.name: Words.join("window.join.on", [loops.question, loops.answer])
    }

    ListColumn {
        id: table
        objectName: "loop-table"
        visible: !page.every
        anchors { top: chart.bottom; topMargin: 6; left: parent.left; right: parent.right; bottom: parent.bottom }
        name: loops.question
        model: loops
        delegate: LoopLine {
            width: table.width
            broad: page.wide
            unit: loops.unit
            onTaken: page.open(tag)
        }
        onActivated: row => page.open((itemAtIndex(row) as LoopLine).tag)
    }
    ListColumn {
        id: all
        objectName: "reading-table"
        visible: page.every
        anchors { top: page.wide ? answer.bottom : other.bottom; topMargin: 10; left: parent.left; right: parent.right; bottom: parent.bottom }
        name: Words.of("window.every-reading")
        model: readings
        delegate: ReadingLine {
            width: all.width
            broad: page.wide
            onTaken: page.open(tag)
        }
        onActivated: row => page.open((itemAtIndex(row) as ReadingLine).tag)
    }
}
