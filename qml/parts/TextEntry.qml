// SPDX-License-Identifier: GPL-3.0-or-later
// Words to be typed, under their label.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Parts

FocusScope {
    id: root

    property alias text: line.text
    property string label
    property string placeholder
    property bool multiline: false
    property int hints: Qt.ImhNone
    /// Why it is not taken; written beneath, with the mark.
    property string problem

    /// It was typed in.
    signal edited(string text)
    /// Return, in an entry of one line.
    signal accepted()

    implicitWidth: 240
    implicitHeight: box.y + box.height + (problemLine.visible ? problemLine.implicitHeight + 4 : 0)

    Caption {
        id: caption
        visible: root.label !== ""
        width: parent.width
        text: root.label
        Accessible.ignored: true
    }
    Rectangle {
        id: box
        y: caption.visible ? caption.height + 4 : 0
        width: root.width
        height: Math.max(root.multiline ? 76 : Theme.target, line.contentHeight + 20)
        radius: Theme.radius
        color: Theme.paper
        border { width: 2; color: line.activeFocus ? Theme.route : root.problem !== "" ? Theme.failC : Theme.ink2 }

        // One editor for both: it wraps, so that nothing typed is hidden.
        TextEdit {
            id: line
            anchors.fill: parent
            leftPadding: 12
            rightPadding: 12
            topPadding: root.multiline ? 10 : Math.round((box.height - contentHeight) / 2)
            bottomPadding: 0
            focus: true
            activeFocusOnTab: true
            textFormat: TextEdit.PlainText
            wrapMode: TextEdit.Wrap
            selectByMouse: true
            inputMethodHints: root.hints
            color: Theme.ink
            selectionColor: Theme.ink
            selectedTextColor: Theme.paper
            font.family: Theme.words
            font.pixelSize: Theme.text
            cursorDelegate: Rectangle {
                width: 2
                color: Theme.route
                visible: line.cursorVisible
            }
            Accessible.role: Accessible.EditableText
            Accessible.name: root.label !== "" ? root.label : root.placeholder
            Accessible.description: root.problem !== "" ? root.problem : root.placeholder
            Accessible.multiLine: root.multiline
            Accessible.editable: true
            onTextChanged: if (activeFocus) root.edited(text)
            Keys.onPressed: event => {
                const enter = event.key === Qt.Key_Return || event.key === Qt.Key_Enter;
                if (event.key === Qt.Key_Tab) nextItemInFocusChain(true).forceActiveFocus(Qt.TabFocusReason);
                else if (event.key === Qt.Key_Backtab) nextItemInFocusChain(false).forceActiveFocus(Qt.BacktabFocusReason);
                else if (enter && !root.multiline) root.accepted();
                else return;
                event.accepted = true;
            }
        }
        Lettering {
            visible: line.text === "" && line.preeditText === ""
            x: 12
            width: box.width - 24
            y: root.multiline ? 10 : (box.height - height) / 2
            text: root.placeholder
            color: Theme.ink2
            Accessible.ignored: true
        }
    }
    ProblemLine {
        id: problemLine
        y: box.y + box.height + 4
        width: root.width
        text: root.problem
    }
}
