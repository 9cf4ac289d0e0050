// SPDX-License-Identifier: GPL-3.0-or-later
// The walk in order, the next thing largest at the foot.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: page

    function take(type: int, key: string) {
        if (type === WalkList.Device) Whereabouts.go(Whereabouts.Walk, "card", key);
        else if (type === WalkList.Round) Whereabouts.go(Whereabouts.Walk, "round", key);
        else if (type === WalkList.Sequence) Whereabouts.go(Whereabouts.Walk, "sequence", key);
        else if (type === WalkList.Arrival) Whereabouts.go(Whereabouts.Walk, "arrival", "");
        else if (type === WalkList.PutBack) Whereabouts.go(Whereabouts.Walk, "putback", "");
    }

    WalkList { id: walk }

    Rectangle { anchors.fill: parent; color: Theme.paper }

    HeadText {
        id: title
        x: Theme.margin
        y: 12
        width: parent.width - 2 * x - states.width
        text: Words.of("window.place.walk")
    }
    LinkText {
        id: states
        objectName: "states"
        anchors { right: parent.right; rightMargin: Theme.margin; verticalCenter: title.verticalCenter }
        text: Words.of("window.area-states")
        onClicked: Whereabouts.go(Whereabouts.Walk, "state", "")
    }

    ListColumn {
        id: rows
        objectName: "walk-list"
        anchors { top: title.bottom; topMargin: 10; left: parent.left; right: parent.right; bottom: next.top; bottomMargin: Theme.gap }
        name: Words.of("window.place.walk")
        model: walk
        focus: true
        delegate: WalkRow {
            width: rows.width
            onTaken: page.take(type, key)
        }
        onActivated: row => (itemAtIndex(row) as WalkRow).taken()
    }

    ActionButton {
        id: next
        objectName: "walk-on"
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: Theme.margin; bottomMargin: Theme.gap }
        tall: true
        style: walk.next === "" ? ActionButton.Plain : ActionButton.Filled
        text: walk.next === "" ? Words.of("window.to-handover") : Words.of("window.walk-on")
        second: walk.nextWords
        onClicked: {
            if (walk.next !== "") Whereabouts.go(Whereabouts.Walk, "card", walk.next);
            else Whereabouts.go(Whereabouts.Handover);
        }
    }
}
