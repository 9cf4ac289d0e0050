// SPDX-License-Identifier: GPL-3.0-or-later
// The five places as doors on one corridor, at the foot of a narrow window.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

Rectangle {
    id: bar

    property int findings: 0

    implicitHeight: 60
    color: Theme.film

    Rectangle { anchors { top: parent.top; left: parent.left; right: parent.right } height: 1; color: Theme.hair }

    Row {
        anchors.fill: parent

        Repeater {
            model: 5

            DoorKey {
                required property int index
                readonly property string place: ["plan", "walk", "findings", "readings", "handover"][index]

                width: bar.width / 5
                height: bar.height
                text: Words.of("window.place." + place)
                objectName: "door-" + place
                way: Whereabouts.place === index ? DoorPicture.Here
                   : index <= Whereabouts.furthest ? DoorPicture.Been : DoorPicture.Ahead
                openFinding: index === Whereabouts.Findings && bar.findings > 0
                onClicked: Whereabouts.go(index)
            }
        }
    }
}
