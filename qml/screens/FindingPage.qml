// SPDX-License-Identifier: GPL-3.0-or-later
// One finding: what it is, what happened to it, what must be retested because of it, and what can be done now.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: page

    property alias key: finding.key
    property bool returnable: true

    signal leave()

    function ask(sheet: string) { Whereabouts.go(Whereabouts.Findings, sheet, key); }

    FindingHistory { id: finding }
    RetestList { id: retests; key: finding.key; recorded: true }

    Rectangle { anchors.fill: parent; color: Theme.paper }

    Scroller {
        id: scroller
        anchors { top: parent.top; left: parent.left; right: parent.right; bottom: foot.top }
        name: finding.line
        contentHeight: body.height + 24

        Column {
            id: body
            x: Theme.margin
            y: 8
            width: Math.min(scroller.width - 2 * x, 720)
            spacing: 12

            Item {
                width: parent.width
                height: Math.max(48, plate.height)

                IconButton {
                    id: back
                    visible: page.returnable
                    x: -12
                    width: visible ? 48 : 0
                    icon: "back"
                    name: Words.of("window.finding.back")
                    framed: false
                    onClicked: page.leave()
                }
                TagPlate {
                    id: plate
                    visible: finding.found
                    x: page.returnable ? 40 : 0
                    y: 4
                    text: finding.tag
                    failed: finding.verdict === Verdict.Fail
                }
                VerdictMark {
                    id: mark
                    visible: finding.found
                    x: plate.x + plate.width + 14
                    y: 13
                    width: 22
                    height: 22
                    mark: finding.verdict
                }
                LeadText {
                    visible: finding.found
                    anchors.verticalCenter: mark.verticalCenter
                    x: mark.x + 30
                    width: parent.width - x
                    text: finding.word
                }
            }

            BodyText { visible: !finding.found; width: parent.width; text: Words.of("window.finding.gone") }

            Column {
                visible: finding.found
                width: parent.width
                spacing: 4

                HeadText { width: parent.width; text: finding.line }
                Caption {
                    width: parent.width
                    text: Words.join("window.join.beside", [finding.title, finding.floor, finding.room, finding.dueWords])
                }
            }
            TwoRooms {
                visible: finding.found && finding.failed
                width: parent.width
                expected: finding.expected
                seen: finding.seen
            }
            BodyText {
                visible: finding.found && !finding.failed && finding.expected !== finding.line
                width: parent.width
                text: Words.join("window.join.about", [finding.step, finding.expected])
            }
            CautionBand {
                visible: finding.standing !== "" && finding.found
                width: parent.width
                text: finding.standing
            }

            Column {
                visible: retestRows.count > 0
                width: parent.width

                LeadText { width: parent.width; text: Words.of("window.finding.retest-head"); Accessible.role: Accessible.Heading; Accessible.name: text }
                Caption { width: parent.width; text: retests.summary; bottomPadding: 4 }
                Repeater {
                    id: retestRows
                    model: retests
                    delegate: RetestItem {
                        required property int verdict

                        width: body.width
                        mark: verdict
                    }
                }
            }

            Column {
                width: parent.width
                spacing: 0

                LeadText { width: parent.width; text: Words.of("window.finding.history"); Accessible.role: Accessible.Heading; Accessible.name: text }
                Repeater {
                    id: history
                    model: finding
                    delegate: HistoryItem {
                        required property int index

                        width: body.width
                        last: index === history.count - 1
                        onWithdrawing: {
                            Whereabouts.setDraft("withdrawing/" + page.key, event);
                            page.ask("withdraw");
                        }
                    }
                }
            }
        }
    }

    Rectangle {
        id: foot
        visible: finding.found
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        height: visible ? acts.height + 18 : 0
        color: Theme.paper

        Rectangle { width: parent.width; height: 1; color: Theme.hair }
        Column {
            id: acts
            x: Theme.margin
            y: 9
            width: Math.min(parent.width - 2 * x, 720)
            spacing: Theme.gap

            ButtonRow {
                width: parent.width

                ActionButton {
                    objectName: "describe"
                    text: Words.of(finding.words === "" ? "window.finding.describe" : "window.finding.describe-again")
                    onClicked: page.ask("describe")
                }
                ActionButton {
                    objectName: "photograph"
                    text: Words.of("window.finding.add-photograph")
                    onClicked: page.ask("photograph")
                }
                ActionButton {
                    objectName: "accept"
                    visible: finding.acceptable
                    text: Words.of("window.finding.accept")
                    onClicked: page.ask("accept")
                }
            }
            ActionButton {
                objectName: "repair"
                visible: finding.repairable
                width: parent.width
                tall: true
                style: ActionButton.Filled
                text: Words.of("window.finding.repair")
                onClicked: page.ask("repair")
            }
            ActionButton {
                objectName: "retest"
                visible: !finding.repairable && finding.cardTag !== ""
                width: parent.width
                tall: finding.retestWords !== ""
                style: finding.retestWords !== "" ? ActionButton.Filled : ActionButton.Plain
                icon: "go"
                text: finding.retestWords !== "" ? finding.retestWords
                    : Words.with("window.finding.to-card", "tag", finding.cardTag)
                onClicked: Whereabouts.go(Whereabouts.Walk, "card", finding.cardTag)
            }
        }
    }
}
