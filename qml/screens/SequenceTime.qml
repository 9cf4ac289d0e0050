// SPDX-License-Identifier: GPL-3.0-or-later
// The time of the step in hand: the figure and its corridor.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

Column {
    id: time

    required property ReadingEntry entry
    required property Stopwatch watch

    spacing: 2

    Row {
        width: parent.width
        spacing: 6

        FigureText {
            id: figure
            objectName: "figure"
            text: time.entry.fresh ? time.entry.valueText : time.watch.figure
            wrapMode: Text.NoWrap
        }
        LeadText { id: unit; anchors.baseline: figure.baseline; text: time.entry.unitText; wrapMode: Text.NoWrap }
        BodyText {
            anchors.baseline: figure.baseline
            width: parent.width - x
            horizontalAlignment: Text.AlignRight
            text: time.watch.aheadWords !== "" ? time.watch.aheadWords : time.entry.fresh ? time.entry.verdictWord : ""
            color: time.watch.running ? Theme.runC : Theme.ink
            font.bold: true
        }
    }
    CorridorBar {
        id: bar
        width: parent.width
        height: 30
        elapsed: time.watch.elapsed
        lower: time.entry.lower
        upper: time.entry.upper
        full: time.entry.corridor
        Accessible.role: Accessible.Graphic
        Accessible.name: Words.join("window.join.on", [time.watch.figure, time.entry.unitText, time.entry.limitsText])
    }
    Item {
        visible: !isNaN(time.entry.lower) || !isNaN(time.entry.upper)
        width: parent.width
        height: visible ? low.height : 0

        FigureText { id: low; visible: !isNaN(time.entry.lower); x: Math.max(0, bar.xOf(time.entry.lower) - width / 2); text: time.entry.lowerText; font.pixelSize: Theme.label; wrapMode: Text.NoWrap }
        FigureText { visible: !isNaN(time.entry.upper); x: Math.min(parent.width - width, Math.max(low.x + low.width + 6, bar.xOf(time.entry.upper) - width / 2)); text: time.entry.upperText; font.pixelSize: Theme.label; wrapMode: Text.NoWrap }
    }
}
