// SPDX-License-Identifier: GPL-3.0-or-later
// A repair: what was touched, what was done, and before it is kept what must be tested again because of it.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

SheetPanel {
    id: sheet

    required property string key
    readonly property string missing: retests.touched.length === 0 ? Words.of("window.repair.missing-touched")
                                    : words.text.trim() === "" ? Words.of("window.repair.missing-words") : ""

    signal done()

    title: Words.of("window.repair.title")

    FindingActs {
        id: acts
        key: sheet.key
        onTaken: {
            Whereabouts.setDraft("repair-words/" + sheet.key, "");
            Whereabouts.setDraft("repair-touched/" + sheet.key, "");
            sheet.done();
        }
    }
    RetestList {
        id: retests
        key: sheet.key
        draft: Whereabouts.draft("repair-touched/" + sheet.key)
    }

    Column {
        width: parent.width

        LeadText { width: parent.width; text: Words.of("window.repair.what") }
        Grid {
            id: grid
            width: parent.width
            columns: width >= 300 ? 2 : 1
            columnSpacing: Theme.gap

            Repeater {
                model: retests.touchable

                Toggle {
                    required property int index
                    required property string modelData

                    objectName: "touched-" + modelData
                    width: (grid.width - Theme.gap * (grid.columns - 1)) / grid.columns
                    text: Words.of("window.touched." + modelData)
                    on: retests.marks[index]
                    onToggled: wanted => {
                        retests.turn(modelData, wanted);
                        Whereabouts.setDraft("repair-touched/" + sheet.key, retests.draft);
                    }
                }
            }
        }
    }
    TextEntry {
        id: words
        objectName: "repair-words"
        width: parent.width
        label: Words.of("window.repair.words")
        placeholder: Words.of("window.repair.words-example")
        multiline: true
        text: Whereabouts.draft("repair-words/" + sheet.key)
        onEdited: text => Whereabouts.setDraft("repair-words/" + sheet.key, text)
    }
    Column {
        id: preview
        width: parent.width

        LeadText { width: parent.width; text: Words.of("window.repair.preview") }
        Caption {
            width: parent.width
            bottomPadding: 4
            text: retests.summary === "" ? Words.of("window.repair.nothing-yet") : retests.summary
        }
        Repeater {
            id: rows
            objectName: "retests"
            model: retests
            delegate: RetestItem { width: preview.width }
        }
    }

    foot: [
        ProblemLine { width: parent.width; text: acts.problem },
        ActionButton {
            objectName: "keep-repair"
            width: parent.width
            tall: true
            style: sheet.missing === "" ? ActionButton.Filled : ActionButton.Shut
            busy: acts.busy
            text: Words.of("window.repair.save")
            second: sheet.missing !== "" ? sheet.missing : retests.summary
            onClicked: acts.repair(retests.touched, words.text)
        }
    ]
}
