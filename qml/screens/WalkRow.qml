// SPDX-License-Identifier: GPL-3.0-or-later
// A row of the walk: a room begins with its wall, a device stands on the route, the rest are rows of their own.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

Item {
    id: row

    required property int index
    required property int type
    required property string key
    required property string floor
    required property string title
    required property string note
    required property string icon
    required property int verdict
    required property int seen
    required property bool here
    required property bool finished

    signal taken()

    implicitHeight: wall.visible ? wall.implicitHeight : device.visible ? device.implicitHeight : other.implicitHeight
    height: implicitHeight
    Accessible.ignored: true

    RoomWall {
        id: wall
        visible: row.type === WalkList.Room
        width: row.width
        room: row.title
        count: row.note
        first: row.index === 0
        here: row.here
        finished: row.finished
    }
    DeviceRow {
        id: device
        objectName: "device-" + row.key
        visible: row.type === WalkList.Device
        width: row.width
        activeFocusOnTab: false // the list is one stop; the arrows go from row to row
        tag: row.key
        title: row.title
        note: row.note
        mark: row.verdict
        seen: row.seen
        here: row.here
        walked: row.finished
        onClicked: row.taken()
    }
    PlainRow {
        id: other
        objectName: "row-" + row.key
        visible: !wall.visible && !device.visible
        width: row.width
        activeFocusOnTab: false
        mark: row.verdict
        title: row.title
        after: row.note
        done: row.finished
        onClicked: row.taken()
    }
}
