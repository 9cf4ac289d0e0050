// SPDX-License-Identifier: GPL-3.0-or-later
// One tread of the stair to the signature: what is to be done, what is missing, and the way to its place.
import QtQuick
import Proofwalk.Parts

Pressable {
    id: root

    enum State { Done, Here, Ahead }

    property string title
    property string second
    property string link
    property int treadState: LadderTread.Ahead
    /// Treads below this one.
    property int depth: 0
    property int mark: done ? Verdict.Pass : Verdict.ToDo
    /// An icon instead of the mark.
    property string icon
    /// The last one, with the title of a page.
    property bool summit: false
    property bool touchable: link !== ""

    readonly property bool here: treadState === LadderTread.Here
    readonly property bool done: treadState === LadderTread.Done
    readonly property real nose: 8 + 22 * depth
    readonly property real start: nose + (summit ? 56 : 52)

    name: title
    more: Words.join("window.join.list", [second, link])
    shut: !touchable
    activeFocusOnTab: touchable || activeFocus
    focusInset: 2
    Accessible.ignored: !touchable // its words are heard one by one then
    implicitHeight: Math.max(summit ? 72 : 88, lines.height + 22)

    Rectangle {
        x: root.nose
        width: root.width - x
        height: root.height
        color: root.inked ? Theme.pick : root.here ? Theme.here : root.done ? Theme.done : Theme.paper
        border {
            width: root.inked || (root.here && Theme.dark) ? 2 : 0
            color: root.inked ? Theme.route : Theme.hereEdge
        }
    }
    // Where it is climbed already the profile is heavy.
    Rectangle {
        x: root.nose
        width: root.width - x
        height: root.summit ? 2 : 1
        color: root.summit ? Theme.ink : Theme.ink2
    }
    Rectangle {
        x: root.nose - (root.done ? 3 : 0)
        width: 22 + (root.done ? 3 : 0)
        height: root.done ? 6 : 2
        color: Theme.ink
    }
    Rectangle {
        x: root.nose - (root.done ? 3 : 0)
        width: root.done ? 6 : 2
        height: root.height
        color: Theme.ink
    }

    VerdictMark {
        visible: root.icon === ""
        x: root.nose + 16
        y: 14
        width: 24
        height: 24
        mark: root.mark
    }
    Icon {
        visible: root.icon !== ""
        x: root.nose + 15
        y: root.summit ? 18 : 12
        width: root.summit ? 32 : 26
        height: width
        name: root.icon !== "" ? root.icon : "unknown"
        colour: Theme.ink
    }

    Column {
        id: lines
        x: root.start
        y: 11
        width: root.width - x - 12
        spacing: 1

        Lettering {
            width: parent.width
            text: root.title
            font.family: root.summit ? Theme.figures : Theme.words
            font.bold: true
            font.pixelSize: root.summit ? Theme.head : Theme.lead
            Accessible.ignored: root.touchable
        }
        Caption {
            visible: text !== ""
            width: parent.width
            text: root.second
            color: root.here || root.done ? Theme.ink : Theme.ink2
            Accessible.ignored: root.touchable
        }
        Caption {
            visible: text !== ""
            width: parent.width - (arrow.visible ? 28 : 0)
            topPadding: 3
            text: root.link
            color: root.here || root.done ? Theme.ink : Theme.route
            font.bold: true
            Accessible.ignored: root.touchable
        }
    }
    Icon {
        id: arrow
        visible: root.touchable && !root.done && !root.summit
        x: root.width - 29
        y: root.height - height - 14
        width: 20
        height: 20
        name: "go"
        colour: root.here ? Theme.ink : Theme.route
    }
}
