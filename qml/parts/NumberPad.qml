// SPDX-License-Identifier: GPL-3.0-or-later
// The pad under a reading: its unit and the two ends of the scale in words, the figures, and "next". With the keyboard's
// place on it, figures are typed as they are: the point or the comma, the minus for the sign, Return for "next".
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Parts

FocusScope {
    id: root

    property string unitText
    /// The two ends in words ("loop open", "below 0"); without a word its key is not there.
    property string leftEnd
    property string rightEnd
    property string nextText
    property bool nextBusy: false
    property bool nextShut: false

    signal digit(string figure)
    signal point()
    signal sign()
    signal erase()
    /// 0 the left end, 1 the right one.
    signal end(int which)
    signal next()

    readonly property real gap: 6
    readonly property real between: Theme.gap
    readonly property real key: (width - 3 * between) / 4
    readonly property real firstRow: Math.max(Theme.target, unit.visible ? unit.implicitHeight : 0,
                                              left.visible ? left.implicitHeight : 0,
                                              right.visible ? right.implicitHeight : 0)
    readonly property real lastRow: Math.max(Theme.target, eraser.implicitHeight)
    readonly property bool headed: unitText !== "" || leftEnd !== "" || rightEnd !== ""
    readonly property real below: headed ? firstRow + gap : 0

    function column(index: int): real { return index * (key + between); }
    function row(index: int): real { return below + index * (Theme.target + gap); }
    /// A key was touched or a figure typed: what is typed next is for the pad, not for a key.
    function take() {
        hand.forceActiveFocus(Qt.OtherFocusReason);
    }

    implicitWidth: 328
    implicitHeight: row(3) + lastRow
    activeFocusOnTab: false

    // Where the keyboard's place on the pad is: it draws the edge round the whole.
    Item {
        id: hand
        anchors.fill: parent
        focus: true
        activeFocusOnTab: true
        Accessible.role: Accessible.Grouping
        Accessible.name: Words.of("window.part.pad")
        Accessible.focusable: true

        Rectangle {
            visible: hand.activeFocus && Keyboard.inUse
            anchors { fill: parent; margins: -4 }
            color: "transparent"
            radius: Theme.radius + 4
            border { width: 2; color: Theme.route }
        }
    }

    Keys.priority: Keys.AfterItem
    Keys.onPressed: event => {
        const typedOne = event.text;
        if (typedOne.length === 1 && typedOne >= "0" && typedOne <= "9") root.digit(typedOne);
        else if (typedOne === "." || typedOne === ",") root.point();
        else if (typedOne === "-" || typedOne === "\u2212") root.sign();
        else if (event.key === Qt.Key_Backspace || event.key === Qt.Key_Delete) root.erase();
        else if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter) {
            if (!root.nextBusy && !root.nextShut && !event.isAutoRepeat) root.next();
        } else return;
        root.take();
        event.accepted = true;
    }

    Rectangle {
        id: unit
        visible: root.unitText !== ""
        width: root.leftEnd === "" && root.rightEnd === "" ? root.width : root.key
        height: root.firstRow
        implicitHeight: unitWord.implicitHeight + 8
        radius: Theme.radius
        color: Theme.ink

        Lettering {
            id: unitWord
            anchors.centerIn: parent
            width: parent.width - 12
            horizontalAlignment: Text.AlignHCenter
            text: root.unitText
            color: Theme.paper
            font.family: Theme.figures
            font.bold: true
        }
    }
    PadKey {
        id: left
        visible: root.leftEnd !== ""
        x: unit.visible ? root.column(1) : 0
        width: root.rightEnd === "" ? root.width - x : (root.width - x - root.between) / 2
        height: root.firstRow
        text: root.leftEnd
        onClicked: { root.take(); root.end(0); }
    }
    PadKey {
        id: right
        visible: root.rightEnd !== ""
        x: left.visible ? left.x + left.width + root.between : left.x
        width: root.width - x
        height: root.firstRow
        text: root.rightEnd
        onClicked: { root.take(); root.end(1); }
    }

    Repeater {
        model: 9
        PadKey {
            required property int index
            x: root.column(index % 3)
            y: root.row(Math.floor(index / 3))
            width: root.key
            text: String(index + 1)
            sign: true
            onClicked: { root.take(); root.digit(text); }
        }
    }
    PadKey {
        x: root.column(3)
        y: root.row(0)
        width: root.key
        text: "."
        name: Words.of("window.part.point")
        sign: true
        onClicked: { root.take(); root.point(); }
    }
    PadKey {
        x: root.column(3)
        y: root.row(1)
        width: root.key
        text: "\u00b1"
        name: Words.of("window.part.sign")
        sign: true
        onClicked: { root.take(); root.sign(); }
    }
    PadKey {
        id: eraser
        y: root.row(3)
        width: root.key
        height: root.lastRow
        text: Words.of("window.part.erase")
        onClicked: { root.take(); root.erase(); }
    }
    PadKey {
        x: root.column(1)
        y: root.row(3)
        width: 2 * root.key + root.between
        height: root.lastRow
        text: "0"
        sign: true
        onClicked: { root.take(); root.digit("0"); }
    }
    ActionButton {
        x: root.column(3)
        y: root.row(2)
        width: root.key
        height: Theme.target + root.gap + root.lastRow
        style: root.nextShut ? ActionButton.Shut : ActionButton.Filled
        text: root.nextText
        icon: "go"
        stacked: true
        wordSize: Theme.text
        busy: root.nextBusy
        takesFocus: false
        onClicked: { root.take(); root.next(); }
    }
}
