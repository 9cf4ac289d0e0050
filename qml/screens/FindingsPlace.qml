// SPDX-License-Identifier: GPL-3.0-or-later
// Findings: their list, and the page of one with its history. Narrow windows show one of both.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: place

    property bool wide: false ///< list and page side by side
    property bool full: false
    readonly property bool paged: Whereabouts.page !== ""
    readonly property string finding: paged ? Whereabouts.subject : ""

    function toList() { Whereabouts.go(Whereabouts.Findings, "", Whereabouts.subject); }

    Keys.onEscapePressed: event => {
        if (paged && !wide) toList();
        else event.accepted = false;
    }

    FindingListPage {
        id: list
        visible: place.wide || !place.paged
        beside: place.paged
        width: place.full ? 440 : place.wide ? 360 : place.width
        height: place.height
        focus: !place.paged
    }
    FocusScope {
        id: page
        objectName: "page"
        visible: place.paged
        x: place.wide ? list.width + 2 : 0
        width: place.width - x
        height: place.height
        focus: place.paged

        Made { of: place.paged ? one : null }
    }
    Component {
        id: one

        FindingPage {
            anchors.fill: parent
            key: place.finding
            returnable: !place.wide
            onLeave: place.toList()
        }
    }
    Rectangle {
        visible: place.wide && !place.paged
        x: list.width + 2
        width: place.width - x
        height: place.height
        color: Theme.paper

        BodyText {
            anchors.centerIn: parent
            width: Math.min(360, parent.width - 2 * Theme.margin)
            horizontalAlignment: Text.AlignHCenter
            text: Words.of("window.finding.none-chosen")
            color: Theme.ink2
        }
    }
    Rectangle { visible: place.wide; x: list.width; width: 2; height: place.height; color: Theme.ink }

    // The page's own sheets; which of them is up is kept, so that a program that was killed opens on it again.
    Made { of: place.paged && Whereabouts.page !== "finding" ? sheet : null }
    Component {
        id: sheet

        FindingSheets {
            anchors.fill: parent
            what: Whereabouts.page
            key: place.finding
            onClosed: Whereabouts.go(Whereabouts.Findings, "finding", Whereabouts.subject)
        }
    }
}
