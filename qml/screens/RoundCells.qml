// SPDX-License-Identifier: GPL-3.0-or-later
// All subjects of a round in the panel's order; where not all have room, those around the one in hand. The arrows go
// from cell to cell.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: grid

    required property RoundGrid cells
    property int columns: 4
    property bool roomy: false ///< cells with their labels
    property real tallest: 80
    readonly property real cellHeight: roomy ? tallest : 52
    property real room: 4 * cellHeight + 26 ///< as high as it may be, with the line that says how many are left out

    readonly property int allRows: Math.ceil(cells.count / columns)
    readonly property bool captioned: room >= cellHeight + 26 ///< there is room for the line that counts the others
    readonly property int shownRows: Math.max(1, Math.min(allRows, Math.floor((room - (allRows * cellHeight + 4 <= room ? 4 : captioned ? 26 : 4)) / cellHeight)))
    property int firstRow: 0
    readonly property bool cut: shownRows < allRows
    readonly property int above: firstRow * columns
    readonly property int below: Math.max(0, cells.count - (firstRow + shownRows) * columns)

    function measure() {
        let most = 80;
        for (let i = 0; i < all.count; ++i) most = Math.max(most, Math.ceil((all.itemAt(i) as RoundCell).wantedHeight));
        tallest = most;
    }
    // Qt 6.4 describes callLater to qmllint as something that may be no method.
    function measureLater() { Qt.callLater(measure); } // qmllint disable type
    function follow() {
        const row = Math.floor(Math.max(0, cells.current) / columns);
        if (row < firstRow) firstRow = row;
        else if (row >= firstRow + shownRows) firstRow = row - shownRows + 1;
        firstRow = Math.max(0, Math.min(firstRow, allRows - shownRows));
    }

    implicitHeight: shownRows * cellHeight + (cut && captioned ? 26 : 4)
    onShownRowsChanged: follow()
    onColumnsChanged: follow()
    Component.onCompleted: follow()
    activeFocusOnTab: true
    Accessible.role: Accessible.Table
    Accessible.name: Words.with("window.round-grid", "title", cells.title)
    Accessible.description: Words.join("window.join.on", [cells.number, cells.label])
    Accessible.focusable: true

    Connections {
        target: grid.cells
        function onChanged() { grid.follow(); }
    }

    Keys.onPressed: event => {
        const ways = {
            [Qt.Key_Left]: -1, [Qt.Key_Right]: 1, [Qt.Key_Up]: -columns, [Qt.Key_Down]: columns,
            [Qt.Key_Home]: -cells.current, [Qt.Key_End]: cells.count - 1 - cells.current
        };
        if (ways[event.key] === undefined) return;
        cells.current = Math.max(0, Math.min(cells.count - 1, cells.current + ways[event.key]));
        event.accepted = true;
    }

    Item {
        id: sight
        width: parent.width
        height: grid.shownRows * grid.cellHeight + 1
        clip: true

        Repeater {
            id: all
            model: grid.cells

            RoundCell {
                x: Math.round((index % grid.columns) * (sight.width - 1) / grid.columns)
                y: (Math.floor(index / grid.columns) - grid.firstRow) * grid.cellHeight
                z: current ? 2 : 1
                visible: y >= 0 && y < sight.height - 1
                width: Math.round((sight.width - 1) / grid.columns)
                height: grid.cellHeight
                roomy: grid.roomy
                onWantedHeightChanged: grid.measureLater()
                current: index === grid.cells.current
                onClicked: grid.cells.current = index
            }
        }
    }
    Rectangle {
        visible: grid.cut
        anchors.top: sight.bottom
        width: parent.width
        height: 4
        color: Theme.ink
    }
    Caption {
        visible: grid.cut && grid.captioned
        anchors { top: sight.bottom; topMargin: 6 }
        width: parent.width
        text: grid.above > 0 && grid.below > 0
              ? Words.with("window.round-more-both", "above", grid.above, "below", grid.below)
              : grid.above > 0 ? Words.with("window.round-more-above", "count", grid.above)
                               : Words.with("window.round-more-below", "count", grid.below)
    }
    Rectangle {
        visible: grid.activeFocus && Keyboard.inUse
        anchors { fill: sight; margins: -3 }
        color: "transparent"
        border { width: 2; color: Theme.route }
    }
}
