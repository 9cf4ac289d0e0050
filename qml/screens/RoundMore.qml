// SPDX-License-Identifier: GPL-3.0-or-later
// What else can be said of the reading in hand: with what it is measured, in which unit, that it cannot be reached, that
// it is a finding.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

SheetPanel {
    id: sheet

    required property ReadingEntry entry
    property string wiring

    signal wantsNoAccess()
    signal wantsFinding()

    CautionBand { visible: sheet.entry.caution !== ""; width: parent.width; text: sheet.entry.caution }
    BodyText { width: parent.width; text: sheet.entry.act }
    BodyText { visible: text !== ""; width: parent.width; text: sheet.entry.diagnosisLong; font.bold: true }
    BodyText { visible: text !== ""; width: parent.width; text: sheet.entry.tell }
    Caption { visible: text !== ""; width: parent.width; text: sheet.wiring }

    Caption { width: parent.width; text: Words.of("window.round-measured-with") }
    Flow {
        width: parent.width
        spacing: Theme.gap

        Repeater {
            model: sheet.entry.choices

            ChoiceKey {
                required property string modelData
                objectName: "instrument-" + modelData
                text: modelData !== "" ? modelData : Words.of("window.no-instrument")
                chosen: sheet.entry.instrument === modelData
                onClicked: sheet.entry.instrument = modelData
            }
        }
    }
    Flow {
        width: parent.width
        spacing: Theme.gap

        Repeater {
            model: sheet.entry.units

            ChoiceKey {
                required property int index
                required property string modelData
                objectName: "unit-" + index
                text: modelData
                chosen: sheet.entry.unit === index
                onClicked: sheet.entry.unit = index
            }
        }
    }

    foot: ButtonRow {
        width: parent.width

        VerdictButton {
            objectName: "no-access"
            mark: Verdict.NoAccess
            text: Words.of("window.no-access")
            onClicked: sheet.wantsNoAccess()
        }
        ActionButton {
            objectName: "keep-finding"
            tall: true
            style: sheet.entry.verdict === Verdict.Fail ? ActionButton.Fail : ActionButton.Plain
            text: Words.of("window.round-keep-finding")
            wordSize: Theme.lead
            onClicked: sheet.wantsFinding()
        }
    }
}
