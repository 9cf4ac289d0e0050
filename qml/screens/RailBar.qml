// SPDX-License-Identifier: GPL-3.0-or-later
// The same at the left of a wide window: the building, the five doors each on its own floor line, what is up.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

Rectangle {
    id: bar

    required property Glance glance

    implicitWidth: 112
    color: Theme.film

    SectionPicture {
        id: section
        anchors { top: parent.top; topMargin: 12; horizontalCenter: parent.horizontalCenter }
        width: 96
        height: 54
        rooms: RoomList {}
        showWords: false
        showMarks: true
        Accessible.ignored: true
    }
    Caption {
        id: site
        anchors { top: section.bottom; topMargin: 6; left: parent.left; right: parent.right; leftMargin: 10; rightMargin: 4 }
        text: bar.glance.site
        color: Theme.ink
        font.bold: true
    }

    Column {
        anchors { top: site.bottom; topMargin: 16; left: parent.left; right: parent.right }
        spacing: 14

        Repeater {
            model: 5

            DoorKey {
                required property int index

                readonly property string place: ["plan", "walk", "findings", "readings", "handover"][index]

                width: bar.width
                rail: true
                text: Words.of("window.place." + place)
                second: index === Whereabouts.Plan ? bar.glance.zonesWords
                      : index === Whereabouts.Walk ? bar.glance.walkWords
                      : index === Whereabouts.Findings ? bar.glance.findingsWords
                      : index === Whereabouts.Handover ? bar.glance.rungsWords : ""
                objectName: "door-" + place
                way: Whereabouts.place === index ? DoorPicture.Here
                   : index <= Whereabouts.furthest ? DoorPicture.Been : DoorPicture.Ahead
                openFinding: index === Whereabouts.Findings && bar.glance.findings > 0
                onClicked: Whereabouts.go(index)
            }
        }
    }

    Column {
        anchors { bottom: parent.bottom; bottomMargin: 40; left: parent.left; right: parent.right; leftMargin: 10 }
        spacing: 8

        Item {
            width: parent.width - 4
            height: Math.max(lid.height, back.height)

            Icon { id: lid; width: 20; height: 18; name: bar.glance.putBack > 0 ? "lid-off" : "lid-on"; colour: Theme.ink }
            Caption { id: back; x: 24; width: parent.width - x; text: bar.glance.putBackWords; font.bold: true; color: Theme.ink }
        }
        Caption {
            width: parent.width - 6
            text: bar.glance.testWords
            color: Theme.ink
        }
    }
    Rectangle { anchors { top: parent.top; bottom: parent.bottom; right: parent.right } width: 1; color: Theme.hair }
}
