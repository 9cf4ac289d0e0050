// SPDX-License-Identifier: GPL-3.0-or-later
// A folder's folders and pictures, to choose one from; or its path typed.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

Column {
    id: root

    signal chosen(string path)

    spacing: Theme.gap

    FolderList { id: folder }

    TextEntry {
        id: path
        objectName: "folder"
        width: parent.width
        label: Words.of("window.pictures.folder-name")
        text: folder.folder
        hints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
        onAccepted: folder.folder = text
    }
    ActionButton {
        objectName: "folder-above"
        visible: folder.above !== ""
        width: parent.width
        icon: "back"
        text: Words.of("window.pictures.above")
        onClicked: folder.folder = folder.above
    }
    BodyText {
        visible: text !== ""
        width: parent.width
        text: folder.reading ? Words.of("window.pictures.reading") : folder.emptyWords
    }
    ListColumn {
        id: rows
        objectName: "pictures"
        width: parent.width
        height: Math.min(contentHeight, 384)
        name: Words.of("window.pictures.title")
        model: folder
        delegate: PlainRow {
            id: row

            required property string path
            required property bool inner
            required property string label

            required second

            width: rows.width
            title: label
            icon: inner ? "open-file" : "photograph"
            onClicked: {
                if (inner) folder.folder = path;
                else root.chosen(path);
            }
        }
        onActivated: row => (itemAtIndex(row) as PlainRow).press()
    }
}
