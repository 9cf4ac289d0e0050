// SPDX-License-Identifier: GPL-3.0-or-later
// What was done for the time of the work, until every bit of it is back.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: page

    property bool adding: Whereabouts.draft("put-back/open") !== ""
    property string withdrawing

    PutBackList {
        id: list
        onTaken: {
            page.withdrawing = "";
            page.close();
        }
    }
    Timer { interval: 30000; repeat: true; running: page.visible && list.left > 0; onTriggered: list.refresh() }

    function open() { adding = true; Whereabouts.setDraft("put-back/open", "1"); }
    function close() {
        adding = false;
        for (const draft of ["open", "what", "tag", "where"]) Whereabouts.setDraft("put-back/" + draft, "");
    }

    Rectangle { anchors.fill: parent; color: Theme.paper }

    Item {
        id: heading
        width: parent.width
        height: Math.max(46, title.height + 14)

        HeadText { id: title; x: Theme.margin; y: 8; width: parent.width - summary.width - 2 * x - 8; text: Words.of("window.put-back") }
        BodyText {
            id: summary
            anchors { right: parent.right; rightMargin: Theme.margin; baseline: title.baseline }
            text: list.summary
            wrapMode: Text.NoWrap
        }
        RowRule { heavy: true; anchors.bottom: parent.bottom; width: parent.width }
    }

    ListColumn {
        id: rows
        objectName: "rows"
        anchors { top: heading.bottom; bottom: foot.top; left: parent.left; right: parent.right }
        name: Words.of("window.put-back")
        model: list

        delegate: PutBackItem {
            width: rows.width
            busy: list.busy
            onPutBack: list.putBack(title)
            onTakeOut: page.withdrawing = event
        }
    }

    Column {
        id: foot
        anchors { bottom: parent.bottom; bottomMargin: 8; left: parent.left; right: parent.right; leftMargin: Theme.margin; rightMargin: Theme.margin }
        spacing: 8

        RowRule { width: parent.width }
        ProblemLine { width: parent.width; text: page.adding ? "" : list.problem }
        BodyText { width: parent.width; text: Words.of(list.left > 0 ? "window.put-back-gate" : "window.put-back-none") }
        ActionButton {
            objectName: "add"
            width: parent.width
            tall: true
            icon: "add"
            text: Words.of("window.put-back-add")
            onClicked: page.open()
        }
    }

    Made { of: page.adding ? entry : page.withdrawing !== "" ? takeOut : null }
    Component {
        id: entry

        SheetPanel {
            title: Words.of("window.put-back-add.title")
            onDismissed: page.close()

            TextEntry {
                id: what
                objectName: "what"
                width: parent.width
                label: Words.of("window.put-back-what")
                placeholder: Words.of("window.put-back-what.example")
                text: Whereabouts.draft("put-back/what")
                onEdited: text => Whereabouts.setDraft("put-back/what", text)
            }
            TextEntry {
                id: tag
                objectName: "tag"
                width: parent.width
                label: Words.of("window.put-back-tag")
                text: Whereabouts.draft("put-back/tag")
                onEdited: text => Whereabouts.setDraft("put-back/tag", text)
            }
            TextEntry {
                id: where
                objectName: "where"
                width: parent.width
                label: Words.of("window.put-back-where")
                placeholder: Words.of("window.put-back-where.example")
                text: Whereabouts.draft("put-back/where")
                onEdited: text => Whereabouts.setDraft("put-back/where", text)
            }
            foot: [
                ProblemLine { width: parent.width; text: list.problem },
                ActionButton {
                    objectName: "keep"
                    width: parent.width
                    tall: true
                    style: what.text.trim() === "" ? ActionButton.Shut : ActionButton.Filled
                    busy: list.busy
                    text: Words.of("window.put-back-keep")
                    second: what.text.trim() === "" ? Words.of("window.put-back-what-first") : ""
                    onClicked: list.add(what.text, tag.text, where.text)
                }
            ]
        }
    }
    Component {
        id: takeOut

        ReasonSheet {
            title: Words.of("window.put-back-withdraw")
            act: Words.of("window.reason-act.withdraw")
            mark: Verdict.ToDo
            draft: "put-back/withdraw"
            problem: list.problem
            onGiven: words => list.withdraw(page.withdrawing, words)
            onDismissed: page.withdrawing = ""
        }
    }
}
