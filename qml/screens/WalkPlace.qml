// SPDX-License-Identifier: GPL-3.0-or-later
// The walk: its list, and the page of what was taken from it. Narrow windows show one of both.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: place

    property bool wide: false ///< list and page side by side
    property bool full: false ///< and the drawing between them
    readonly property bool paged: Whereabouts.page !== ""
    /// A round needs the whole width for its grid.
    readonly property bool beside: wide && Whereabouts.page !== "round"

    function back() { Whereabouts.go(Whereabouts.Walk, "", Whereabouts.subject); }

    Keys.onEscapePressed: event => {
        if (paged && !wide) back();
        else event.accepted = false;
    }

    // Whoever takes a row goes to its page, beside the list too.
    Connections {
        target: Whereabouts
        function onMoved() { if (Whereabouts.place === Whereabouts.Walk && place.paged) page.forceActiveFocus(Qt.OtherFocusReason); }
    }

    WalkListPage {
        id: list
        visible: place.beside || !place.paged
        focus: !place.paged
        width: place.full ? 328 : place.wide ? 300 : place.width
        height: place.height
    }
    Rectangle { visible: place.beside; x: list.width; width: 1; height: place.height; color: Theme.hair }

    Loader {
        id: drawing
        active: place.full && place.beside
        visible: active
        x: list.width + 1
        width: active ? place.width - list.width - 392 : 0
        height: place.height
        sourceComponent: BuildingPane {}
    }

    Loader {
        id: page
        objectName: "page"
        visible: place.wide || place.paged
        x: place.beside ? list.width + 1 + drawing.width : 0
        width: place.width - x
        height: place.height
        focus: place.paged
        onLoaded: (item as Item).focus = true
        source: Whereabouts.page === "round" ? "RoundPage.qml"
              : Whereabouts.page === "sequence" ? "SequencePage.qml"
              : Whereabouts.page === "arrival" ? "ArrivalPage.qml"
              : Whereabouts.page === "putback" ? "PutBackPage.qml"
              : Whereabouts.page === "state" ? "StatePage.qml"
              : Whereabouts.page === "card" ? "CardPage.qml" : ""
    }
    Rectangle { visible: place.beside; x: page.x; width: 2; height: place.height; color: Theme.ink }
}
