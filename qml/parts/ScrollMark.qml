// SPDX-License-Identifier: GPL-3.0-or-later
// How much of a page is seen and where: a thin mark at its edge. It is looked at, not touched.
import QtQuick
import Proofwalk.Parts

Rectangle {
    id: root

    required property Flickable page

    parent: page
    visible: page.contentHeight > page.height + 1
    z: 20
    x: page.width - width - 2
    y: page.visibleArea.yPosition * page.height
    width: 3
    height: Math.max(16, page.visibleArea.heightRatio * page.height)
    color: Theme.ink2
}
