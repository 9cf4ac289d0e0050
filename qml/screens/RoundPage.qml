// SPDX-License-Identifier: GPL-3.0-or-later
// A round: one reading after the other at the panel, a grid as the panel has them, the pad under the thumb; "next"
// records and goes on. Wide, the grid stands beside what is in hand.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: page

    property string round: Whereabouts.subject
    readonly property bool broad: width >= 700
    readonly property bool low: height < 560
    readonly property real besides: sign.height + caution.height + (page.low ? 8 : heading.height) + figure.height + wants.height + pad.height + 8 + 6 + 8

    function keep() {
        if (entry.fresh) entry.record();
        else grid.moveOn();
    }
    function keepFinding() {
        if (entry.fresh) { findingAfter = true; entry.record(); }
        else if (grid.findingKey !== "") sheet.show("finding");
        else sheet.show("fault");
    }

    property bool findingAfter: false
    // By this name for what is made later, in which "entry" is its own.
    readonly property ReadingEntry reading: entry

    RoundGrid { id: grid; round: page.round }
    ReadingEntry {
        id: entry
        subject: grid.subject
        step: grid.step
        onRecorded: {
            if (page.findingAfter) { page.findingAfter = false; page.keepFinding(); }
            else grid.moveOn();
        }
    }

    Rectangle { anchors.fill: parent; color: Theme.paper }

    PlaceSign {
        id: sign
        anchors { left: parent.left; right: parent.right; leftMargin: page.broad ? page.width - side.width : 0 }
        floor: grid.title
        room: page.low && !page.broad ? grid.answeredWords : ""
        way: Words.of("window.round-at-panel")
    }

    // What core would want first, and the way there.
    CautionBand {
        id: caution
        anchors { top: page.broad ? undefined : sign.bottom; left: parent.left; right: parent.right }
        visible: entry.caution !== "" && !page.cautionRead && !page.broad
        height: visible ? implicitHeight : 0
        text: entry.caution
    }

    property bool cautionSeen: false
    readonly property bool cautionRead: grid.answered > 0 || entry.fresh || cautionSeen
    /// The caution first: on a narrow page nothing else can be done until it was seen.
    readonly property bool gate: entry.caution !== "" && !cautionRead && !broad

    Item {
        id: heading
        visible: !page.low || page.broad
        y: page.broad ? 14 : sign.height + caution.height
        x: page.broad ? 24 : Theme.margin
        width: page.broad ? page.width - side.width - 48 : page.width - 2 * Theme.margin
        height: visible ? Math.max(32, title.height + (page.broad ? summary.height + 8 : 4)) : 0

        LeadText {
            id: title
            y: 4
            width: Math.min(Math.ceil(implicitWidth), parent.width - count.width - 8)
            text: grid.title
            font.pixelSize: page.broad ? Theme.head : Theme.lead
        }
        Caption {
            visible: !page.broad && title.width + implicitWidth + count.width + 24 < parent.width
            anchors { left: title.right; leftMargin: 8; baseline: title.baseline }
            text: Words.join("window.join.list", [entry.unitText, entry.instrument])
            wrapMode: Text.NoWrap
        }
        FigureText {
            id: count
            anchors { right: parent.right; baseline: title.baseline }
            text: grid.answeredWords
            font.pixelSize: page.broad ? Theme.head : Theme.lead
        }
        Caption {
            id: summary
            visible: page.broad
            anchors { top: title.bottom; topMargin: 4 }
            width: parent.width
            text: Words.join("window.join.on", [grid.summary, grid.fewWords])
        }
    }

    RoundCells {
        id: cells
        objectName: "cells"
        visible: room >= 56 // the figure comes first where there is no room for both
        anchors { top: page.low && !page.broad ? caution.bottom : heading.bottom; topMargin: page.low ? 8 : page.broad ? 8 : 0; left: heading.left; right: heading.right }
        cells: grid
        columns: page.broad ? Math.max(3, Math.floor(width / 104)) : 4
        roomy: page.broad
        room: page.broad ? page.height - y - 60 : page.gate ? page.height - y - gate.height - 20 : page.height - page.besides
    }
    Caption {
        id: single
        visible: page.broad
        anchors { top: cells.bottom; topMargin: 12; left: heading.left; right: heading.right }
        text: Words.of("window.round-not-bulk")
    }
    LoopsAtOnce {
        id: together
        objectName: "together"
        visible: page.broad && grid.wiring !== "" && any && height >= 200
        anchors { top: single.bottom; topMargin: 20; left: heading.left; right: heading.right }
        height: Math.min(320, page.height - y - 16)
    }

    // What is in hand: under the grid, or beside it.
    Rectangle {
        id: side
        visible: page.broad
        anchors { right: parent.right; top: parent.top; bottom: parent.bottom }
        width: page.broad ? Math.min(392, page.width * 0.5) : page.width
        color: "transparent"
        z: -1
    }
    Rectangle { visible: page.broad; x: side.x - 2; width: 2; height: page.height; color: Theme.ink }

    Scroller {
        id: told
        visible: page.broad
        anchors { top: figure.bottom; topMargin: 10; bottom: wants.top; bottomMargin: 8; left: side.left; right: side.right }
        name: Words.of("window.reading")
        contentHeight: words.height

        Column {
            id: words
            x: Theme.margin
            width: told.width - 2 * x
            spacing: 8

            CautionBand { visible: entry.caution !== "" && !page.cautionRead; x: -Theme.margin; width: told.width; height: visible ? implicitHeight : 0; text: entry.caution }
            BodyText { width: parent.width; text: entry.act; visible: entry.diagnosisLong === "" }
            LeadText { width: parent.width; visible: text !== ""; text: entry.diagnosisLong }
            BodyText { width: parent.width; visible: text !== ""; text: entry.tell }
            Caption { width: parent.width; visible: text !== ""; text: grid.wiring }
        }
    }

    RoundFigure {
        id: figure
        objectName: "figure"
        anchors { left: page.broad ? side.left : parent.left; right: parent.right }
        y: page.broad ? sign.y + sign.height : wants.y - height
        visible: !page.gate
        height: implicitHeight
        more: !page.broad
        onWantsMore: sheet.show("more")
        entry: entry
        number: grid.number
        label: grid.label
        bare: page.broad
    }

    Item {
        id: wants
        anchors { left: page.broad ? side.left : parent.left; right: parent.right; bottom: page.broad ? pad.top : pad.top; bottomMargin: 6 }
        visible: entry.wanting !== ReadingEntry.Nothing && !page.gate
        height: visible ? Math.max(48, wantWords.height + 4) : 0

        Caption {
            id: wantWords
            x: Theme.margin
            anchors.verticalCenter: parent.verticalCenter
            width: parent.width - x - wantKey.width - 24
            text: entry.wantingWords
            color: Theme.ink
        }
        LinkText {
            id: wantKey
            objectName: "wants"
            anchors { right: parent.right; rightMargin: Theme.margin; verticalCenter: parent.verticalCenter }
            width: Math.min(implicitWidth, 120)
            text: entry.wanting === ReadingEntry.AreaState ? Words.of("window.to-states") : Words.of("window.to-kit")
            onClicked: Whereabouts.go(Whereabouts.Walk, entry.wanting === ReadingEntry.AreaState ? "state" : "arrival", entry.wanting === ReadingEntry.AreaState ? "" : "kit")
        }
    }

    NumberPad {
        id: pad
        objectName: "pad"
        visible: !page.gate
        focus: true
        anchors { left: page.broad ? side.left : parent.left; right: parent.right; bottom: page.broad ? keys.top : parent.bottom; leftMargin: Theme.margin; rightMargin: Theme.margin; bottomMargin: 8 }
        unitText: entry.unitText
        leftEnd: entry.leftEnd
        rightEnd: entry.rightEnd
        nextText: Words.of("window.round-next")
        nextBusy: entry.busy
        nextShut: entry.fresh && !entry.complete
        onDigit: figure => entry.digit(figure)
        onPoint: entry.point()
        onSign: entry.sign()
        onErase: entry.erase()
        onEnd: which => entry.end(which)
        onNext: page.keep()
        Keys.forwardTo: [cells]
    }

    Column {
        id: gate
        visible: page.gate
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: Theme.margin; bottomMargin: 8 }
        spacing: 12

        BodyText { width: parent.width; text: entry.act; font.bold: true }
        ActionButton {
            objectName: "caution-seen"
            width: parent.width
            tall: true
            style: ActionButton.Filled
            text: Words.of("window.round-caution-seen")
            onClicked: { page.cautionSeen = true; pad.forceActiveFocus(Qt.OtherFocusReason); }
        }
    }

    ButtonRow {
        id: keys
        visible: page.broad
        anchors { left: page.broad ? side.left : parent.left; right: parent.right; bottom: parent.bottom; leftMargin: Theme.margin; rightMargin: Theme.margin; bottomMargin: 8 }

        ActionButton {
            objectName: "no-access"
            tall: page.broad
            wordSize: page.broad ? Theme.lead : Theme.text
            text: Words.of("window.no-access")
            onClicked: sheet.show("no-access")
        }
        ActionButton {
            objectName: "keep-finding"
            tall: page.broad
            style: entry.verdict === Verdict.Fail ? ActionButton.Fail : ActionButton.Plain
            text: Words.of("window.round-keep-finding")
            wordSize: page.broad ? Theme.lead : Theme.text
            onClicked: page.keepFinding()
        }
    }

    Made {
        id: sheet

        property string which

        function show(what: string) { which = what; }
        function away() { which = ""; pad.forceActiveFocus(Qt.OtherFocusReason); }

        of: which === "more" ? more
          : which === "no-access" ? noAccess
          : which === "finding" ? described
          : which === "fault" ? fault : null
    }
    Component {
        id: more

        RoundMore {
            entry: page.reading
            title: Words.join("window.join.on", [grid.number, grid.label])
            wiring: grid.wiring
            onWantsNoAccess: sheet.show("no-access")
            onWantsFinding: { sheet.away(); page.keepFinding(); }
            onDismissed: sheet.away()
        }
    }
    Component {
        id: noAccess

        ReasonSheet {
            title: Words.with("window.round-no-access", "number", grid.number, "label", grid.label)
            act: Words.of("window.reason-act.no-access")
            draft: "no-access/" + grid.subject
            problem: grid.problem
            onGiven: words => { grid.noAccess(words); sheet.away(); }
            onDismissed: sheet.away()
        }
    }
    Component {
        id: described

        DescribeSheet {
            key: grid.findingKey
            onDone: sheet?.away()
            onDismissed: sheet.away()
        }
    }
    Component {
        id: fault

        FaultSheet {
            subject: grid.subject
            steps: [grid.step]
            onDone: { sheet?.away(); grid?.moveOn(); }
            onDismissed: sheet.away()
        }
    }
}
