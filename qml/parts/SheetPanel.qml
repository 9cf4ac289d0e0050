// SPDX-License-Identifier: GPL-3.0-or-later
// What rises over a page: held by an ink edge on paper. The keyboard's place goes into it and returns to where it was; of
// the page below nothing is in reach, of what stands around the page everything is. Escape and Back put it away.
import QtQuick
import QtQuick.Window
import Proofwalk.Parts

FocusScope {
    id: root

    property string title
    /// The word of the key that puts it away; heard, and drawn as a cross.
    property string closeName: Words.of("window.part.close")
    default property alias content: body.data
    /// What stands below and does not scroll: the acts.
    property alias foot: acts.data
    readonly property bool broad: width >= 600

    signal dismissed()

    property Item before: null

    function settle() {
        if (visible) {
            before = root.Window.activeFocusItem;
            cover.up = true;
            closer.forceActiveFocus(Qt.OtherFocusReason);
        } else {
            giveBack();
        }
    }
    function giveBack() {
        cover.up = false;
        if (before) before.forceActiveFocus(Qt.OtherFocusReason);
        before = null;
    }

    anchors.fill: parent
    z: 100
    Accessible.role: Accessible.Dialog
    Accessible.name: title
    onVisibleChanged: settle()
    Component.onCompleted: if (visible) settle()
    Component.onDestruction: giveBack()

    Keys.onPressed: event => {
        if (event.key === Qt.Key_Escape || event.key === Qt.Key_Back) dismissed();
        else return;
        event.accepted = true;
    }

    Cover { id: cover; sheet: root }

    // What is beside the sheet is out of reach while it is up, and looks it.
    Rectangle {
        anchors.fill: parent
        color: Theme.film
        opacity: 0.8

        MouseArea {
            anchors.fill: parent
            onWheel: wheel => wheel.accepted = true
        }
    }

    Rectangle {
        id: panel
        width: root.broad ? 480 : root.width
        x: root.broad ? (root.width - width) / 2 : 0
        height: Math.min(root.height, page.y + body.height + bottom.height + Theme.margin)
        y: root.broad ? Math.max(0, (root.height - height) / 2) : root.height - height
        color: Theme.paper
        border { width: root.broad ? 2 : 0; color: Theme.ink }

        Rectangle {
            visible: !root.broad
            width: parent.width
            height: 2
            color: Theme.ink
        }
        HeadText {
            id: heading
            x: Theme.margin
            y: Math.max(10, 8 + (closer.height - height) / 2)
            width: closer.x - x - 8
            text: root.title
        }
        IconButton {
            id: closer
            x: parent.width - width - 12
            y: 8
            icon: "close"
            name: root.closeName
            framed: false
            onClicked: root.dismissed()
        }
        Scroller {
            id: page
            x: 2
            y: Math.max(heading.y + heading.height, closer.y + closer.height) + 8
            width: panel.width - 4
            height: panel.height - y - bottom.height - Theme.gap
            name: root.title
            contentHeight: body.height

            Column {
                id: body
                x: Theme.margin - 2
                width: page.width - 2 * x
                spacing: 12
            }
        }
        Column {
            id: bottom
            y: panel.height - height - Theme.gap
            x: Theme.margin
            width: parent.width - 2 * x
            topPadding: acts.visibleChildren.length > 0 ? Theme.gap : 0
            Column {
                id: acts
                width: parent.width
                spacing: Theme.gap
            }
        }
    }
}
