// SPDX-License-Identifier: GPL-3.0-or-later
// A reading of the device in hand: what to measure, the figure on its scale as it is typed, the pad under the thumb.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: panel

    required property DeviceCard card

    signal wantsFault()
    signal wantsMore()
    signal recorded()

    Rectangle { anchors.fill: parent; color: Theme.paper }

    ReadingEntry {
        id: entry
        subject: panel.card.subject
        step: panel.card.stepNames.length > 0 ? panel.card.stepNames[0] : ""
        onRecorded: panel.recorded()
    }

    Scroller {
        id: words
        anchors { top: parent.top; topMargin: 8; left: parent.left; right: parent.right; bottom: pad.top; bottomMargin: 8 }
        name: Words.of("window.reading")
        contentHeight: column.height

        Column {
            id: column
            width: words.width
            spacing: 6

            CautionBand { visible: entry.caution !== ""; width: parent.width; text: entry.caution; height: visible ? implicitHeight : 0 }

            Column {
                x: Theme.margin
                width: parent.width - 2 * x
                spacing: 2

                BodyText { width: parent.width; text: entry.act; font.bold: true }
                Caption { width: parent.width; text: entry.expect; color: Theme.ink }
                Caption { width: parent.width; visible: entry.never !== ""; text: entry.never; font.bold: true; color: Theme.ink }
            }
            ReadingFigure {
                x: Theme.margin
                width: parent.width - 2 * x
                entry: entry
            }
            ScalePicture {
                visible: !isNaN(entry.lower) || !isNaN(entry.upper)
                width: parent.width
                height: visible ? 76 : 0
                lower: entry.lower
                upper: entry.upper
                value: entry.value
                uncertainty: entry.uncertainty
                setPoint: entry.setPoint
                mark: entry.verdict
                lowerText: entry.lowerText
                upperText: entry.upperText
                valueText: entry.valueText
            }
            Caption {
                x: Theme.margin
                width: parent.width - 2 * x
                visible: text !== ""
                text: entry.problem !== "" ? "" : entry.diagnosis !== "" ? entry.diagnosis : entry.wantingWords
                color: Theme.ink
            }
            ProblemLine {
                x: Theme.margin
                width: parent.width - 2 * x
                visible: text !== ""
                text: entry.problem !== "" ? entry.problem : panel.card.problem
            }
        }
    }

    NumberPad {
        id: pad
        objectName: "pad"
        anchors { left: parent.left; right: parent.right; bottom: keys.top; margins: Theme.margin; bottomMargin: Theme.gap }
        focus: true
        unitText: entry.unitText
        leftEnd: entry.leftEnd
        rightEnd: entry.rightEnd
        nextText: Words.of("window.keep")
        nextBusy: entry.busy
        nextShut: !entry.complete
        onDigit: figure => entry.digit(figure)
        onPoint: entry.point()
        onSign: entry.sign()
        onErase: entry.erase()
        onEnd: which => which < 0 ? entry.nextUnit() : entry.end(which)
        onNext: entry.record()
    }

    ButtonRow {
        id: keys
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: Theme.margin; bottomMargin: 8 }

        IconButton {
            objectName: "more"
            icon: "more"
            name: Words.of("window.more")
            onClicked: panel.wantsMore()
        }
        ActionButton {
            objectName: "not-as-planned"
            text: Words.of("window.not-as-planned")
            onClicked: panel.wantsFault()
        }
        ActionButton {
            objectName: "with-what"
            text: entry.instrument !== "" ? entry.instrument : Words.of("window.no-instrument")
            second: entry.uncertaintyText
            onClicked: entry.nextInstrument()
        }
    }
}
