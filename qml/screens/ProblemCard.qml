// SPDX-License-Identifier: GPL-3.0-or-later
// One thing that does not fit: what and what to do, how much it matters, and where it stands in the plan.
import QtQuick
import Proofwalk.Parts

Item {
    id: card

    required property int index
    required property string where
    required property string words
    required property string severity
    required property bool error

    implicitHeight: column.height + 28
    height: implicitHeight
    Accessible.role: Accessible.ListItem
    Accessible.name: Words.join("window.join.about", [severity, Words.join("window.join.on", [words, where])])

    Column {
        id: column
        x: Theme.margin
        y: 12
        width: card.width - 2 * x
        spacing: 3

        Row {
            spacing: 8

            VerdictMark { visible: card.error; width: 20; height: 20; mark: Verdict.Fail }
            LeadText { text: card.severity; font.pixelSize: Theme.text; Accessible.ignored: true }
        }
        BodyText { width: parent.width; text: card.words; Accessible.ignored: true }
        Caption { width: parent.width; text: card.where; visible: text !== ""; Accessible.ignored: true }
    }
    RowRule { anchors { left: parent.left; right: parent.right; bottom: parent.bottom } }
}
