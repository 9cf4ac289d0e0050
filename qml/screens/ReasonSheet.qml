// SPDX-License-Identifier: GPL-3.0-or-later
// A reason in words, asked for before something is recorded that needs one.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

SheetPanel {
    id: sheet

    property string act
    property int mark: Verdict.NoAccess
    property string draft
    property string problem

    signal given(string words)

    TextEntry {
        id: words
        objectName: "reason"
        width: parent.width
        label: Words.of("window.in-your-words")
        multiline: true
        problem: sheet.problem
        text: Whereabouts.draft(sheet.draft)
        onEdited: text => Whereabouts.setDraft(sheet.draft, text)
    }

    foot: VerdictButton {
        objectName: "give-reason"
        width: parent.width
        text: sheet.act
        second: words.text.trim() === "" ? Words.of("window.reason-first") : ""
        shut: words.text.trim() === ""
        mark: sheet.mark
        onClicked: {
            const given = words.text.trim();
            Whereabouts.setDraft(sheet.draft, "");
            sheet.given(given);
        }
    }
}
