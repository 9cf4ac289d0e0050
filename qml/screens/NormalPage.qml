// SPDX-License-Identifier: GPL-3.0-or-later
// Back to normal: what is temporary put back, areas out of test, monitoring off test.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: page

    property bool backed: true

    NormalList {
        id: list
        onTaken: call.open = false
    }

    Rectangle { anchors.fill: parent; color: Theme.paper }

    HandoverHead {
        id: head
        width: parent.width
        title: Words.of("window.normal.title")
        backed: page.backed
    }
    Scroller {
        id: scroll
        anchors { top: head.bottom; left: parent.left; right: parent.right; bottom: parent.bottom }
        name: Words.of("window.normal.title")
        contentHeight: body.height + Theme.margin

        Column {
            id: body
            width: scroll.width

            BodyText {
                visible: rows.count === 0
                x: Theme.margin
                width: parent.width - 2 * x
                topPadding: 12
                text: Words.of("window.normal.empty")
            }
            Repeater {
                id: rows
                model: list
                delegate: PlainRow {
                    id: row

                    required property int index
                    required property int type
                    required property string key
                    required property bool back

                    required title
                    required second

                    objectName: "normal-" + index
                    width: body.width
                    icon: type === NormalList.Account ? "on-test"
                        : type === NormalList.Temporary ? (back ? "lid-on" : "lid-off") : "really-set"
                    done: back
                    touchable: false

                    ActionButton {
                        objectName: "normal-act-" + row.index
                        visible: !row.back
                        width: visible ? 108 : 0
                        busy: list.busy
                        style: ActionButton.Edged
                        text: Words.of(row.type === NormalList.Account ? "window.normal.off-test"
                                     : row.type === NormalList.Temporary ? "window.normal.put-back"
                                     : "window.normal.unset")
                        onClicked: {
                            if (row.type === NormalList.Temporary) list.putBack(row.key);
                            else if (row.type === NormalList.AreaState) list.unset(row.key);
                            else call.begin(row.key);
                        }
                    }
                }
            }
            ProblemLine {
                x: Theme.margin
                width: parent.width - 2 * x
                text: call.open ? "" : list.problem
            }
        }
    }

    SheetPanel {
        id: call

        property bool open: false
        property string account

        function begin(of: string) {
            account = of;
            told.text = list.toldBefore(of);
            reference.text = list.referenceBefore(of);
            open = true;
        }

        visible: open
        title: Words.with("window.normal.off-test-title", "account", account)
        onDismissed: open = false

        TextEntry {
            id: told
            objectName: "told"
            width: parent.width
            label: Words.of("window.normal.told")
            problem: list.problem
        }
        TextEntry {
            id: reference
            objectName: "reference"
            width: parent.width
            label: Words.of("window.normal.reference")
        }

        foot: ActionButton {
            objectName: "off-test-do"
            width: parent ? parent.width : 0
            tall: true
            busy: list.busy
            style: ActionButton.Filled
            text: Words.of("window.normal.off-test-do")
            onClicked: list.offTest(call.account, told.text, reference.text)
        }
    }
}
