// SPDX-License-Identifier: GPL-3.0-or-later
// Not as planned: filled in with what failed and what was expected; the person says what was seen instead, how bad it
// is, by when, and adds a photograph and words. Kept, it is an answer, a finding and a photograph.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

SheetPanel {
    id: sheet

    property alias subject: fault.subject
    property alias signalName: fault.signal
    property alias steps: fault.steps

    signal done()

    title: Words.of("window.fault.title")

    FaultDraft { id: fault; onDone: sheet.done() }

    Item {
        width: parent.width
        height: Math.max(heading.height, plate.height)

        Column {
            id: heading
            width: parent.width - plate.width - 12

            Caption {
                width: parent.width
                text: Words.join("window.join.beside", [fault.title, fault.floor, fault.room])
            }
            Row {
                width: parent.width
                spacing: 8

                VerdictMark { id: mark; y: 2; width: 26; height: 26; mark: Verdict.Fail }
                HeadText {
                    objectName: "fault-step"
                    width: parent.width - mark.width - 8
                    text: fault.step
                }
            }
        }
        TagPlate {
            id: plate
            anchors.right: parent.right
            width: Math.min(implicitWidth, parent.width * 0.5)
            text: fault.subject
            failed: true
        }
    }

    Column {
        visible: fault.steps.length > 1
        width: parent.width
        spacing: 4

        Caption { width: parent.width; text: Words.of("window.fault.which") }
        Flow {
            id: choices
            width: parent.width
            spacing: Theme.gap

            Repeater {
                model: fault.steps

                ChoiceKey {
                    required property int index
                    required property string modelData

                    objectName: "failed-" + modelData
                    width: Math.min(implicitWidth, choices.width)
                    text: modelData
                    chosen: fault.chosen === index
                    onClicked: fault.chosen = index
                }
            }
        }
    }

    TwoRooms {
        width: parent.width
        expected: fault.expected

        TextEntry {
            objectName: "fault-seen"
            width: parent.width
            label: Words.of("window.fault.seen")
            multiline: true
            text: fault.seen
            onEdited: text => fault.seen = text
        }
    }

    Column {
        width: parent.width
        spacing: 4

        Caption { width: parent.width; text: Words.of("window.fault.grade") }
        ButtonRow {
            width: parent.width

            ChoiceKey {
                objectName: "deficiency"
                text: Words.of("window.fault.deficiency")
                chosen: fault.deficiency
                onClicked: fault.deficiency = true
            }
            ChoiceKey {
                objectName: "recommendation"
                text: Words.of("window.fault.recommendation")
                chosen: !fault.deficiency
                onClicked: fault.deficiency = false
            }
        }
        Caption {
            visible: !fault.deficiency
            width: parent.width
            text: Words.of("window.fault.recommendation-means")
        }
    }

    DueDay { visible: fault.deficiency; width: parent.width; due: fault.due }

    Item {
        width: parent.width
        height: Math.max(shot.height, words.height)

        Column {
            id: shot
            width: Math.min(132, parent.width * 0.38)
            spacing: 4

            PhotographPicture {
                visible: fault.photograph !== ""
                width: parent.width
                height: width * 0.7
                file: fault.photograph
                Accessible.role: Accessible.Graphic
                Accessible.name: fault.photographName
            }
            ActionButton {
                objectName: "fault-photograph"
                width: parent.width
                height: fault.photograph === "" ? Math.max(96, implicitHeight) : implicitHeight
                icon: "photograph"
                stacked: true
                text: Words.of(fault.photograph === "" ? "window.photograph.choose" : "window.photograph.another")
                onClicked: picker.wanted = true
            }
        }
        TextEntry {
            id: words
            objectName: "fault-words"
            anchors { left: shot.right; leftMargin: Theme.gap; right: parent.right }
            label: Words.of("window.fault.words")
            placeholder: Words.of("window.fault.words-example")
            multiline: true
            text: fault.words
            onEdited: text => fault.words = text
        }
    }

    // Over the sheet, while a picture is chosen.
    Made {
        id: picker

        property bool wanted: false

        parent: sheet
        of: wanted ? pictures : null
    }
    Component {
        id: pictures

        SheetPanel {
            title: Words.of("window.pictures.title")
            onDismissed: picker.wanted = false

            FolderPicker {
                width: parent.width
                onChosen: path => {
                    fault.photograph = path;
                    picker.wanted = false;
                }
            }
        }
    }

    foot: [
        ProblemLine { width: parent.width; text: fault.problem },
        ActionButton {
            objectName: "fault-back"
            width: parent.width
            text: Words.of("window.fault.back")
            onClicked: {
                fault.discard();
                sheet.dismissed();
            }
        },
        VerdictButton {
            objectName: "keep-finding"
            width: parent.width
            filled: fault.ready
            shut: !fault.ready
            mark: Verdict.Fail
            busy: fault.busy
            text: Words.of(fault.deficiency ? "window.fault.keep" : "window.fault.keep-recommendation")
            second: fault.missing
            onClicked: fault.keep()
        }
    ]
}
