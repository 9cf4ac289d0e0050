// SPDX-License-Identifier: GPL-3.0-or-later
// Trials count themselves: one key for a trial that answered, one for a miss. With the last one they are recorded.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

Column {
    id: trials

    required property DeviceCard card

    spacing: Theme.gap

    TrialCount {
        id: counted
        of: trials.card.tag + "/" + trials.card.stepsName
        wanted: trials.card.trialsWanted
        onComplete: (hits, tries) => trials.card.trials(hits, tries)
    }
    Connections {
        target: trials.card
        function onAnswered() { counted.startOver(); }
        function onProblemChanged() { if (trials.card.problem !== "") counted.startOver(); }
    }

    Row {
        width: parent.width
        spacing: 16

        TrialBoxes {
            anchors.verticalCenter: parent.verticalCenter
            hits: counted.hits
            tries: counted.tries
            wanted: counted.wanted
        }
        FigureText {
            anchors.verticalCenter: parent.verticalCenter
            text: counted.words
            font.pixelSize: Theme.lead
        }
        LinkText {
            objectName: "start-over"
            visible: counted.tries > 0
            text: Words.of("window.start-over")
            onClicked: counted.startOver()
        }
    }
    VerdictButton {
        objectName: "missed"
        width: parent.width
        text: Words.of("window.missed")
        mark: Verdict.Fail
        onClicked: counted.missed()
    }
    VerdictButton {
        objectName: "answered"
        width: parent.width
        filled: true
        busy: trials.card.busy
        text: Words.of("window.it-answered")
        second: trials.card.answersWords
        onClicked: counted.answered()
    }
}
