// SPDX-License-Identifier: GPL-3.0-or-later
// A place of the day as a door on the corridor: in the bar its word stands under the floor, in the rail beside the door.
import QtQuick
import Proofwalk.Parts

Pressable {
    id: root

    property int way: DoorPicture.Ahead
    property string text
    /// In the rail: what it holds ("41 of 64").
    property string second
    /// A finding is not yet put right: a diamond beside the door.
    property bool openFinding: false
    property bool rail: false
    /// Its word is written. Where words are long only the open door has one; it is always heard.
    property bool worded: true

    readonly property bool here: way === DoorPicture.Here
    readonly property bool ahead: way === DoorPicture.Ahead
    readonly property real floorAt: rail ? Math.max(44, beside.height + 10) : 36
    /// What its word takes in the bar, so that the bar can tell whether all fit.
    readonly property real wordWidth: Math.ceil(beneath.implicitWidth)

    name: text
    more: second
    focusInset: 2
    Accessible.role: Accessible.PageTab
    Accessible.selected: here
    implicitWidth: rail ? 112 : 72
    implicitHeight: rail ? floorAt + (under.visible ? under.height + 14 : 14)
                         : Math.max(60, floorAt + 5 + (worded ? beneath.height : 17) + 2)

    Rectangle {
        visible: root.inked
        anchors.fill: parent
        color: Theme.pick
        border { width: 2; color: Theme.route }
    }
    DoorPicture {
        id: door
        x: root.rail ? 4 : (root.width - width) / 2
        y: root.floorAt - height
        way: root.way
    }
    VerdictMark {
        visible: root.openFinding
        x: root.rail ? 10 : door.x + door.width - 2
        y: root.rail ? under.y + 1 : door.y + 4
        width: 15
        height: 15
        mark: Verdict.Fail
    }
    Rectangle {
        y: root.floorAt - height / 2
        width: root.width
        height: root.ahead ? 1.5 : 4
        color: root.ahead ? Theme.ink2 : Theme.ink
    }

    Caption {
        id: beneath
        visible: !root.rail && root.worded
        y: root.floorAt + 5
        width: root.width
        horizontalAlignment: Text.AlignHCenter
        text: root.text
        color: Theme.ink
        font.bold: root.here
        Accessible.ignored: true
    }
    Caption {
        id: beside
        visible: root.rail
        x: 48
        y: root.floorAt - height - 4
        width: root.width - x - 2
        text: root.text
        color: Theme.ink
        font.bold: root.here
        Accessible.ignored: true
    }
    Caption {
        id: under
        visible: root.rail && root.second !== ""
        x: root.openFinding ? 30 : 12
        y: root.floorAt + 6
        width: root.width - x - 2
        text: root.second
        Accessible.ignored: true
    }
}
