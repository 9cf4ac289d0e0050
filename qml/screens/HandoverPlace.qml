// SPDX-License-Identifier: GPL-3.0-or-later
// The handover: the stair to the signature, and the pages of what is done here. Narrow windows show one of both.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: place

    property bool wide: false ///< stair and page side by side
    property bool full: false
    readonly property bool paged: Whereabouts.page !== ""
    readonly property string page: paged ? Whereabouts.page : "sign"

    Keys.onEscapePressed: event => {
        if (paged && !wide) Whereabouts.go(Whereabouts.Handover);
        else event.accepted = false;
    }

    Rectangle { anchors.fill: parent; color: Theme.film }

    LadderPage {
        visible: place.wide || !place.paged
        width: place.wide ? Math.min(440, place.width / 2) : place.width
        height: place.height
        focus: !place.paged
    }

    Loader {
        id: stage
        objectName: "page"
        active: place.wide || place.paged
        visible: active
        x: place.wide ? Math.min(440, place.width / 2) + 2 : 0
        width: place.width - x
        height: place.height
        focus: place.paged
        source: place.page === "shown" ? "ShownPage.qml"
              : place.page === "normal" ? "NormalPage.qml"
              : place.page === "report" ? "ReportPage.qml" : "SignPage.qml"

        Binding { target: stage.item; property: "backed"; value: !place.wide; when: stage.item !== null }
    }
    Rectangle { visible: place.wide; x: stage.x - 2; width: 2; height: place.height; color: Theme.ink }
}
