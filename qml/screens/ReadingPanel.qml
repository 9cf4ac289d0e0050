// SPDX-License-Identifier: GPL-3.0-or-later
// A reading of the device in hand: what to measure, the figure on its scale as it is typed, the pad under the thumb.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: panel

    required property DeviceCard card
    /// The words have been read, where they and the pad do not fit on one page.
    property bool read: false
    readonly property bool fits: height - pad.height - keys.height - figure.height - 48 >= column.height
    readonly property bool gate: !read && !fits && !entry.fresh // what is half typed stays in reach as its words grow

    signal wantsFault()
    signal wantsMore()
    signal recorded()

    Keys.forwardTo: [pad] // figures are for the pad, wherever on the page the keyboard is

    Rectangle { anchors.fill: parent; color: Theme.paper }

    ReadingEntry {
        id: entry
        subject: panel.card.subject
        step: panel.card.stepNames.length > 0 ? panel.card.stepNames[0] : ""
        onRecorded: panel.recorded()
        onStepChanged: panel.read = fresh // half typed already: it was read
    }

    Scroller {
        id: words
        anchors { top: parent.top; topMargin: 8; left: parent.left; right: parent.right; bottom: panel.gate ? ready.top : typed.top; bottomMargin: 4 }
        visible: height > 32
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
        }
    }

    // What is typed is always in sight; its scale comes with the first digit where the words need the room until then.
    Column {
        id: typed
        readonly property bool roomy: panel.height - pad.height - keys.height - figure.height - 144 > column.height

        visible: !panel.gate

        anchors { left: parent.left; right: parent.right; bottom: pad.top; bottomMargin: 8 }
        spacing: 2

        ReadingFigure {
            id: figure
            x: Theme.margin
            width: parent.width - 2 * x
            entry: entry
        }
        ScalePicture {
            visible: (!isNaN(entry.lower) || !isNaN(entry.upper)) && (typed.roomy || !isNaN(entry.value))
            width: parent.width
            height: visible ? 96 : 0
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

    NumberPad {
        id: pad
        objectName: "pad"
        visible: !panel.gate
        anchors { left: parent.left; right: parent.right; bottom: keys.top; margins: Theme.margin; bottomMargin: Theme.gap }
        focus: !panel.gate
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

    ActionButton {
        id: ready
        objectName: "words-read"
        visible: panel.gate
        focus: panel.gate
        anchors { left: parent.left; right: parent.right; bottom: keys.top; margins: Theme.margin; bottomMargin: Theme.gap }
        tall: true
        style: ActionButton.Filled
        text: Words.of("window.reading.ready")
        onClicked: { panel.read = true; pad.forceActiveFocus(Qt.OtherFocusReason); }
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
