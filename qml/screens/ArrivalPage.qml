// SPDX-License-Identifier: GPL-3.0-or-later
// Before anything is touched: how the system was found, what is measured with, the clocks; then the accounts are put on
// test.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: page

    property string sheet: Whereabouts.draft("arrival/sheet")
    property string event

    function open(what: string) { sheet = what; Whereabouts.setDraft("arrival/sheet", what); }
    function close() {
        for (const draft of ["sheet", "words", "display", "name", "quantity", "percent", "digits", "fixed", "calibrated",
                             "clock", "offset", "uncertainty", "told", "reference", "until", "withdraw"])
            Whereabouts.setDraft("arrival/" + draft, "");
        sheet = "";
    }

    Arrival { id: arrival; onTaken: page.close() }

    Rectangle { anchors.fill: parent; color: Theme.paper }

    PlaceSign {
        id: sign
        width: parent.width
        room: Words.of("window.arrival")
        way: Words.of("window.arrival-sign")
    }

    Item {
        id: heading
        anchors { top: sign.bottom; left: parent.left; right: parent.right }
        height: Math.max(40, title.height + 12)

        HeadText { id: title; x: Theme.margin; y: 8; width: parent.width - kept.width - 2 * x - 8; text: Words.of("window.as-found") }
        Caption {
            id: kept
            anchors { right: parent.right; rightMargin: Theme.margin; baseline: title.baseline }
            text: arrival.keptWords
            wrapMode: Text.NoWrap
        }
    }
    Rectangle {
        id: display
        visible: arrival.display !== ""
        anchors { top: heading.bottom; left: parent.left; right: parent.right; leftMargin: Theme.margin; rightMargin: Theme.margin }
        height: visible ? shown.y + shown.height + 12 : 0
        color: Theme.band

        Caption { x: 12; y: 8; width: parent.width - 24; text: Words.of("window.on-display"); color: Theme.bandInk }
        FigureText {
            id: shown
            x: 12
            y: 28
            width: parent.width - 24
            text: arrival.display
            color: Theme.bandInk
            font.pixelSize: Theme.lead
        }
    }

    ListColumn {
        id: rows
        objectName: "rows"
        anchors { top: display.bottom; topMargin: 8; bottom: foot.top; bottomMargin: 4; left: parent.left; right: parent.right }
        name: Words.of("window.arrival")
        model: arrival

        delegate: PlainRow {
            required property int index
            required property int part
            required property string key
            required property string event
            required property bool kept
            required title
            required second
            required right

            function take() {
                if (kept) { page.event = event; page.open("withdraw"); }
                else page.open(["found", "kit", "clock", "test"][part]);
            }

            width: rows.width
            mark: kept ? Verdict.Pass : Verdict.ToDo
            onClicked: take()
        }
        onActivated: row => (itemAtIndex(row) as PlainRow).press()
    }

    Column {
        id: foot
        anchors { bottom: parent.bottom; bottomMargin: 8; left: parent.left; right: parent.right; leftMargin: Theme.margin; rightMargin: Theme.margin }
        spacing: 8

        ProblemLine { width: parent.width; text: page.sheet === "" ? arrival.problem : "" }
        ButtonRow {
            width: parent.width

            ActionButton { objectName: "add-found"; text: Words.of("window.as-found.short"); onClicked: page.open("found") }
            ActionButton { objectName: "add-kit"; text: Words.of("window.kit.add"); onClicked: page.open("kit") }
            ActionButton { objectName: "add-clock"; text: Words.of("window.clocks.add"); onClicked: page.open("clock") }
        }
        Caption {
            width: parent.width
            text: arrival.accounts.length === 0 ? Words.of("window.put-on-test.nobody")
                : arrival.waiting === "" ? Words.of("window.put-on-test.done") : Words.of("window.put-on-test.first")
        }
        ActionButton {
            objectName: "put-on-test"
            visible: arrival.waiting !== ""
            width: parent.width
            tall: true
            icon: "on-test"
            style: arrival.foundKept ? ActionButton.Filled : ActionButton.Shut
            text: Words.of("window.put-on-test")
            second: arrival.missingWords
            onClicked: page.open("test")
        }
    }

    Made {
        of: page.sheet === "found" ? found
          : page.sheet === "kit" ? kit
          : page.sheet === "clock" ? clock
          : page.sheet === "test" ? test
          : page.sheet !== "" ? withdraw : null
    }
    Component {
        id: found

        SheetPanel {
            title: Words.of("window.as-found")
            onDismissed: page.close()

            ArrivalEntry { id: shownWords; draft: "display"; label: Words.of("window.as-found.display"); multiline: true }
            ArrivalEntry { id: words; draft: "words"; label: Words.of("window.as-found.words"); placeholder: Words.of("window.as-found.example"); multiline: true }
            foot: [
                ProblemLine { width: parent.width; text: arrival.problem },
                ActionButton {
                    objectName: "keep"
                    width: parent.width
                    tall: true
                    style: words.text.trim() === "" ? ActionButton.Shut : ActionButton.Filled
                    second: words.text.trim() === "" ? Words.of("window.words-first") : ""
                    busy: arrival.busy
                    text: Words.of("window.as-found.keep")
                    onClicked: arrival.found(words.text, shownWords.text)
                }
            ]
        }
    }
    Component {
        id: kit

        SheetPanel {
            id: kitSheet

            property string quantity: Whereabouts.draft("arrival/quantity") !== "" ? Whereabouts.draft("arrival/quantity") : "resistance"

            title: Words.of("window.kit")
            onDismissed: page.close()

            ArrivalEntry { id: name; draft: "name"; label: Words.of("window.kit.name"); placeholder: Words.of("window.kit.example") }
            Caption { width: parent.width; text: Words.of("window.kit.measures") }
            Flow {
                width: parent.width
                spacing: 8

                Repeater {
                    model: arrival.quantities

                    ChoiceKey {
                        required property string modelData
                        objectName: "quantity-" + modelData
                        text: arrival.quantityWord(modelData)
                        chosen: kitSheet.quantity === modelData
                        onClicked: { kitSheet.quantity = modelData; Whereabouts.setDraft("arrival/quantity", modelData); }
                    }
                }
            }
            ArrivalEntry { id: percent; draft: "percent"; label: Words.of("window.kit.percent"); hints: Qt.ImhFormattedNumbersOnly }
            ArrivalEntry { id: digits; draft: "digits"; label: Words.of("window.kit.digits"); hints: Qt.ImhDigitsOnly }
            ArrivalEntry { id: fixed; draft: "fixed"; label: Words.with("window.kit.fixed", "unit", arrival.quantityUnit(kitSheet.quantity)); hints: Qt.ImhFormattedNumbersOnly }
            ArrivalEntry { id: day; draft: "calibrated"; label: Words.of("window.kit.calibrated") }
            foot: [
                ProblemLine { width: parent.width; text: arrival.problem },
                ActionButton {
                    objectName: "keep"
                    width: parent.width
                    tall: true
                    style: name.text.trim() === "" ? ActionButton.Shut : ActionButton.Filled
                    second: name.text.trim() === "" ? Words.of("window.name-first") : ""
                    busy: arrival.busy
                    text: Words.of("window.kit.keep")
                    onClicked: arrival.addInstrument(name.text, kitSheet.quantity, percent.text, digits.text, fixed.text, day.text)
                }
            ]
        }
    }
    Component {
        id: clock

        SheetPanel {
            id: clockSheet

            property string of: Whereabouts.draft("arrival/clock") !== "" ? Whereabouts.draft("arrival/clock") : "panel"

            title: Words.of("window.clocks")
            onDismissed: page.close()

            Flow {
                width: parent.width
                spacing: 8

                Repeater {
                    model: ["panel", "station"]

                    ChoiceKey {
                        required property string modelData
                        objectName: "clock-" + modelData
                        text: Words.of("window.clock-of." + modelData)
                        chosen: clockSheet.of === modelData
                        onClicked: { clockSheet.of = modelData; Whereabouts.setDraft("arrival/clock", modelData); }
                    }
                }
            }
            ArrivalEntry { id: offset; draft: "offset"; label: Words.of("window.clock-offset"); hints: Qt.ImhFormattedNumbersOnly }
            ArrivalEntry { id: give; draft: "uncertainty"; label: Words.of("window.clock-uncertainty"); hints: Qt.ImhFormattedNumbersOnly }
            foot: [
                ProblemLine { width: parent.width; text: arrival.problem },
                ActionButton {
                    objectName: "keep"
                    width: parent.width
                    tall: true
                    style: offset.text.trim() === "" || give.text.trim() === "" ? ActionButton.Shut : ActionButton.Filled
                    second: offset.text.trim() === "" || give.text.trim() === "" ? Words.of("window.words-first") : ""
                    busy: arrival.busy
                    text: Words.of("window.clock-keep")
                    onClicked: arrival.clock(clockSheet.of, offset.text, give.text)
                }
            ]
        }
    }
    Component {
        id: test

        SheetPanel {
            title: Words.of("window.put-on-test")
            onDismissed: page.close()

            LeadText { width: parent.width; text: Words.with("window.account", "account", arrival.waiting) }
            BodyText { width: parent.width; text: Words.of("window.put-on-test.first") }
            ArrivalEntry { id: told; draft: "told"; label: Words.of("window.put-on-test.told"); placeholder: Words.of("window.put-on-test.example") }
            ArrivalEntry { id: reference; draft: "reference"; label: Words.of("window.put-on-test.reference") }
            ArrivalEntry { id: until; draft: "until"; label: Words.of("window.put-on-test.until"); hints: Qt.ImhTime }
            foot: [
                ProblemLine { width: parent.width; text: arrival.problem },
                ActionButton {
                    objectName: "keep"
                    width: parent.width
                    tall: true
                    icon: "on-test"
                    style: told.text.trim() === "" ? ActionButton.Shut : ActionButton.Filled
                    second: told.text.trim() === "" ? Words.of("window.told-first") : ""
                    busy: arrival.busy
                    text: Words.of("window.put-on-test")
                    onClicked: arrival.onTest(arrival.waiting, told.text, reference.text, until.text)
                }
            ]
        }
    }
    Component {
        id: withdraw

        ReasonSheet {
            title: Words.of("window.arrival-withdraw")
            act: Words.of("window.reason-act.withdraw")
            mark: Verdict.ToDo
            draft: "arrival/withdraw"
            problem: arrival.problem
            onGiven: words => arrival.withdraw(page.event, words)
            onDismissed: page.close()
        }
    }
}
