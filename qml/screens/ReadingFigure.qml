// SPDX-License-Identifier: GPL-3.0-or-later
// The figure as it is typed, its unit, its uncertainty, and what it would be judged as.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

Item {
    id: line

    required property ReadingEntry entry

    implicitHeight: Math.max(figure.height, verdict.height)

    FigureText {
        id: figure
        width: Math.min(implicitWidth, line.width * 0.5)
        text: line.entry.typed
    }
    Rectangle { id: caret; x: figure.text === "" ? 0 : figure.width + 4; y: 4; width: 3; height: 38; color: Theme.route }
    LeadText {
        id: unit
        anchors { left: caret.right; leftMargin: 8; baseline: figure.baseline }
        text: line.entry.unitText
    }
    Caption {
        anchors { left: unit.right; leftMargin: 10; baseline: figure.baseline }
        text: line.entry.uncertaintyText
    }
    Row {
        id: verdict
        visible: !isNaN(line.entry.value)
        anchors { right: parent.right; verticalCenter: parent.verticalCenter }
        spacing: 6

        VerdictMark { width: 24; height: 24; mark: line.entry.verdict }
        LeadText { anchors.verticalCenter: parent.verticalCenter; text: line.entry.verdictWord }
    }
}
