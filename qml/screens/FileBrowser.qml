// SPDX-License-Identifier: GPL-3.0-or-later
// The folders of this machine, to choose a job or a plan from; or the path typed.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

Column {
    id: browser

    property bool plans: false
    property alias label: path.label
    property alias text: path.text
    property alias folder: files.folder

    signal chosen(string path)

    spacing: Theme.gap

    FileList {
        id: files
        plans: browser.plans
    }

    TextEntry {
        id: path
        objectName: "path"
        width: parent.width
        multiline: true
        hints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
        onEdited: text => browser.chosen(text)
    }
    PlainRow {
        objectName: "folder-above"
        width: parent.width
        visible: files.above !== ""
        icon: "back"
        title: Words.of("window.files.above")
        second: files.folder
        onClicked: files.folder = files.above
    }
    BodyText {
        visible: text !== ""
        width: parent.width
        text: files.emptyWords
    }
    ListColumn {
        id: rows
        objectName: "files"
        width: parent.width
        height: Math.min(contentHeight, 300)
        name: Words.of("window.files.title")
        model: files
        delegate: PlainRow {
            required property string label
            required property string path
            required property int type

            required second

            width: rows.width
            icon: type === FileList.Folder ? "open-file" : type === FileList.Plan ? "place" : "report"
            here: path === browser.text
            title: label
            onClicked: {
                if (type === FileList.Folder) files.folder = path;
                else {
                    browser.text = path;
                    browser.chosen(path);
                }
            }
        }
        onActivated: row => (itemAtIndex(row) as PlainRow).press()
    }
}
