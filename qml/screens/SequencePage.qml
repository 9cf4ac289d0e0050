// SPDX-License-Identifier: GPL-3.0-or-later
// A sequence over the system: its steps as a strip, the one in hand large; the large button is the act expected next.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: page

    property string sequence: Whereabouts.subject
    readonly property bool finished: strip.inHand < 0
    // By these names for what is made later, in which "entry" is its own.
    readonly property ReadingEntry reading: entry
    readonly property Stopwatch timer: watch

    function press() {
        if (!strip.possible) strip.sayState();
        else if (!strip.timed) strip.asPlanned();
        else if (watch.running) { watch.stop(); entry.setSeconds(watch.elapsed); }
        else if (entry.fresh) entry.record();
        else watch.start();
    }

    SequenceStrip { id: strip; sequence: page.sequence }
    ReadingEntry {
        id: entry
        subject: strip.timed ? strip.subject : ""
        step: strip.timed ? strip.step : ""
        onStepChanged: inSeconds()
        onRecorded: { watch.clear(); strip.choose(-1); }
    }
    Stopwatch {
        id: watch
        of: strip.timed ? strip.subject + "/" + strip.step : ""
        seen: page.visible
        lower: entry.lower
        upper: entry.upper
    }

    Rectangle { anchors.fill: parent; color: Theme.paper }

    PlaceSign {
        id: sign
        width: parent.width
        room: strip.title
        way: strip.doneWords
    }
    Item {
        id: heading
        anchors { top: sign.bottom; left: parent.left; right: parent.right; leftMargin: Theme.margin; rightMargin: Theme.margin }
        height: Math.max(58, words.height + 16, box.height + 12)

        Column {
            id: words
            y: 8
            width: parent.width - box.width - 8

            LeadText { width: parent.width; text: Words.with("window.sequence-area", "area", strip.areaTitles.length > strip.area ? strip.areaTitles[strip.area] : "") }
        }
        Pressable {
            id: box
            objectName: "state"
            anchors { right: parent.right; verticalCenter: parent.verticalCenter }
            width: parent.width * 0.46
            height: Math.max(Theme.target, stateWord.height + 12)
            name: strip.stateWord
            more: Words.of("window.states.title")
            onClicked: Whereabouts.go(Whereabouts.Walk, "state", "")

            Rectangle { anchors.fill: parent; color: Theme.paper; radius: Theme.radius; border { width: 2; color: Theme.ink } }
            Icon { x: 12; anchors.verticalCenter: parent.verticalCenter; width: 22; height: 22; name: strip.isSet ? "really-set" : "place"; colour: Theme.ink }
            BodyText { id: stateWord; x: 42; anchors.verticalCenter: parent.verticalCenter; width: parent.width - x - 8; text: strip.stateWord; font.bold: true; Accessible.ignored: true }
        }
    }
    Flow {
        id: areas
        visible: strip.areas.length > 1
        anchors { top: heading.bottom; left: heading.left; right: heading.right }
        height: visible ? implicitHeight + 8 : 0
        spacing: 8

        Repeater {
            model: strip.areaTitles.length

            ChoiceKey {
                required property int index
                width: Math.min(implicitWidth, areas.width)
                text: strip.areas[index]
                name: strip.areaTitles[index]
                chosen: strip.area === index
                onClicked: strip.area = index
            }
        }
    }

    ListColumn {
        id: rows
        objectName: "strip"
        anchors { top: areas.bottom; bottom: foot.top; bottomMargin: 6; left: parent.left; right: parent.right }
        name: strip.title
        model: strip
        cacheBuffer: 4000
        onActivated: row => strip.choose(row)
        Component.onCompleted: settle()

        // Qt 6.4 describes callLater to qmllint as something that may be no method.
        function settleLater() { Qt.callLater(settle); } // qmllint disable type
        function settle() { if (strip.inHand >= 0) positionViewAtIndex(strip.inHand, ListView.Contain); }

        Connections {
            target: strip
            function onChanged() { rows.settleLater(); }
        }

        delegate: SequenceItem {
            id: line

            width: rows.width
            begun: index > 0
            last: index === rows.count - 1
            brief: page.height < 560
            onTaken: strip.choose(index)
            onHeightChanged: if (here) rows.settleLater()

            Made { of: line.here && line.timed ? time : null }
        }
    }
    Component {
        id: time

        SequenceTime {
            width: parent ? parent.width : 0
            entry: page.reading
            watch: page.timer
        }
    }

    Column {
        id: foot
        anchors { bottom: parent.bottom; bottomMargin: 8; left: parent.left; right: parent.right; leftMargin: Theme.margin; rightMargin: Theme.margin }
        spacing: 8

        ProblemLine { width: parent.width; text: strip.problem !== "" ? strip.problem : entry.problem }
        BodyText { visible: page.finished; width: parent.width; text: Words.of("window.sequence-all") }
        ButtonRow {
            visible: !page.finished
            width: parent.width

            ActionButton {
                objectName: "again"
                visible: strip.timed && (watch.running || entry.fresh)
                icon: "withdraw"
                text: Words.of("window.start-over")
                onClicked: { entry.clear(); watch.clear(); }
            }
            ActionButton { objectName: "not-applicable"; visible: !watch.running; text: Words.of("window.sequence-other"); onClicked: sheet.which = "n/a" }
            VerdictButton { objectName: "not-as-planned"; mark: Verdict.Fail; text: Words.of("window.not-as-planned"); onClicked: sheet.which = "fault" }
        }
        ActionButton {
            objectName: "to-list"
            visible: page.finished
            width: parent.width
            tall: true
            text: Words.of("window.to-list")
            onClicked: Whereabouts.go(Whereabouts.Walk, "", "")
        }
        ActionButton {
            objectName: "next"
            visible: !page.finished
            width: parent.width
            tall: true
            focus: true
            style: strip.possible && !strip.timed ? ActionButton.Pass : ActionButton.Filled
            busy: strip.busy || entry.busy
            text: !strip.possible ? strip.wantsWords
                : !strip.timed ? Words.of("window.as-planned")
                : watch.running ? Words.of("window.watch-stop")
                : entry.fresh ? Words.with("window.watch-keep", "value", entry.valueText) : Words.of("window.watch-start")
            onClicked: page.press()
        }
    }

    Made {
        id: sheet

        property string which

        of: which === "fault" ? fault : which !== "" ? reason : null
    }
    Component {
        id: fault

        FaultSheet {
            subject: strip.subject
            steps: [strip.step]
            onDone: {
                if (!sheet) return;
                sheet.which = "";
                strip.choose(-1);
            }
            onDismissed: sheet.which = ""
        }
    }
    Component {
        id: reason

        ReasonSheet {
            title: Words.of("window.reason.not-applicable")
            act: Words.of("window.reason-act.not-applicable")
            mark: Verdict.NotApplicable
            draft: "n/a/" + strip.subject + "/" + strip.step
            problem: strip.problem
            onGiven: words => { strip.notApplicable(words); sheet.which = ""; }
            onDismissed: sheet.which = ""
        }
    }
}
