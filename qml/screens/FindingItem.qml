// SPDX-License-Identifier: GPL-3.0-or-later
// A finding in the list: which floor and room, whose, what. A cleared one takes one line.
import QtQuick
import Proofwalk.Parts

Pressable {
    id: root

    property string tag
    property int mark: Verdict.Fail
    property string word
    property string line
    property string second
    property string age
    property int rooms: 0
    property list<int> at
    property bool brief: false
    property bool here: false
    /// Of the group it begins; empty for the others.
    property string heading
    property bool first: false

    readonly property color wordColour: mark === Verdict.Fail ? Theme.failC
        : mark === Verdict.TooClose ? Theme.undC
        : mark === Verdict.Pass ? Theme.passC
        : mark === Verdict.NoAccess ? Theme.nrC
        : mark === Verdict.Retest || mark === Verdict.Running ? Theme.runC : Theme.ink2
    readonly property real start: brief ? 52 : 98

    name: Words.join("window.join.list", [tag, word, line])
    more: Words.join("window.join.list", [second, age])
    focusInset: 2
    activeFocusOnTab: ListView.view === null
    readonly property real above: heading === "" ? 0 : group.height + (first ? 12 : 18)

    implicitHeight: above + Math.max(brief ? Theme.target : 76, words.height + 20)

    Rectangle { width: parent.width; height: root.above; color: Theme.paper }
    RowRule { visible: root.heading !== "" && !root.first; width: parent.width; heavy: true }
    Caption {
        id: group
        visible: root.heading !== ""
        x: Theme.margin
        y: root.first ? 8 : 12
        width: parent.width - 2 * x
        text: root.heading
        color: Theme.ink
        font.bold: true
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    Rectangle {
        y: root.above
        width: parent.width
        height: parent.height - y
        color: root.inked ? Theme.pick : root.here ? Theme.openBg : Theme.paper
    }
    Rectangle {
        visible: root.here
        y: root.above
        width: 4
        height: parent.height - y
        color: Theme.route
    }
    KeyPlan {
        visible: !root.brief && root.rooms > 0
        x: 14
        y: root.above + 16
        rooms: root.rooms
        at: root.at
        mark: root.mark
    }
    VerdictMark {
        visible: root.brief || root.rooms === 0
        x: root.brief ? 15 : 42
        y: root.above + (root.brief ? 14 : 26)
        width: 20
        height: 20
        mark: root.mark
    }

    Column {
        id: words
        x: root.start
        y: root.above + 10
        width: root.width - x - Theme.margin
        spacing: 2

        Item {
            width: parent.width
            height: Math.max(24, plate.height, root.brief ? curt.height + 4 : verdict.height, since.height)

            FigureText {
                id: plate
                y: 1
                width: Math.min(Math.ceil(implicitWidth), parent.width * 0.5)
                text: root.tag
                font.pixelSize: Theme.lead
                Accessible.ignored: true
            }
            VerdictMark {
                id: sign
                visible: !root.brief && root.rooms > 0
                x: plate.width + 16
                y: 2
                width: visible ? 20 : 0
                height: 20
                mark: root.mark
            }
            Lettering {
                id: verdict
                visible: !root.brief
                x: plate.width + (sign.visible ? 42 : 12)
                y: 2
                width: since.x - x - 6
                text: root.word
                color: root.wordColour
                font.bold: true
                Accessible.ignored: true
            }
            Caption {
                id: since
                x: parent.width - width
                y: 4
                width: Math.ceil(implicitWidth)
                text: root.age
                Accessible.ignored: true
            }
            BodyText {
                id: curt
                visible: root.brief
                x: Math.max(62, plate.width + 10)
                y: 2
                width: since.x - x - 6
                text: root.brief ? root.line : ""
                Accessible.ignored: true
            }
        }
        BodyText {
            visible: !root.brief
            width: parent.width
            text: root.line
            font.bold: true
            Accessible.ignored: true
        }
        Caption {
            visible: !root.brief && text !== ""
            width: parent.width
            text: root.second
            Accessible.ignored: true
        }
    }
    RowRule {
        anchors.bottom: parent.bottom
        x: root.start
        width: root.width - x
    }
}
