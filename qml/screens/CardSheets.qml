// SPDX-License-Identifier: GPL-3.0-or-later
// What rises over the card: a reason, what is not as planned, all steps, what is rarer.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

Item {
    id: sheets

    required property DeviceCard card
    property bool listing: false

    function ask(what: string) { shown.what = what; shown.stage = -1; shown.of = reason; }
    function withdraw(stage: int) { shown.what = "withdraw"; shown.stage = stage; shown.of = reason; }
    function fault() { shown.of = faulty; }
    function showMore() { shown.of = more; }
    function showSteps() { shown.of = all; }
    function close() { shown.of = null; }

    Made {
        id: shown

        property string what
        property int stage: -1
    }

    Component {
        id: reason

        ReasonSheet {
            title: Words.of("window.reason." + shown.what)
            act: Words.of("window.reason-act." + shown.what)
            mark: shown.what === "no-access" ? Verdict.NoAccess : Verdict.NotApplicable
            draft: sheets.card.tag + "/reason/" + shown.what
            problem: sheets.card.problem
            onDismissed: sheets.close()
            onGiven: words => {
                if (shown.what === "no-access") sheets.card.noAccess(words);
                else if (shown.what === "not-applicable") sheets.card.notApplicable(words);
                else if (shown.what === "note") sheets.card.note(words);
                else sheets.card.withdraw(shown.stage, words);
                sheets.close();
            }
        }
    }

    Component {
        id: faulty

        FaultSheet {
            subject: sheets.card.subject
            steps: sheets.card.stepNames
            onDone: sheets?.close()
            onDismissed: sheets.close()
        }
    }

    Component {
        id: more

        SheetPanel {
            title: sheets.card.tag
            onDismissed: sheets.close()

            ActionButton {
                objectName: "no-access-device"
                width: parent.width
                text: Words.of("window.reason.no-access")
                onClicked: sheets.ask("no-access")
            }
            ActionButton {
                objectName: "not-applicable"
                width: parent.width
                text: Words.of("window.reason.not-applicable")
                onClicked: sheets.ask("not-applicable")
            }
            ActionButton {
                objectName: "started"
                visible: sheets.card.task === DeviceCard.Read || sheets.card.task === DeviceCard.Time
                width: parent.width
                text: Words.of("window.started")
                onClicked: { sheets.card.started(); sheets.close(); }
            }
            ActionButton {
                objectName: "bulk"
                visible: sheets.card.bulkPeers > 0
                width: parent.width
                text: Words.with("window.bulk", "count", sheets.card.bulkPeers)
                second: Words.of("window.bulk-marked")
                onClicked: { sheets.card.asPlannedInBulk(); sheets.close(); }
            }
            ActionButton {
                objectName: "write-note"
                width: parent.width
                icon: "note"
                text: Words.of("window.reason.note")
                onClicked: sheets.ask("note")
            }
            ActionButton {
                objectName: "all-steps"
                width: parent.width
                icon: "stairs"
                text: Words.of("window.all-steps")
                onClicked: sheets.showSteps()
            }
        }
    }

    Component {
        id: all

        StepsSheet {
            card: sheets.card
            onDismissed: sheets.close()
            onChosen: stage => { sheets.card.choose(stage); sheets.close(); }
            onWithdrawn: stage => sheets.withdraw(stage)
        }
    }
}
