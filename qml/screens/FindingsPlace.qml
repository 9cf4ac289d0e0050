// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

Item {
    id: place

    property bool wide: false ///< list and card side by side
    property bool full: false ///< and the drawing as well
}
