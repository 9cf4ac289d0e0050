// SPDX-License-Identifier: GPL-3.0-or-later
// What a finding means, in words for the customer, and by when it is to be put right.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

SheetPanel {
    id: sheet

    required property string key
    readonly property string draft: "describe/" + key

    signal done()

    title: Words.of("window.describe.title")
    Component.onCompleted: {
        const kept = Whereabouts.draft(draft + "/due");
        if (kept !== "") due.take(kept);
        else due.take(finding.due);
    }

    FindingHistory { id: finding; key: sheet.key }
    DueChoice {
        id: due
        onChanged: if (day !== "" && day !== finding.due) Whereabouts.setDraft(sheet.draft + "/due", day)
    }
    FindingActs {
        id: acts
        key: sheet.key
        onTaken: {
            Whereabouts.setDraft(sheet.draft, "");
            Whereabouts.setDraft(sheet.draft + "/due", "");
            sheet.done();
        }
    }

    BodyText {
        width: parent.width
        text: Words.of(finding.failed ? "window.describe.failed" : "window.describe.not-failed")
    }
    TextEntry {
        id: words
        objectName: "describe-words"
        width: parent.width
        label: Words.of("window.describe.words")
        placeholder: Words.of("window.describe.words-example")
        multiline: true
        text: Whereabouts.draft(sheet.draft) !== "" ? Whereabouts.draft(sheet.draft) : finding.words
        onEdited: text => Whereabouts.setDraft(sheet.draft, text)
    }
    DueDay { visible: finding.failed; width: parent.width; due: due }

    foot: [
        ProblemLine { width: parent.width; text: acts.problem },
        ActionButton {
            readonly property string missing: words.text.trim() === "" ? Words.of("window.sheet.words-missing")
                                            : finding.failed && due.day === "" ? Words.of("window.fault.day-missing") : ""
            objectName: "keep-description"
            width: parent.width
            tall: true
            style: missing === "" ? ActionButton.Filled : ActionButton.Shut
            busy: acts.busy
            text: Words.of("window.describe.save")
            second: missing
            onClicked: acts.describe(finding.failed, words.text, finding.failed ? due.day : "")
        }
    ]
}
