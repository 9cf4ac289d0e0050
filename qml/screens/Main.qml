// SPDX-License-Identifier: GPL-3.0-or-later
// The window: what is seen from every place around the place that is open. Under 840 units wide a bar above and one
// below, from there on a rail at the left.
import QtQuick
import QtQuick.Window
import Proofwalk.Models
import Proofwalk.Parts

Window {
    id: window

    readonly property bool wide: width >= 840
    readonly property bool full: width >= 1280

    width: 360
    height: 780
    minimumWidth: 320
    minimumHeight: 560
    visible: true
    title: glance.open ? Words.with("window.title-of", "site", glance.site) : Words.of("window.title")
    color: Theme.film

    Glance { id: glance }
    FocusKeeper {}

    HeadBar {
        id: head
        objectName: "head"
        visible: glance.open && !window.wide
        height: visible ? implicitHeight : 0
        anchors { top: parent.top; left: parent.left; right: parent.right }
        glance: glance
    }

    RailBar {
        id: rail
        objectName: "rail"
        visible: glance.open && window.wide
        width: visible ? implicitWidth : 0
        anchors { top: parent.top; bottom: parent.bottom; left: parent.left }
        glance: glance
    }

    Loader {
        id: stage
        objectName: "stage"
        anchors {
            top: head.bottom
            bottom: doors.top
            left: rail.right
            right: parent.right
        }
        source: !glance.open ? "StartPage.qml"
              : Whereabouts.place === Whereabouts.Plan ? "PlanPlace.qml"
              : Whereabouts.place === Whereabouts.Walk ? "WalkPlace.qml"
              : Whereabouts.place === Whereabouts.Findings ? "FindingsPlace.qml"
              : Whereabouts.place === Whereabouts.Readings ? "ReadingsPlace.qml" : "HandoverPlace.qml"

        Binding { target: stage.item; property: "wide"; value: window.wide; when: stage.item !== null }
        Binding { target: stage.item; property: "full"; value: window.full; when: stage.item !== null && glance.open }
    }

    DoorBar {
        id: doors
        objectName: "doors"
        visible: glance.open && !window.wide
        height: visible ? implicitHeight : 0
        anchors { bottom: parent.bottom; left: parent.left; right: parent.right }
        findings: glance.findings
    }
}
