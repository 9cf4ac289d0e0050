// SPDX-License-Identifier: GPL-3.0-or-later
// All steps of a device with what was answered: each can be taken in hand again, and each answer withdrawn.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

SheetPanel {
    id: sheet

    required property DeviceCard card

    signal chosen(int stage)
    signal withdrawn(int stage)

    title: Words.of("window.all-steps")
    foot: Toggle {
        objectName: "extended"
        visible: sheet.card.extras > 0
        width: parent ? parent.width : 0
        text: Words.with("window.extra-steps", "count", String(sheet.card.extras))
        second: Words.of("window.sequence-extra")
        on: sheet.card.extended
        onToggled: wanted => sheet.card.extended = wanted
    }

    Repeater {
        model: sheet.card.stages

        PlainRow {
            id: row

            required property int index
            required property string figure
            required property string needs
            required property int verdict
            required property bool answered
            required title
            required seen

            width: parent ? parent.width : 0
            mark: verdict
            second: needs !== "" && !answered ? needs : figure
            here: sheet.card.inHand === index
            onClicked: sheet.chosen(index)

            IconButton {
                visible: row.answered
                icon: "withdraw"
                name: Words.with("window.withdraw-of", "steps", row.title)
                onClicked: sheet.withdrawn(row.index)
            }
        }
    }
}
