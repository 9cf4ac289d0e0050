// SPDX-License-Identifier: GPL-3.0-or-later
// The customer was told of a finding and accepts it, in words of their own.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

SheetPanel {
    id: sheet

    required property string key
    readonly property string draft: "accept/" + key

    signal done()

    title: Words.of("window.accept.title")

    FindingHistory { id: finding; key: sheet.key }
    FindingActs {
        id: acts
        key: sheet.key
        onTaken: {
            Whereabouts.setDraft(sheet.draft + "/words", "");
            Whereabouts.setDraft(sheet.draft + "/name", "");
            sheet.done();
        }
    }

    LeadText { width: parent.width; text: Words.join("window.join.about", [finding.tag, finding.line]) }
    BodyText { width: parent.width; text: Words.of("window.accept.caution") }
    CautionBand { visible: finding.lifeSafety; width: parent.width; text: Words.of("window.accept.life-safety") }
    TextEntry {
        id: who
        objectName: "accept-name"
        width: parent.width
        label: Words.of("window.accept.name")
        text: Whereabouts.draft(sheet.draft + "/name")
        onEdited: text => Whereabouts.setDraft(sheet.draft + "/name", text)
    }
    TextEntry {
        id: words
        objectName: "accept-words"
        width: parent.width
        label: Words.of("window.accept.words")
        placeholder: Words.of("window.accept.words-example")
        multiline: true
        text: Whereabouts.draft(sheet.draft + "/words")
        onEdited: text => Whereabouts.setDraft(sheet.draft + "/words", text)
    }

    foot: [
        ProblemLine { width: parent.width; text: acts.problem },
        ActionButton {
            readonly property bool complete: who.text.trim() !== "" && words.text.trim() !== ""
            objectName: "keep-acceptance"
            width: parent.width
            tall: true
            style: complete ? ActionButton.Filled : ActionButton.Shut
            busy: acts.busy
            text: Words.of("window.accept.save")
            second: complete ? "" : Words.of("window.accept.missing")
            onClicked: acts.accept(who.text, words.text)
        }
    ]
}
