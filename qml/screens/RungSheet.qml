// SPDX-License-Identifier: GPL-3.0-or-later
// What is missing on one tread, a sentence each; a sentence leads to where it is put right.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

SheetPanel {
    id: sheet

    property int tread: -1

    signal way()

    title: Words.of(rungs.count > 0 ? "window.ladder.list" : "window.ladder.list-done")

    RungList {
        id: rungs
        tread: sheet.tread
    }

    Column {
        x: -12
        width: parent.width + 24

        Repeater {
            model: rungs
            delegate: PlainRow {
                required property int index
                required property string sentence
                required property int verdict

                objectName: "rung-" + index
                width: parent ? parent.width : 0
                mark: verdict
                title: sentence
                onClicked: {
                    sheet.dismissed();
                    rungs.go(index);
                }
            }
        }
    }

    foot: ActionButton {
        objectName: "go-there"
        width: parent ? parent.width : 0
        style: ActionButton.Filled
        text: Words.with("window.ladder.go-to", "place",
                         Words.of(sheet.tread === Tread.Plan ? "window.place.plan"
                                : sheet.tread === Tread.Findings ? "window.place.findings" : "window.place.walk"))
        onClicked: {
            sheet.dismissed();
            sheet.way();
        }
    }
}
