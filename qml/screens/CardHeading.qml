// SPDX-License-Identifier: GPL-3.0-or-later
// What the thing is, as what it answers, and how far its proofs have come.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

Item {
    id: heading

    required property DeviceCard card
    property real plateWidth: 0
    /// What it is, and no more: the hand that types needs the room.
    property bool brief: false

    implicitHeight: brief ? second.y + second.height : proofs.y + proofs.height

    Icon {
        id: icon
        x: Theme.margin
        y: 4
        width: 32
        height: 32
        name: heading.card.kind
        colour: Theme.ink
    }
    LeadText {
        id: title
        x: 56
        width: heading.width - x - heading.plateWidth - 24
        text: heading.card.title
    }
    Caption {
        id: second
        x: 56
        anchors { top: title.bottom; topMargin: 2 }
        width: heading.width - x - proved.width - 24
        text: heading.card.stopWords
    }
    Caption {
        id: proved
        anchors { right: parent.right; rightMargin: Theme.margin; baseline: second.baseline }
        y: Math.max(second.y, 26)
        text: heading.card.provedWords
        color: Theme.ink
        font.bold: true
    }
    Flow {
        id: answers
        visible: !heading.brief && heading.card.zoneWords !== ""
        height: visible ? implicitHeight : 0
        anchors { top: second.bottom; topMargin: 6; left: parent.left; right: parent.right; leftMargin: Theme.margin; rightMargin: Theme.margin }
        spacing: 4

        Caption { text: Words.of("window.answers-as"); height: 20; verticalAlignment: Text.AlignBottom }
        BodyText { text: heading.card.zoneWords; font.bold: true; width: Math.min(implicitWidth, answers.width) }
        BodyText { text: heading.card.purpose; color: Theme.ink2; width: Math.min(implicitWidth, answers.width) }
    }
    ProofRow {
        id: proofs
        visible: !heading.brief
        anchors { top: answers.bottom; topMargin: 6; left: parent.left; right: parent.right; leftMargin: Theme.margin; rightMargin: Theme.margin }
        proofs: heading.card.proofs
    }
}
