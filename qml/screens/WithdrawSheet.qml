// SPDX-License-Identifier: GPL-3.0-or-later
// Takes one line of the history out of the result, with a reason; the record keeps both.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

SheetPanel {
    id: sheet

    required property string key

    signal done()

    function forget() {
        Whereabouts.setDraft("withdraw/" + key, "");
        Whereabouts.setDraft("withdrawing/" + key, "");
    }

    title: Words.of("window.withdraw.title")

    FindingActs {
        id: acts
        key: sheet.key
        onTaken: { sheet.forget(); sheet.done(); }
    }

    LeadText { width: parent.width; text: finding.titleOf(Whereabouts.draft("withdrawing/" + sheet.key)) }
    BodyText { width: parent.width; text: Words.of("window.withdraw.explained") }
    FindingHistory { id: finding; key: sheet.key }
    TextEntry {
        id: why
        objectName: "withdraw-reason"
        width: parent.width
        label: Words.of("window.withdraw.reason")
        placeholder: Words.of("window.withdraw.reason-example")
        multiline: true
        text: Whereabouts.draft("withdraw/" + sheet.key)
        onEdited: text => Whereabouts.setDraft("withdraw/" + sheet.key, text)
    }

    foot: [
        ProblemLine { width: parent.width; text: acts.problem },
        ActionButton {
            objectName: "keep-withdrawal"
            width: parent.width
            tall: true
            icon: "withdraw"
            style: why.text.trim() !== "" ? ActionButton.Filled : ActionButton.Shut
            busy: acts.busy
            text: Words.of("window.withdraw.save")
            second: why.text.trim() !== "" ? "" : Words.of("window.withdraw.missing")
            onClicked: acts.withdraw(Whereabouts.draft("withdrawing/" + sheet.key), why.text)
        }
    ]
}
