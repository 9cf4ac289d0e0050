// SPDX-License-Identifier: GPL-3.0-or-later
// All loops that have been read, side by side: one that creeps away from its neighbours shows here first.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

Item {
    id: together

    readonly property bool any: loops.count > 0

    LoopReadings { id: loops }

    LeadText {
        id: question
        width: parent.width
        text: loops.question
    }
    Caption {
        id: answer
        anchors { top: question.bottom; topMargin: 2 }
        width: parent.width
        text: loops.answer
    }
    ChartPicture {
        anchors { top: answer.bottom; topMargin: 8; bottom: parent.bottom; left: parent.left; right: parent.right }
        points: loops
        unit: loops.unit
        axis: loops.axis
        nominal: loops.nominal
        Accessible.role: Accessible.Graphic
        Accessible.name: Words.join("window.join.on", [loops.question, loops.answer])
    }
}
