// SPDX-License-Identifier: GPL-3.0-or-later
// One tread of the stair of steps. Its nose is `depth` noses out from the last one; the one in hand is large and hosts
// what the step needs.
import QtQuick
import Proofwalk.Parts

Item {
    id: root

    enum State { Done, Here, Ahead, Folded }

    property int treadState: StepTread.Ahead
    property string text
    property int mark: Verdict.Pass
    property int seen: Seen.Singly
    /// Treads below this one.
    property int depth: 0
    /// Nothing stands on it: its whole upper side is the stair's.
    property bool first: false
    /// It can be touched: opens the step, or unfolds the treads. 48 high then.
    property bool touchable: false
    default property alias content: hosted.data

    signal clicked()

    readonly property bool here: treadState === StepTread.Here
    readonly property bool done: treadState === StepTread.Done
    readonly property real nose: Theme.margin + 10 * depth
    readonly property real start: nose + (done ? 36 : 16)
    readonly property real spoken: text === "" ? 0 : words.height + 6
    readonly property real hostedHeight: here ? hosted.childrenRect.height : 0

    implicitHeight: Math.max(touchable ? Theme.target : 0,
        here ? 8 + spoken + (hostedHeight > 0 ? hostedHeight : 0) + 10
             : Math.max(done ? 28 : 27, words.height + 7))

    Rectangle {
        x: root.nose
        width: root.width - x
        height: root.height
        visible: root.done || root.here
        color: root.here ? Theme.openBg : Theme.done
    }
    // The profile: the riser, and the part of the tread that is not under the one above.
    Rectangle {
        x: root.nose
        width: root.width - x
        height: root.first && root.done ? 5 : root.first ? 2 : 1
        color: root.first && root.done ? Theme.ink : Theme.ink2
    }
    Rectangle {
        visible: !root.first && !root.here
        x: root.nose
        width: 10 + (root.done ? 5 : 0)
        height: root.done ? 5 : 2
        color: root.done ? Theme.ink : Theme.ink2
    }
    Rectangle {
        x: root.nose
        width: root.here ? 6 : root.done ? 5 : 2
        height: root.height
        color: root.here ? Theme.route : root.done ? Theme.ink : Theme.ink2
    }

    VerdictMark {
        visible: root.done
        x: root.nose + 9
        y: (root.height - height) / 2 + (root.first ? 2 : 0)
        width: 20
        height: 20
        mark: root.mark
        seen: root.seen
    }
    Lettering {
        id: words
        x: root.start
        y: root.here ? 8 : (root.height - height) / 2 + (root.done && root.first ? 2 : 0)
        width: root.width - x - 12
        text: root.text
        font.pixelSize: root.here ? Theme.lead : Theme.text
        font.bold: root.here
        Accessible.ignored: root.touchable
    }
    Item {
        id: hosted
        visible: root.here
        x: root.start
        y: words.y + root.spoken
        width: root.width - x - Theme.margin
        height: childrenRect.height
    }

    Pressable {
        visible: root.touchable
        anchors.fill: parent
        anchors.leftMargin: root.nose
        name: root.text
        focusInset: 2
        onClicked: root.clicked()
    }
}
