// SPDX-License-Identifier: GPL-3.0-or-later
// Rows: devices by rooms, rows of two lines.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Parts

Rectangle {
    id: page
    color: Theme.paper
    height: all.height + 16

    ListModel {
        id: rooms
        ListElement { wall: true; tag: ""; title: "Passage"; note: "2 of 2"; mark: 0; here: false; finished: true }
        ListElement { wall: true; tag: ""; title: "Ageing room"; note: "1 of 4"; mark: 0; here: true; finished: false }
        ListElement { wall: false; tag: "CE-06"; title: "Door contact"; note: "pass"; mark: 0; here: false; finished: false }
        ListElement { wall: false; tag: "CE-07"; title: "Motion detector"; note: "3 of 5"; mark: 5; here: true; finished: false }
        ListElement { wall: false; tag: "CE-08"; title: "Smoke detector"; note: "to do"; mark: 5; here: false; finished: false }
        ListElement { wall: true; tag: ""; title: "Pump room"; note: "0 of 2"; mark: 0; here: false; finished: false }
        ListElement { wall: false; tag: "zone 07"; title: "Überflutungsmelder mit Funkübertragung, doppelt"; note: "erneut prüfen"; mark: 7; here: false; finished: false }
        ListElement { wall: false; tag: "CE-15"; title: "Leak sensor, radio"; note: "no access"; mark: 3; here: false; finished: false }
        ListElement { wall: false; tag: "CE-16"; title: "Freeze sensor"; note: "too close"; mark: 2; here: false; finished: false }
    }

    FocusKeeper {}
    Component { id: note; Caption { text: "Made when it is wanted" } }
    Column {
        id: all
        width: page.width

        Item {
            width: parent.width
            height: 46
            HeadText { x: 16; y: 6; text: "To put back" }
            RowRule { y: 44; heavy: true }
        }
        Repeater {
            model: rooms
            Item {
                id: row
                required property bool wall
                required property string tag
                required property string title
                required property string note
                required property int mark
                required property bool here
                required property bool finished
                width: all.width
                height: wall ? wallRow.implicitHeight : deviceRow.implicitHeight
                RoomWall { id: wallRow; visible: row.wall; width: parent.width; room: row.title; count: row.note; here: row.here; finished: row.finished }
                DeviceRow { id: deviceRow; visible: !row.wall; width: parent.width; tag: row.tag; title: row.title; note: row.note; mark: row.mark; here: row.here }
            }
        }
        Made { of: note }
        RowRule { width: parent.width; heavy: true }
        PlainRow { width: parent.width; done: true; touchable: false; mark: Verdict.Pass; title: "Station"; second: "on test, operator told"; after: "by you, 07:58" }
        PlainRow { width: parent.width; done: true; touchable: false; mark: Verdict.Pass; title: "People in the house"; second: "told, shop and flat"; after: "by the owner, 08:05" }
        PlainRow { width: parent.width; touchable: false; mark: Verdict.ToDo; title: "Shop door release"; second: "must not unlock the shop"
            ActionButton { style: ActionButton.Edged; text: "I made it safe" } }
        PlainRow { width: parent.width; touchable: false; mark: Verdict.ToDo; title: "Vat heater cut-off, with its second relay in the yard"; second: "milk is in the vat until 10:30"
            ActionButton { style: ActionButton.Edged; text: "Ich habe es gesichert und verriegelt" } }
        PlainRow { width: parent.width; icon: "caution"; title: "Fault found: zone 30, feed store"; second: "tamper, since 19 Nov, not ours" }
        PlainRow { width: parent.width; icon: "isolated"; title: "Isolated by others: zone 27"; second: "kitchen heat, since 3 Oct, no reason given" }
        PlainRow { width: parent.width; here: true; mark: Verdict.ToDo; title: "Event memory"; second: "last 50 events, photograph or type" }
        PlainRow { width: parent.width; mark: Verdict.ToDo; keyDown: true; title: "Clocks compared"; second: "panel, phone, station"; after: "pressed" }
        PlainRow { width: parent.width; title: "No mark at all"; second: "one line" }
        ListColumn {
            id: column
            width: parent.width
            height: 130
            name: "Rooms"
            model: ["Shop", "Store room", "Tea kitchen"]
            delegate: PlainRow { required property string modelData; width: column.width; title: modelData }
        }
    }
}
