// SPDX-License-Identifier: GPL-3.0-or-later
// The steps as a stair: what is done in one tread, what is in hand in full, what is ahead in one more.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

Column {
    id: stair

    required property DeviceCard card
    signal unfold()
    signal wantsMore()

    /// There is no room for what is done, nor need: all steps stand on the sheet.
    property bool brief: false

    StepTread {
        visible: stair.card.doneWords !== "" && !stair.brief
        height: visible ? implicitHeight : 0
        width: stair.width
        objectName: "steps-done"
        treadState: StepTread.Done
        first: true
        depth: 2
        touchable: true
        mark: stair.card.doneMark
        text: stair.card.doneWords
        onClicked: stair.unfold()
    }

    CautionBand {
        visible: stair.card.caution !== "" && stair.card.inHand >= 0
        height: visible ? implicitHeight : 0
        width: stair.width
        text: stair.card.caution
    }

    StepTread {
        id: here
        visible: stair.card.inHand >= 0
        height: visible ? implicitHeight : 0
        width: stair.width
        treadState: StepTread.Here
        first: stair.card.doneWords === "" || stair.brief
        depth: 1
        text: stair.card.possible ? "" : stair.card.needsWords

        Column {
            width: here.width - 26 - Theme.margin - 10
            spacing: 6

            Repeater {
                model: stair.card.steps

                Column {
                    id: step

                    required property string act
                    required property string expect
                    required property string never

                    width: parent.width
                    spacing: 1

                    BodyText { width: parent.width; text: step.act; font.bold: true }
                    Caption { width: parent.width; text: step.expect; visible: text !== ""; color: Theme.ink }
                    Caption { width: parent.width; text: step.never; visible: text !== ""; font.bold: true; color: Theme.ink }
                }
            }

            Caption {
                visible: stair.card.pattern !== ""
                width: parent.width
                text: Words.with("window.sounds", "pattern", stair.card.pattern)
            }
        }
    }

    StepTread {
        width: stair.width
        objectName: "steps-ahead"
        treadState: StepTread.Folded
        touchable: true
        text: stair.card.aheadWords !== "" ? stair.card.aheadWords : Words.of("window.nothing-ahead")
        onClicked: stair.wantsMore()
    }
    BodyText {
        visible: stair.card.inHand < 0
        x: Theme.margin
        topPadding: 12
        width: stair.width - 2 * Theme.margin
        text: !stair.card.sheet ? Words.of("window.no-sheet") : Words.of("window.all-answered")
    }
}
