// SPDX-License-Identifier: GPL-3.0-or-later
// A photograph for a finding: chosen from a folder, seen, said what it shows, kept.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

SheetPanel {
    id: sheet

    required property string key
    readonly property string draft: "photograph/" + key
    property string file: Whereabouts.draft(draft + "/file")

    signal done()

    function take(path: string) {
        file = path;
        Whereabouts.setDraft(draft + "/file", path);
        acts.clearProblem();
    }

    title: Words.of(file === "" ? "window.pictures.title" : "window.photograph.title")

    FindingActs {
        id: acts
        key: sheet.key
        onTaken: {
            Whereabouts.setDraft(sheet.draft, "");
            Whereabouts.setDraft(sheet.draft + "/file", "");
            sheet.done();
        }
    }

    FolderPicker {
        visible: sheet.file === ""
        width: parent.width
        onChosen: path => sheet.take(path)
    }
    PhotographPicture {
        id: picture
        visible: sheet.file !== ""
        width: parent.width
        height: Math.min(280, width / aspect)
        file: sheet.file
        whole: true
        Accessible.role: Accessible.Graphic
        Accessible.name: sheet.file
    }
    ProblemLine { width: parent.width; text: sheet.file === "" ? "" : picture.problem }
    Caption { visible: sheet.file !== ""; width: parent.width; text: Words.of("window.photograph.stripped") }
    TextEntry {
        id: words
        objectName: "photograph-words"
        visible: sheet.file !== ""
        width: parent.width
        label: Words.of("window.photograph.words")
        placeholder: Words.of("window.photograph.words-example")
        multiline: true
        text: Whereabouts.draft(sheet.draft)
        onEdited: text => Whereabouts.setDraft(sheet.draft, text)
    }

    foot: [
        ProblemLine { width: parent.width; text: acts.problem },
        ActionButton {
            visible: sheet.file !== ""
            width: parent.width
            text: Words.of("window.photograph.another")
            onClicked: sheet.take("")
        },
        ActionButton {
            objectName: "keep-photograph"
            visible: sheet.file !== ""
            width: parent.width
            tall: true
            style: ActionButton.Filled
            busy: acts.busy
            text: Words.of("window.photograph.save")
            onClicked: acts.photograph(sheet.file, words.text)
        }
    ]
}
