// SPDX-License-Identifier: GPL-3.0-or-later
// One device: where it is, what the plan promises of it, what to do now, and the verdict lowest, under the thumb.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: page

    readonly property string tag: Whereabouts.subject

    readonly property bool measuring: device.task === DeviceCard.Read && device.possible && !sheets.listing
    readonly property bool timing: device.task === DeviceCard.Time && device.possible && !sheets.listing
    readonly property real spare: height - sign.height - heading.height - foot.height - 24 - 12

    /// What was in hand is recorded: to the next that waits, here or elsewhere.
    function moveOn() {
        device.choose(-1);
        if (!device.possible && device.nextTag !== "") Whereabouts.go(Whereabouts.Walk, "card", device.nextTag);
    }

    DeviceCard {
        id: device // not "card": within a Component that would be the property of that name
        tag: page.tag
        onLeft: page.moveOn()
    }

    Rectangle { anchors.fill: parent; color: Theme.paper }

    PlaceSign {
        id: sign
        objectName: "sign"
        width: parent.width
        floor: device.floor
        room: device.room
        // The step needs the room more; and under the hand that types only the tag has it.
        way: page.height >= 600 ? device.position : page.measuring ? device.tag : ""
    }

    RoomPicture {
        id: picture
        anchors { top: sign.bottom; left: parent.left; right: parent.right }
        height: heading.brief || (page.timing && page.height < 600) ? 40 : Math.max(40, Math.min(138, page.spare - stair.contentHeight))
        spots: SpotList { id: spots; tag: page.tag }
        onSpotTapped: row => Whereabouts.go(Whereabouts.Walk, "card", spots.tagAt(row))
        Accessible.name: Words.with("window.room-drawing", "room", device.room)
    }
    Rectangle { anchors { top: picture.bottom; left: parent.left; right: parent.right } height: 2; color: Theme.ink }

    TagPlate {
        id: plate
        anchors { right: parent.right; rightMargin: Theme.margin; verticalCenter: picture.bottom }
        text: device.tag
        failed: device.verdict === Verdict.Fail
    }

    CardHeading {
        id: heading
        anchors { top: picture.bottom; topMargin: 14; left: parent.left; right: parent.right }
        card: device
        plateWidth: plate.width
        brief: page.measuring && page.height < 720
    }

    Scroller {
        id: stair
        visible: !page.measuring && !page.timing
        objectName: "stair"
        anchors { top: heading.bottom; topMargin: 8; bottom: foot.top; bottomMargin: 6; left: parent.left; right: parent.right }
        name: Words.of("window.steps")
        contentHeight: treads.height

        CardStair {
            id: treads
            width: stair.width
            card: device
            brief: page.height < 700 && device.stepNames.length > 1
            onUnfold: sheets.showSteps()
            onWantsMore: sheets.showMore()
        }
    }

    CardFoot {
        id: foot
        visible: !page.measuring && !page.timing
        objectName: "foot"
        anchors { bottom: parent.bottom; bottomMargin: 8; left: parent.left; right: parent.right; leftMargin: Theme.margin; rightMargin: Theme.margin }
        card: device
        onWantsNoAccess: sheets.ask("no-access")
        onWantsFault: sheets.fault()
        onWantsState: Whereabouts.go(Whereabouts.Walk, "state", "")
        onWantsNext: Whereabouts.go(Whereabouts.Walk, "card", device.nextTag)
        onWantsList: Whereabouts.go(Whereabouts.Walk, "", page.tag)
    }

    Item {
        anchors { top: heading.bottom; bottom: parent.bottom; left: parent.left; right: parent.right }
        z: 2

        Made { of: page.measuring ? reading : page.timing ? watch : null }
    }
    Component {
        id: reading

        ReadingPanel {
            id: panel
            anchors { fill: parent; topMargin: panel.read && page.height < 560 ? sign.y + sign.height - heading.y - heading.height : 0 }
            focus: true
            card: device
            onWantsFault: sheets.fault()
            onWantsMore: sheets.showMore()
            onRecorded: page?.moveOn()
        }
    }
    Component {
        id: watch

        StopwatchPage {
            anchors.fill: parent
            focus: true
            subject: device.subject
            step: device.stepNames.length > 0 ? device.stepNames[0] : ""
            onWantsFault: sheets.fault()
            onDone: page?.moveOn()
        }
    }

    CardSheets {
        id: sheets
        anchors.fill: parent
        z: 10
        card: device
    }
}
