// SPDX-License-Identifier: GPL-3.0-or-later
// By when, as a corridor that is open up to a jamb; each jamb is a day to choose.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

Column {
    id: root

    required property DueChoice due

    spacing: 4

    Item {
        width: parent.width
        height: Math.max(label.height, day.height)

        Caption { id: label; text: Words.of("window.fault.due"); anchors.bottom: parent.bottom; width: implicitWidth }
        LeadText {
            id: day
            anchors.right: parent.right
            width: parent.width - label.width - 12
            horizontalAlignment: Text.AlignRight
            text: root.due.words
        }
    }
    Item {
        width: parent.width
        height: keys.height

        DueWall {
            id: wall
            width: parent.width
            height: 36
            jambs: root.due.choices.length
            chosen: root.due.choice
            Accessible.ignored: true
        }
        // A key is its jamb and the word under it.
        Row {
            id: keys
            width: parent.width

            Repeater {
                model: root.due.choices

                Pressable {
                    id: choice

                    required property int index
                    required property string modelData

                    objectName: "due-" + index
                    width: keys.width / root.due.choices.length
                    height: wall.height + words.height + 12
                    focusInset: 1
                    name: modelData
                    Accessible.role: Accessible.RadioButton
                    Accessible.checkable: true
                    Accessible.checked: root.due.choice === index
                    onClicked: root.due.choice = index

                    BodyText {
                        id: words
                        y: wall.height + 3
                        width: parent.width
                        horizontalAlignment: Text.AlignHCenter
                        text: choice.modelData
                        font.bold: root.due.choice === choice.index
                        Accessible.ignored: true
                    }
                }
            }
        }
    }
    TextEntry {
        objectName: "due-other"
        visible: root.due.choice === DueChoice.Other
        width: parent.width
        label: Words.with("window.due.day", "example", root.due.example)
        hints: Qt.ImhDate
        text: root.due.other
        problem: root.due.problem
        onEdited: text => root.due.other = text
    }
}
