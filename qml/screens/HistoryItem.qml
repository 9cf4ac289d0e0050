// SPDX-License-Identifier: GPL-3.0-or-later
// A line of a finding's history: a mark where something was seen, a dot where something was done.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

Item {
    id: root

    required property string time
    required property int verdict
    required property string title
    required property string detail
    required property string picture
    required property string event
    required property bool withdrawn
    property bool last: false

    signal withdrawing()

    implicitHeight: Math.max(Theme.target, body.height + 16)

    // One band through all of them: the history is a way, too.
    Rectangle {
        x: 70 - width / 2
        y: 20
        width: 2
        height: root.height
        visible: !root.last
        color: Theme.hair
    }
    Caption {
        x: 0
        y: 9
        width: 52
        text: root.time
    }
    VerdictMark {
        visible: root.verdict >= 0
        x: 60
        y: 8
        width: 20
        height: 20
        mark: Math.max(0, root.verdict)
    }
    Rectangle {
        visible: root.verdict < 0
        x: 65
        y: 13
        width: 10
        height: 10
        color: root.withdrawn ? Theme.paper : Theme.ink
        border { width: 2; color: Theme.ink }
    }
    Column {
        id: body
        x: 90
        y: 8
        width: root.width - x - (take.visible ? take.width + 4 : 0)
        spacing: 2

        BodyText { width: parent.width; text: root.title; font.bold: !root.withdrawn; color: root.withdrawn ? Theme.ink2 : Theme.ink }
        Caption { visible: text !== ""; width: parent.width; text: root.detail }
        PhotographPicture {
            id: photograph
            visible: root.picture !== "" && problem === ""
            width: Math.min(parent.width, 240)
            height: width / aspect
            hash: root.picture
            whole: true
            Accessible.role: Accessible.Graphic
            Accessible.name: root.detail === "" ? root.title : root.detail
        }
        Caption { visible: photograph.problem !== ""; width: parent.width; text: photograph.problem; color: Theme.failC }
    }
    IconButton {
        id: take
        visible: root.event !== ""
        anchors.right: parent.right
        y: -4
        icon: "withdraw"
        name: Words.join("window.join.about", [Words.of("window.finding.withdraw"), root.title])
        framed: false
        colour: Theme.route
        onClicked: root.withdrawing()
    }
}
