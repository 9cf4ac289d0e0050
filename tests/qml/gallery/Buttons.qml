// SPDX-License-Identifier: GPL-3.0-or-later
// What is pressed, in each of its states.
import QtQuick
import Proofwalk.Parts

Rectangle {
    id: page
    color: Theme.film
    height: all.height + 2 * Theme.margin

    Column {
        id: all
        x: Theme.margin
        y: Theme.margin
        width: page.width - 2 * x
        spacing: 10

        HeadText { width: parent.width; text: "Where are you today?" }
        ButtonRow {
            width: parent.width
            even: true
            ActionButton { text: "new job"; icon: "add"; stacked: true }
            ActionButton { text: "open a file"; icon: "open-file"; stacked: true }
            ActionButton { text: "practise"; icon: "practise"; stacked: true }
        }
        ActionButton { width: parent.width; style: ActionButton.Filled; tall: true; text: "walk on"; second: "CE-07, cellar, ageing room" }
        ButtonRow {
            width: parent.width
            VerdictButton { text: "no access"; mark: Verdict.NoAccess }
            VerdictButton { text: "not as planned"; mark: Verdict.Fail }
        }
        VerdictButton { width: parent.width; filled: true; text: "as planned"; second: "input; response still open" }
        VerdictButton { width: parent.width; filled: true; busy: true; text: "as planned"; second: "input; response still open" }
        VerdictButton { width: parent.width; filled: true; mark: Verdict.Fail; text: "keep as finding" }
        ButtonRow {
            width: parent.width
            VerdictButton { text: "kein Zugang für heute"; mark: Verdict.NoAccess }
            VerdictButton { text: "abweichend vom Plan"; mark: Verdict.Fail }
        }
        ActionButton { width: parent.width; style: ActionButton.Shut; tall: true; text: "put on test"; second: "not yet: event memory, clocks"; icon: "call" }
        ActionButton { width: parent.width; style: ActionButton.Shut; text: "sign"; second: "three findings are neither cleared nor accepted by the customer, and two lids are still off" }
        ButtonRow {
            width: parent.width
            even: true
            ActionButton { text: "photo"; icon: "photograph" }
            ActionButton { text: "type it"; icon: "write" }
            ActionButton { text: "none" }
        }
        ButtonRow {
            width: parent.width
            ActionButton { text: "call again"; icon: "call" }
            ActionButton { text: "sheet for the panel door"; icon: "note" }
        }
        ActionButton { width: parent.width; style: ActionButton.Filled; text: "retest CE-14"; icon: "go" }
        ActionButton { width: parent.width; style: ActionButton.Filled; tall: true; text: "make the interim sheet"; second: "one page, with its code"; icon: "print" }
        Row {
            spacing: 8
            ActionButton { style: ActionButton.Filled; tall: true; wordSize: Theme.lead; text: "put back" }
            ActionButton { style: ActionButton.Edged; tall: true; text: "put back" }
            ActionButton { style: ActionButton.Edged; text: "I made it safe" }
        }
        Row {
            spacing: 8
            ActionButton { text: "pressed"; keyDown: true }
            ActionButton { text: "busy"; busy: true; style: ActionButton.Filled }
            ActionButton { text: "pass"; style: ActionButton.Pass }
            ActionButton { text: "fail"; style: ActionButton.Fail }
        }
        Row {
            spacing: 8
            IconButton { icon: "withdraw"; name: "withdraw" }
            IconButton { icon: "back"; name: "close"; framed: false }
            IconButton { icon: "photograph"; name: "photo"; keyDown: true }
            LinkText { text: "draw again" }
        }
        ButtonRow {
            width: parent.width
            ChoiceKey { text: "deficiency"; chosen: true }
            ChoiceKey { text: "recommendation" }
        }
        Toggle { width: parent.width; text: "Name the hours on the sheet"; on: true }
        Toggle { width: parent.width; text: "Speak while I walk"; second: "where to go and what was heard, so that the telephone may stay in a pocket" }
        TextEntry { width: parent.width; label: "in your words"; multiline: true; text: "Cover spring bent, switch stays closed" }
        TextEntry { width: parent.width; label: "name or role"; placeholder: "Owner" }
        TextEntry { width: parent.width; label: "due"; text: "2 Dezember"; problem: "\"2 Dezember\" is not a day. Write 2026-12-02." }
        ProblemLine { width: parent.width; text: "Another window holds this job; close it there first. Nothing was recorded." }
    }
}
