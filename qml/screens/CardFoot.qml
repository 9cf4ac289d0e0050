// SPDX-License-Identifier: GPL-3.0-or-later
// The verdicts. "As planned" is lowest and largest and says what it answers.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

Column {
    id: foot

    required property DeviceCard card
    readonly property bool acting: card.inHand >= 0 && card.possible

    signal wantsNoAccess()
    signal wantsFault()
    signal wantsState()
    signal wantsNext()
    signal wantsList()

    spacing: Theme.gap

    ProblemLine {
        width: parent.width
        visible: text !== ""
        text: foot.card.problem
    }

    Caption {
        visible: foot.card.nextWords !== "" && foot.acting && foot.width > 340
        width: parent.width
        text: foot.card.nextWords
    }

    ButtonRow {
        id: lesser
        visible: foot.acting
        width: parent.width

        VerdictButton {
            objectName: "no-access"
            text: Words.of("window.no-access")
            mark: Verdict.NoAccess
            onClicked: foot.wantsNoAccess()
        }
        VerdictButton {
            objectName: "not-as-planned"
            text: Words.of("window.not-as-planned")
            mark: Verdict.Fail
            onClicked: foot.wantsFault()
        }
    }

    TrialKeys {
        visible: foot.acting && foot.card.task === DeviceCard.Trials
        height: visible ? implicitHeight : 0
        width: parent.width
        card: foot.card
    }

    VerdictButton {
        objectName: "as-planned"
        visible: foot.acting && foot.card.task !== DeviceCard.Trials
        width: parent.width
        filled: true
        text: Words.of("window.as-planned")
        second: foot.card.answersWords
        busy: foot.card.busy
        onClicked: foot.card.asPlanned()
    }

    ActionButton {
        objectName: "change-state"
        visible: foot.card.inHand >= 0 && !foot.card.possible
        width: parent.width
        text: Words.of("window.change-state")
        second: foot.card.needsWords
        onClicked: foot.wantsState()
    }
    ActionButton {
        objectName: "next-device"
        visible: !foot.acting && foot.card.nextTag !== ""
        width: parent.width
        tall: true
        style: ActionButton.Filled
        text: Words.of("window.go-on")
        second: foot.card.nextWords
        onClicked: foot.wantsNext()
    }
    ActionButton {
        objectName: "to-list"
        visible: !foot.acting
        width: parent.width
        text: Words.of("window.to-list")
        onClicked: foot.wantsList()
    }
}
