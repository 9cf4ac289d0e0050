// SPDX-License-Identifier: GPL-3.0-or-later
// The line under a row (decoration) or, heavy, under a heading.
import QtQuick
import Proofwalk.Parts

Rectangle {
    property bool heavy: false

    implicitWidth: parent ? parent.width : 0
    implicitHeight: heavy ? 2 : 1
    color: heavy ? Theme.ink : Theme.hair
}
