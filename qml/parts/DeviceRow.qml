// SPDX-License-Identifier: GPL-3.0-or-later
// A device in the list by rooms: its mark stands on the route.
import QtQuick
import Proofwalk.Parts

Pressable {
    id: root

    property string tag
    property string title
    property string note
    property int mark: Verdict.ToDo
    property int seen: Seen.Singly
    property bool here: false
    /// The walk has passed it: the route is a band there, not footprints.
    property bool walked: mark !== Verdict.ToDo && mark !== Verdict.Retest

    readonly property real route: 24
    readonly property real titleStart: Math.max(108, 48 + Math.ceil(plate.width) + 14)
    /// A note that would break the title stands under it.
    readonly property bool beneath: note !== ""
        && titleStart + extent.advanceWidth + noteExtent.advanceWidth + 10 + Theme.margin > width

    name: Words.join("window.join.list", [tag, title])
    more: note
    focusInset: 2
    activeFocusOnTab: ListView.view === null
    implicitHeight: Math.max(Theme.target, Math.max(plate.height, words.height + (beneath ? right.height : 0)) + 14)

    Rectangle {
        anchors.fill: parent
        color: root.inked ? Theme.pick : root.here ? Theme.openBg : Theme.paper
        border { width: root.inked ? 2 : 0; color: Theme.route }
    }
    Rectangle {
        visible: root.here || root.walked
        x: root.route - width / 2
        width: 5
        height: root.here ? root.height / 2 : root.height
        color: Theme.route
    }
    Footprints {
        visible: !root.here && !root.walked
        x: root.route - width / 2
        width: 14
        height: root.height / 2 - 16
        vertical: true
    }
    Footprints {
        visible: root.here || !root.walked
        x: root.route - width / 2
        y: root.height / 2 + 15
        width: 14
        height: root.height - y
        vertical: true
    }
    VerdictMark {
        visible: !root.here
        x: root.route - width / 2
        y: (root.height - height) / 2
        width: 20
        height: 20
        mark: root.mark
        seen: root.seen
    }
    Person {
        visible: root.here
        x: root.route - width / 2
        y: (root.height - height) / 2
        width: 28
        height: 28
        heading: 180
    }

    TextMetrics {
        id: extent
        font: words.font
        text: root.title
    }
    TextMetrics {
        id: noteExtent
        font: right.font
        text: root.note
    }
    FigureText {
        id: plate
        x: 48
        anchors.baseline: words.baseline
        width: Math.min(Math.ceil(implicitWidth), root.width * 0.4)
        text: root.tag
        font.pixelSize: 16
        Accessible.ignored: true
    }
    BodyText {
        id: words
        x: root.titleStart
        y: (root.height - height - (root.beneath ? right.height : 0)) / 2
        width: (root.beneath ? root.width - Theme.margin : right.x - 8) - x
        text: root.title
        font.bold: root.here
        Accessible.ignored: true
    }
    Caption {
        id: right
        x: root.beneath ? root.titleStart : root.width - Theme.margin - width
        y: root.beneath ? words.y + words.height : words.y + words.baselineOffset - baselineOffset
        width: root.beneath ? root.width - x - Theme.margin : Math.ceil(noteExtent.advanceWidth) + 1
        text: root.note
        color: Theme.ink
        Accessible.ignored: true
    }
    RowRule {
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
    }
}
