// SPDX-License-Identifier: GPL-3.0-or-later
// One thing to put back: its lid off its box; put back, the lid is on.
import QtQuick
import Proofwalk.Parts

Rectangle {
    id: row

    required property string event
    required property string subject
    required property string title
    required property string where
    required property string since
    required property bool back
    required property bool here
    property bool busy: false

    signal putBack()
    signal takeOut()

    readonly property bool under: width - 52 - key.width - 24 < 130

    implicitHeight: Math.max(back ? 60 : 96, words.height + 16 + (under ? key.height + 8 : 0))
    color: here && !back ? Theme.here : Theme.paper
    Accessible.role: Accessible.ListItem
    Accessible.name: Words.join("window.join.list", [subject, title, where, since])

    Icon {
        x: 12
        y: 12
        width: 28
        height: 28
        name: row.back ? "lid-on" : "lid-off"
        colour: row.back ? Theme.passC : Theme.ink
    }
    Column {
        id: words
        x: 48
        y: 8
        width: (row.under ? row.width : key.x) - x - 8
        spacing: 1

        FigureText { visible: text !== ""; width: parent.width; text: row.subject; font.pixelSize: row.back ? Theme.text : Theme.lead }
        BodyText { width: parent.width; text: row.title; font.bold: !row.back }
        Caption { visible: text !== ""; width: parent.width; text: row.where; color: Theme.ink }
        Caption { width: parent.width; text: row.since; color: row.here ? Theme.ink : Theme.ink2 }
    }
    ActionButton {
        id: key
        objectName: (row.back ? "take-out-" : "put-back-") + row.title
        x: row.under ? 48 : row.width - width - Theme.margin
        y: row.under ? words.y + words.height + 8 : (row.height - height) / 2
        width: row.back ? 56 : Math.max(108, implicitWidth)
        height: row.back ? 48 : 64
        icon: row.back ? "withdraw" : ""
        text: row.back ? "" : Words.of("window.put-back-act")
        name: Words.join("window.join.about", [Words.of(row.back ? "window.put-back-withdraw" : "window.put-back-act"), row.title])
        style: row.back ? ActionButton.Plain : row.here ? ActionButton.Filled : ActionButton.Edged
        busy: row.busy && !row.back
        onClicked: row.back ? row.takeOut() : row.putBack()
    }
    RowRule { x: row.here ? 0 : 48; width: row.width - x; anchors.bottom: parent.bottom; heavy: row.here }
}
