// SPDX-License-Identifier: GPL-3.0-or-later
// A job on the start page: its building as it was last seen, its name, how far it is.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

Pressable {
    id: item

    required property string site
    required property string second
    required property string word
    required property int verdict
    required property ShelvedRooms rooms

    name: site
    more: Words.join("window.join.list", [second, word])
    focusInset: 2
    implicitHeight: Math.max(104, lines.height + 24)

    Rectangle {
        anchors.fill: parent
        color: item.inked ? Theme.pick : Theme.paper
    }
    SectionPicture {
        x: 12
        anchors.verticalCenter: parent.verticalCenter
        width: 112
        height: 72
        rooms: item.rooms
        showWords: false
        showMarks: false
        Accessible.ignored: true
    }
    Column {
        id: lines
        x: 136
        anchors.verticalCenter: parent.verticalCenter
        width: item.width - x - Theme.margin
        spacing: 3

        LeadText { width: parent.width; text: item.site; Accessible.ignored: true }
        Caption { width: parent.width; text: item.second; color: Theme.ink2; Accessible.ignored: true }
        Row {
            width: parent.width
            topPadding: 4
            spacing: 8

            VerdictMark { width: 20; height: 20; mark: item.verdict; Accessible.ignored: true }
            BodyText { width: parent.width - 28; text: item.word; font.bold: true; Accessible.ignored: true }
        }
    }
    Rectangle { anchors.bottom: parent.bottom; width: parent.width; height: 2; color: Theme.ink }
}
