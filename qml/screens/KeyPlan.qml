// SPDX-License-Identifier: GPL-3.0-or-later
// One floor as equal cells, none of them measured: which room it is, not where in the house.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Parts

Item {
    id: root

    property int rooms: 0
    property list<int> at
    property int mark: Verdict.Fail

    readonly property int perRow: rooms > 4 ? Math.ceil(rooms / 2) : Math.max(1, rooms)
    readonly property color tint: mark === Verdict.Fail ? Theme.failT
        : mark === Verdict.TooClose ? Theme.undT
        : mark === Verdict.Pass ? Theme.done
        : mark === Verdict.ToDo || mark === Verdict.NotApplicable ? Theme.film : Theme.nrT

    function means(room: int): bool {
        for (let i = 0; i < at.length; ++i)
            if (at[i] === room) return true;
        return false;
    }

    visible: rooms > 0
    implicitWidth: 76
    implicitHeight: 48
    Accessible.ignored: true

    Rectangle { anchors.fill: parent; color: Theme.ink }

    Repeater {
        model: root.rooms

        Rectangle {
            id: cell

            required property int index

            readonly property int row: Math.floor(index / root.perRow)
            readonly property int rows: Math.ceil(root.rooms / root.perRow)
            /// The last row may have fewer; its cells are as much wider.
            readonly property int columns: row === rows - 1 ? root.rooms - row * root.perRow : root.perRow
            readonly property int column: index - row * root.perRow
            readonly property bool meant: root.means(index)
            readonly property real wide: (root.width - 2) / columns
            readonly property real high: (root.height - 2) / rows

            x: 2 + column * wide
            y: 2 + row * high
            width: wide - 2
            height: high - 2
            color: meant ? root.tint : Theme.paper
            z: meant ? 1 : 0

            VerdictMark {
                visible: cell.meant
                anchors.centerIn: parent
                width: 16
                height: 16
                mark: root.mark
            }
        }
    }
}
