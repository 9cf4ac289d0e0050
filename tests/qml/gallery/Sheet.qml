// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet over a place.
import QtQuick
import Proofwalk.Parts

Rectangle {
    id: page
    color: Theme.film
    height: 780

    PlaceSign { width: parent.width; floor: "Cellar"; room: "Ageing room"; way: "passage, first door" }

    SheetPanel {
        title: "Tamper not shown at the panel"
        BodyText { width: parent.width; text: "Not as planned: cover open. What was seen instead is kept with the step and printed." }
        Caption { text: "How bad is it" }
        ButtonRow {
            width: parent.width
            ChoiceKey { text: "deficiency"; chosen: true }
            ChoiceKey { text: "recommendation" }
        }
        TextEntry { width: parent.width; label: "in your words"; multiline: true }
        TextEntry { width: parent.width; label: "due" }
        SecretEntry { width: parent.width; label: "passphrase" }
        foot: [
            ActionButton { width: parent.width; text: "as planned after all, back" },
            VerdictButton { width: parent.width; filled: true; mark: Verdict.Fail; text: "keep as finding" }
        ]
    }
}
