// SPDX-License-Identifier: GPL-3.0-or-later
// The plan as it was designed, room by room, and beside it what does not fit. For reading: the walk changes it by events.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: place

    property bool wide: false
    property bool full: false
    property bool problemsShown: false

    PlanList { id: plan }
    PlanProblems { id: problems }

    Rectangle { anchors.fill: parent; color: Theme.paper }

    Item {
        id: left
        visible: place.wide || !place.problemsShown
        width: place.full ? 400 : place.wide ? (place.width - 2) / 2 : place.width
        height: place.height

        HeadText {
            id: title
            x: Theme.margin
            y: 12
            width: parent.width - 2 * x
            text: Words.of("window.place.plan")
        }
        Caption {
            id: summary
            anchors { top: title.bottom; left: title.left; right: title.right; topMargin: 2 }
            text: plan.summary
        }
        ListColumn {
            id: rows
            objectName: "plan-list"
            anchors { top: summary.bottom; topMargin: 10; left: parent.left; right: parent.right; bottom: toProblems.top; bottomMargin: toProblems.visible ? Theme.gap : 0 }
            name: Words.of("window.place.plan")
            model: plan
            focus: true
            delegate: PlanLine { width: rows.width }
        }
        ActionButton {
            id: toProblems
            objectName: "to-problems"
            visible: !place.wide
            height: visible ? implicitHeight : 0
            anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: Theme.margin; bottomMargin: Theme.gap }
            text: problems.ready ? problems.headline : Words.of("window.plan-reviewing")
            onClicked: place.problemsShown = true
        }
    }

    Rectangle {
        visible: place.full
        x: left.width
        width: visible ? place.width - left.width - 324 : 0
        height: place.height
        color: Theme.film

        SectionPicture {
            anchors { left: parent.left; right: parent.right; top: parent.top; margins: 24 }
            height: Math.min(parent.height * 0.5, implicitHeight)
            rooms: RoomList {}
            showWords: true
            showMarks: false
            Accessible.role: Accessible.Graphic
            Accessible.name: Words.of("window.cut-open")
        }
        Rectangle { width: 1; height: parent.height; color: Theme.hair }
    }

    Item {
        id: right
        objectName: "problems"
        visible: place.wide || place.problemsShown
        x: place.full ? place.width - 324 : place.wide ? left.width + 2 : 0
        width: place.width - x
        height: place.height

        Rectangle { visible: place.wide; width: 2; height: parent.height; color: Theme.ink }

        HeadText {
            id: headline
            x: Theme.margin
            y: 12
            width: parent.width - 2 * x - (closer.visible ? closer.width : 0)
            text: problems.ready ? problems.headline : Words.of("window.plan-reviewing")
        }
        IconButton {
            id: closer
            objectName: "from-problems"
            visible: !place.wide
            anchors { right: parent.right; rightMargin: 8; top: parent.top; topMargin: 6 }
            icon: "back"
            name: Words.of("window.back-to-plan")
            framed: false
            onClicked: place.problemsShown = false
        }
        ListColumn {
            id: causes
            anchors { top: headline.bottom; topMargin: 14; left: parent.left; leftMargin: 2; right: parent.right; bottom: parent.bottom }
            name: headline.text
            model: problems
            delegate: ProblemCard { width: causes.width }
        }
        BodyText {
            visible: problems.ready && causes.count === 0
            anchors { top: headline.bottom; topMargin: 14; left: parent.left; right: parent.right; margins: Theme.margin }
            text: Words.of("window.plan-fits-more")
        }
    }
}
