// SPDX-License-Identifier: GPL-3.0-or-later
// A time by the stopwatch: a corridor walked round the figure, its doorway where the time may end. Stopped, the figure
// stands until it is kept or taken anew.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: page

    property string subject
    property string step
    property bool typing: false
    // By these names for parts in which "entry" and "watch" are their own.
    readonly property ReadingEntry reading: entry
    readonly property Stopwatch timer: watch
    signal done()
    signal wantsFault()

    function press() {
        if (watch.running) { watch.stop(); entry.setSeconds(watch.elapsed); }
        else if (entry.fresh) entry.record();
        else watch.start();
    }
    function again() {
        entry.clear();
        watch.clear();
        typing = false;
    }

    ReadingEntry {
        id: entry
        subject: page.subject
        step: page.step
        Component.onCompleted: inSeconds()
        onStepChanged: inSeconds()
        onRecorded: { watch.clear(); page.done(); }
    }
    Stopwatch {
        id: watch
        of: page.subject + "/" + page.step
        seen: page.visible
        lower: entry.lower
        upper: entry.upper
    }

    Rectangle { anchors.fill: parent; color: Theme.paper }

    CautionBand {
        id: caution
        visible: entry.caution !== "" && !watch.running
        width: parent.width
        height: visible ? implicitHeight : 0
        text: entry.caution
    }

    Column {
        id: heading
        anchors { top: caution.bottom; topMargin: 8; left: parent.left; right: parent.right; leftMargin: Theme.margin; rightMargin: Theme.margin }
        spacing: 2

        LeadText { width: parent.width; text: entry.act; font.pixelSize: watch.running || page.height < 420 ? Theme.text : Theme.lead }
        Caption { width: parent.width; text: entry.expect; visible: !watch.running && page.height > 420 }
        Caption {
            width: parent.width
            visible: text !== "" && page.height >= 320
            text: isNaN(entry.lower) && isNaN(entry.upper) ? "" : Words.join("window.join.on", [entry.limitsText, entry.unitText])
            color: Theme.ink
        }
    }

    Item {
        id: stage
        anchors { top: heading.bottom; topMargin: page.height < 320 ? 0 : 6; bottom: state.top; bottomMargin: 4; left: parent.left; right: parent.right; leftMargin: Theme.margin; rightMargin: Theme.margin }
        visible: !page.typing
        readonly property bool low: height < 110 ///< no room for a corridor round the figure

        SequenceTime {
            visible: stage.low
            width: parent.width
            entry: page.reading
            watch: page.timer
        }
        StopwatchPicture {
            id: corridor
            visible: !stage.low
            anchors.fill: parent
            elapsed: watch.elapsed
            lower: entry.lower
            upper: entry.upper
            full: entry.corridor
            previous: entry.earlier
            Accessible.role: Accessible.Graphic
            Accessible.name: Words.of("window.reading")
            Accessible.description: watch.figure
        }
        Column {
            id: inner
            visible: !stage.low
            x: corridor.inside.x
            width: corridor.inside.width
            y: corridor.inside.y + (corridor.inside.height - height) / 2
            spacing: 0

            Caption {
                width: parent.width
                visible: corridor.inside.height > 130
                horizontalAlignment: Text.AlignHCenter
                text: entry.earlier.length > 0 ? Words.with("window.watch-trials", "count", entry.earlier.length)
                    : watch.running ? "" : watch.stopped ? Words.of("window.watch-result") : Words.of("window.watch-idle")
                color: Theme.ink
            }
            FigureText {
                objectName: "figure"
                width: parent.width
                horizontalAlignment: Text.AlignHCenter
                text: Words.join("window.join.on", [watch.figure, entry.unitText])
                font.pixelSize: Math.max(Theme.figure, Math.min(80, corridor.inside.height * 0.46, corridor.inside.width * 0.3))
                wrapMode: Text.NoWrap
            }
            BodyText {
                width: parent.width
                horizontalAlignment: Text.AlignHCenter
                visible: text !== ""
                text: watch.aheadWords
                color: Theme.runC
                font.bold: true
            }
        }
    }

    Row {
        id: state
        anchors { bottom: page.typing ? pad.top : keys.top; bottomMargin: 8; horizontalCenter: parent.horizontalCenter }
        height: entry.fresh ? 30 : 0
        visible: entry.fresh
        spacing: 8

        VerdictMark { width: 24; height: 24; mark: entry.verdict }
        LeadText { text: Words.join("window.join.list", [Words.join("window.join.on", [entry.valueText, entry.unitText]), entry.verdictWord]); wrapMode: Text.NoWrap }
    }

    NumberPad {
        id: pad
        objectName: "pad"
        visible: page.typing
        anchors { bottom: keys.top; bottomMargin: 8; left: parent.left; right: parent.right; leftMargin: Theme.margin; rightMargin: Theme.margin }
        height: visible ? implicitHeight : 0
        unitText: entry.unitText
        nextText: Words.of("window.keep")
        nextBusy: entry.busy
        nextShut: !entry.complete
        onDigit: figure => entry.digit(figure)
        onPoint: entry.point()
        onSign: entry.sign()
        onErase: entry.erase()
        onNext: entry.record()
    }

    Column {
        id: keys
        anchors { bottom: parent.bottom; bottomMargin: 8; left: parent.left; right: parent.right; leftMargin: Theme.margin; rightMargin: Theme.margin }
        spacing: 8

        ProblemLine { width: parent.width; text: entry.problem }
        Caption { width: parent.width; visible: entry.wanting === ReadingEntry.AreaState; text: entry.wantingWords; color: Theme.ink }
        ButtonRow {
            width: parent.width

            ActionButton {
                objectName: "again"
                visible: watch.running || entry.fresh
                icon: "withdraw"
                text: Words.of("window.start-over")
                onClicked: page.again()
            }
            ActionButton {
                objectName: "type"
                visible: !watch.running
                icon: "write"
                text: Words.of(page.typing ? "window.watch-by-watch" : "window.watch-type")
                onClicked: {
                    page.typing = !page.typing;
                    if (page.typing) pad.forceActiveFocus(Qt.OtherFocusReason);
                }
            }
            ActionButton {
                objectName: "not-as-planned"
                text: Words.of("window.not-as-planned")
                onClicked: page.wantsFault()
            }
        }
        ActionButton {
            objectName: "watch"
            visible: !page.typing
            width: parent.width
            tall: true
            focus: true
            style: ActionButton.Filled
            busy: entry.busy
            text: watch.running ? Words.of("window.watch-stop")
                : entry.fresh ? Words.with("window.watch-keep", "value", entry.valueText) : Words.of("window.watch-start")
            onClicked: page.press()
        }
    }
}
