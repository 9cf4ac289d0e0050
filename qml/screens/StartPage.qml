// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

Item {
    id: page

    property bool wide: false
    property bool full: false
}
