// SPDX-License-Identifier: GPL-3.0-or-later
// A passphrase to be typed: dots, kept by no keyboard and no copy.
import QtQuick
import Proofwalk.Parts

FocusScope {
    id: root

    property alias text: line.text
    property string label
    property string problem

    signal accepted()

    function clear() { line.clear(); }

    implicitWidth: 240
    implicitHeight: box.y + box.height + (problemLine.visible ? problemLine.implicitHeight + 4 : 0)

    Caption {
        id: caption
        width: parent.width
        text: root.label
        Accessible.ignored: true
    }
    Rectangle {
        id: box
        y: caption.height + 4
        width: root.width
        height: Theme.target
        radius: Theme.radius
        color: Theme.paper
        border { width: 2; color: line.activeFocus ? Theme.route : root.problem !== "" ? Theme.failC : Theme.ink2 }

        TextInput {
            id: line
            anchors.fill: parent
            leftPadding: 12
            rightPadding: 12
            verticalAlignment: TextInput.AlignVCenter
            focus: true
            activeFocusOnTab: true
            clip: true
            echoMode: TextInput.Password
            passwordCharacter: "•"
            inputMethodHints: Qt.ImhHiddenText | Qt.ImhSensitiveData | Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
            maximumLength: 1024
            color: Theme.ink
            selectionColor: Theme.ink
            selectedTextColor: Theme.paper
            font.family: Theme.words
            font.pixelSize: Theme.lead
            Accessible.role: Accessible.EditableText
            Accessible.name: root.label
            // Qt 6.4 keeps the name of a password's field to itself, so the label is told here too.
            Accessible.description: Words.join("window.join.on", [root.problem, root.label])
            Accessible.passwordEdit: true
            Accessible.editable: true
            onAccepted: root.accepted()
        }
    }
    ProblemLine {
        id: problemLine
        y: box.y + box.height + 4
        width: root.width
        text: root.problem
    }
}
