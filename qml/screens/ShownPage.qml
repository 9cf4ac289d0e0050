// SPDX-License-Identifier: GPL-3.0-or-later
// What the customer was shown: the usual topics, and whatever else was.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: page

    property bool backed: true

    ShownList {
        id: topics
        onTaken: {
            other.text = "";
            words.text = "";
            reason.open = false;
        }
    }

    Rectangle { anchors.fill: parent; color: Theme.paper }

    HandoverHead {
        id: head
        width: parent.width
        title: Words.of("window.shown.title")
        backed: page.backed
    }
    Scroller {
        id: scroll
        anchors { top: head.bottom; left: parent.left; right: parent.right; bottom: parent.bottom }
        name: Words.of("window.shown.title")
        contentHeight: body.height + 2 * Theme.margin

        Column {
            id: body
            width: scroll.width
            topPadding: 12
            spacing: 12

            BodyText {
                x: Theme.margin
                width: parent.width - 2 * x
                text: Words.of("window.shown.lead")
            }
            Column {
                width: parent.width

                Repeater {
                    model: topics
                    delegate: PlainRow {
                        id: row

                        required property int index
                        required property string topic
                        required property string note
                        required property bool shown

                        objectName: "topic-" + index
                        width: body.width
                        mark: shown ? Verdict.Pass : Verdict.ToDo
                        title: topic
                        second: note
                        done: shown
                        touchable: false

                        ActionButton {
                            objectName: "show-" + row.index
                            width: 108
                            busy: topics.busy
                            style: row.shown ? ActionButton.Plain : ActionButton.Edged
                            text: Words.of(row.shown ? "window.shown.take-back" : "window.shown.tick")
                            name: Words.with(row.shown ? "window.shown.take-back-of" : "window.shown.tick-of", "topic", row.topic)
                            onClicked: {
                                if (row.shown) {
                                    reason.row = row.index;
                                    reason.open = true;
                                } else {
                                    topics.show(row.topic);
                                }
                            }
                        }
                    }
                }
            }
            ProblemLine {
                x: Theme.margin
                width: parent.width - 2 * x
                text: reason.open ? "" : topics.problem
            }
            TextEntry {
                id: other
                objectName: "other-topic"
                x: Theme.margin
                width: parent.width - 2 * x
                label: Words.of("window.shown.other")
                text: Whereabouts.draft("shown/topic")
                onEdited: text => Whereabouts.setDraft("shown/topic", text)
            }
            TextEntry {
                id: words
                objectName: "other-words"
                x: Theme.margin
                width: parent.width - 2 * x
                label: Words.of("window.shown.words")
                multiline: true
                text: Whereabouts.draft("shown/words")
                onEdited: text => Whereabouts.setDraft("shown/words", text)
            }
            ActionButton {
                objectName: "add-topic"
                x: Theme.margin
                width: parent.width - 2 * x
                icon: "add"
                busy: topics.busy
                style: other.text.trim() === "" ? ActionButton.Shut : ActionButton.Plain
                text: Words.of("window.shown.add")
                onClicked: {
                    const topic = other.text, said = words.text;
                    Whereabouts.setDraft("shown/topic", "");
                    Whereabouts.setDraft("shown/words", "");
                    topics.show(topic, said);
                }
            }
        }
    }

    ReasonSheet {
        id: reason

        property bool open: false
        property int row: -1

        visible: open
        title: Words.of("window.shown.reason")
        act: Words.of("window.shown.take-back")
        mark: Verdict.ToDo
        draft: "shown/reason"
        problem: topics.problem
        onGiven: words => topics.takeBack(row, words)
        onDismissed: open = false
    }
}
