// SPDX-License-Identifier: GPL-3.0-or-later
// A row of two lines with an icon or a verdict's mark before it, and words or a button after it. A button that would
// crowd the words stands under them.
import QtQuick
import Proofwalk.Parts

Pressable {
    id: root

    property string icon
    /// A Verdict, or none below 0.
    property int mark: -1
    property int seen: Seen.Singly
    property string title
    property string second
    /// At the end of the first line: who, when.
    property string after
    /// The one in hand.
    property bool here: false
    property bool done: false
    /// It can be touched as a whole.
    property bool touchable: true
    property bool rule: true
    /// A button at its end.
    default property alias tail: holder.data

    readonly property bool pictured: icon !== "" || mark >= 0
    readonly property real start: pictured ? 52 : Theme.margin
    readonly property real tailWidth: holder.childrenRect.width
    readonly property bool under: tailWidth > 0 && width - start - tailWidth - Theme.margin - 8 < 112

    name: title
    more: Words.join("window.join.list", [second, after])
    shut: !touchable
    activeFocusOnTab: (touchable && ListView.view === null) || activeFocus
    focusInset: 2
    Accessible.ignored: !touchable // its words are heard one by one then
    implicitHeight: Math.max(60, lines.height + 16 + (under ? holder.childrenRect.height + 8 : 0),
                             under ? 0 : holder.childrenRect.height + 12)

    Rectangle {
        anchors.fill: parent
        color: root.inked ? Theme.pick : root.here ? Theme.openBg : root.done ? Theme.done : Theme.paper
        border { width: root.inked ? 2 : 0; color: Theme.route }
    }
    Rectangle {
        visible: root.here
        width: 4
        height: parent.height
        color: Theme.route
    }

    VerdictMark {
        visible: root.icon === "" && root.mark >= 0
        x: 26 - width / 2
        y: (lines.y * 2 + lines.height - height) / 2
        width: 22
        height: 22
        mark: Math.max(0, root.mark)
        seen: root.seen
    }
    Icon {
        visible: root.icon !== ""
        x: 26 - width / 2
        y: (lines.y * 2 + lines.height - height) / 2
        width: 24
        height: 24
        name: root.icon !== "" ? root.icon : "unknown"
        colour: Theme.ink
    }

    Column {
        id: lines
        x: root.start
        y: root.under ? 8 : (root.height - height) / 2
        width: (root.under || root.tailWidth === 0 ? root.width : holder.x - 8 + Theme.margin) - x - Theme.margin
        spacing: 1

        Item {
            width: parent.width
            height: Math.max(words.height, aside.visible ? aside.height : 0)

            Lettering {
                id: words
                width: aside.visible ? aside.x - 8 : parent.width
                text: root.title
                font.bold: true
                font.pixelSize: root.here ? Theme.lead : Theme.text
                Accessible.ignored: root.touchable
            }
            Caption {
                id: aside
                visible: text !== ""
                x: parent.width - width
                y: root.here ? 3 : 1
                width: Math.min(Math.ceil(implicitWidth), parent.width * 0.45)
                horizontalAlignment: Text.AlignRight
                text: root.after
                color: root.here || root.done ? Theme.ink : Theme.ink2
                Accessible.ignored: root.touchable
            }
        }
        Caption {
            visible: text !== ""
            width: parent.width
            text: root.second
            color: root.here || root.done ? Theme.ink : Theme.ink2
            Accessible.ignored: root.touchable
        }
    }
    Item {
        id: holder
        x: root.under ? root.start : root.width - Theme.margin - width
        y: root.under ? lines.y + lines.height + 8 : (root.height - height) / 2
        width: childrenRect.width
        height: childrenRect.height
    }
    RowRule {
        visible: root.rule
        x: root.done ? 0 : root.start
        anchors.bottom: parent.bottom
        width: root.width - x
        color: root.done ? Theme.ink : Theme.hair
    }
}
