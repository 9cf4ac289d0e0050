// SPDX-License-Identifier: GPL-3.0-or-later
// Buttons side by side while their words fit, beneath each other once they do not.
import QtQuick
import Proofwalk.Parts

Item {
    id: root

    /// All alike in width; otherwise each has what its words need and an equal share of the rest.
    property bool even: false
    default property alias keys: root.data

    property bool stacked: false
    property real wantedHeight: 0

    function place() {
        const keys = children;
        if (!keys) return; // while it is taken down
        const shown = [];
        let wanted = 0, widest = 0;
        for (let i = 0; i < keys.length; ++i) {
            const key = keys[i];
            if (!key || !key.visible) continue;
            shown.push(key);
            wanted += key.implicitWidth;
            widest = Math.max(widest, key.implicitWidth);
        }
        if (shown.length === 0 || width <= 0) { wantedHeight = 0; return; }
        const gaps = Theme.gap * (shown.length - 1);
        const alike = even && widest * shown.length + gaps <= width;
        stacked = wanted + gaps > width;
        const rest = (width - gaps - wanted) / shown.length;
        let x = 0, y = 0, tallest = 0;
        for (const key of shown) {
            key.x = x;
            key.y = y;
            key.width = stacked ? width : alike ? (width - gaps) / shown.length : key.implicitWidth + rest;
            tallest = Math.max(tallest, key.implicitHeight);
            if (stacked) y += key.implicitHeight + Theme.gap;
            else x += key.width + Theme.gap;
        }
        if (!stacked)
            for (const key of shown) key.height = tallest;
        else
            for (const key of shown) key.height = key.implicitHeight;
        wantedHeight = stacked ? y - Theme.gap : tallest;
    }

    implicitHeight: wantedHeight
    onWidthChanged: place()
    Component.onCompleted: {
        for (let i = 0; i < children.length; ++i) {
            const key = children[i];
            key.visibleChanged.connect(place);
            key.implicitWidthChanged.connect(place);
            key.implicitHeightChanged.connect(place);
        }
        place();
    }
}
