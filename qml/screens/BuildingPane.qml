// SPDX-License-Identifier: GPL-3.0-or-later
// The building cut open, the room in hand from above, and what the marks mean: beside list and card in a full window.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

Rectangle {
    id: pane

    color: Theme.film

    LeadText {
        id: first
        x: 24
        y: 16
        width: parent.width - 48
        text: Words.of("window.cut-open")
        font.pixelSize: Theme.text
    }
    SectionPicture {
        id: section
        objectName: "section"
        anchors { top: first.bottom; topMargin: 10; left: parent.left; right: parent.right; margins: 20 }
        height: Math.min(parent.height * 0.42, implicitHeight)
        rooms: RoomList {}
        showWords: true
        showMarks: true
        Accessible.role: Accessible.Graphic
        Accessible.name: Words.of("window.cut-open")
    }
    LeadText {
        id: second
        visible: Whereabouts.page === "card"
        anchors { top: section.bottom; topMargin: 16; left: parent.left; leftMargin: 24 }
        width: parent.width - 48
        text: Words.of("window.from-above")
        font.pixelSize: Theme.text
    }
    RoomPicture {
        visible: Whereabouts.page === "card"
        anchors { top: second.bottom; topMargin: 10; left: parent.left; right: parent.right; bottom: legend.top; margins: 20 }
        spots: SpotList { id: spots; tag: Whereabouts.subject }
        onSpotTapped: row => Whereabouts.go(Whereabouts.Walk, "card", spots.tagAt(row))
        Accessible.role: Accessible.Graphic
        Accessible.name: Words.of("window.from-above")
    }

    Grid {
        id: legend
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: 24 }
        columns: 2
        columnSpacing: 20
        rowSpacing: 10

        Repeater {
            model: VerdictCount {}

            Row {
                id: row

                required property int verdict
                required property string words

                width: (legend.width - legend.columnSpacing) / 2
                spacing: 12

                VerdictMark { width: 22; height: 22; mark: row.verdict }
                BodyText { text: row.words; anchors.verticalCenter: parent.verticalCenter }
            }
        }
    }
}
