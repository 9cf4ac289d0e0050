// SPDX-License-Identifier: GPL-3.0-or-later
// The field the customer signs in: by finger, pen or mouse, or with a pen led by the keyboard.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: field

    property alias ink: pad.ink
    readonly property bool empty: pad.empty

    function clear() {
        pen.clear();
        pad.clear();
    }

    implicitHeight: width * 0.4
    activeFocusOnTab: true
    Accessible.role: Accessible.Canvas
    Accessible.name: Words.of("window.sign.field")
    Accessible.description: pen.down ? Words.of("window.sign.pen-down") : ""
    Accessible.focusable: true

    Keys.onPressed: event => {
        if (event.key === Qt.Key_Left) pen.step(-1, 0);
        else if (event.key === Qt.Key_Right) pen.step(1, 0);
        else if (event.key === Qt.Key_Up) pen.step(0, -1);
        else if (event.key === Qt.Key_Down) pen.step(0, 1);
        else if (event.key === Qt.Key_Space && !event.isAutoRepeat) pen.press();
        else return;
        if (pen.ink !== "[]") pad.ink = pen.ink;
        event.accepted = true;
    }

    KeyPen { id: pen }

    InkPad {
        id: pad
        objectName: "ink"
        anchors.fill: parent
        Accessible.ignored: true
    }
    // Where the keyboard's pen is.
    Rectangle {
        visible: field.activeFocus && Keyboard.inUse
        x: pen.x * field.width - width / 2
        y: pen.y * field.height - height / 2
        width: pen.down ? 8 : 14
        height: width
        radius: width / 2
        color: pen.down ? Theme.route : "transparent"
        border { width: 2; color: Theme.route }
    }
    Rectangle {
        visible: field.activeFocus && Keyboard.inUse
        anchors.fill: parent
        color: "transparent"
        border { width: 2; color: Theme.route }
    }
}
