// SPDX-License-Identifier: GPL-3.0-or-later
// What one glance tells, over every place of a narrow window.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

Rectangle {
    id: bar

    required property Glance glance

    implicitHeight: 60
    color: Theme.film

    SectionPicture {
        id: section
        x: 8
        anchors.verticalCenter: parent.verticalCenter
        width: 78
        height: 46
        rooms: RoomList {}
        showWords: false
        showMarks: true
        Accessible.ignored: true
    }

    FigureText {
        id: answered
        x: 94
        y: 6
        text: bar.glance.answered
        font.pixelSize: Theme.lead
    }
    Caption {
        anchors { left: answered.right; leftMargin: 5; baseline: answered.baseline }
        text: bar.glance.answeredWords
        color: Theme.ink
    }
    VerdictMark {
        id: mark
        visible: bar.glance.findings > 0
        x: 222
        y: 8
        width: 20
        height: 20
        mark: Verdict.Fail
    }
    Caption {
        anchors { left: mark.right; leftMargin: 4; verticalCenter: mark.verticalCenter }
        text: bar.glance.findingsWords
        color: Theme.ink
        font.bold: true
    }
    Icon {
        id: caution
        visible: bar.glance.live
        x: 94
        y: 33
        width: 18
        height: 18
        name: "caution"
        colour: Theme.ink
    }
    Caption {
        x: bar.glance.live ? 115 : 94
        anchors.verticalCenter: lid.verticalCenter
        text: bar.glance.testWords
        color: Theme.ink
    }
    Icon {
        id: lid
        x: 222
        y: 33
        width: 20
        height: 18
        name: bar.glance.putBack > 0 ? "lid-off" : "lid-on"
        colour: Theme.ink
    }
    Caption {
        anchors { left: lid.right; leftMargin: 4; verticalCenter: lid.verticalCenter }
        text: bar.glance.putBackWords
        color: Theme.ink
        font.bold: true
    }
    Rectangle { anchors { bottom: parent.bottom; left: parent.left; right: parent.right } height: 1; color: Theme.hair }
}
