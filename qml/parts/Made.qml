// SPDX-License-Identifier: GPL-3.0-or-later
// What is made when it is wanted, beside this, and gone when it is not. A Loader would do; but Qt 6.4's cannot make what
// is bound to the page it stands in, and what is not bound qmllint cannot check. It outlives its page by a moment, in
// which an answer may still reach it: what it does with one asks whether the page is there ("page?.moveOn()").
import QtQuick

Repeater {
    id: root

    /// One at a time; null: nothing. The old one is gone before the new one is made.
    property Component of: null

    function make() {
        model = 0;
        delegate = of;
        model = of ? 1 : 0;
    }

    model: 0
    onOfChanged: make()
    // It is deleted later; that it is no longer seen it learns at once.
    onItemRemoved: (index, item) => item.visible = false
}
