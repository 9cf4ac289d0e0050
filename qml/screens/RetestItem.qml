// SPDX-License-Identifier: GPL-3.0-or-later
// A step that a repair puts in doubt, and why.
import QtQuick
import Proofwalk.Parts

Item {
    id: root

    required property string tag
    required property string step
    required property string why
    property int mark: Verdict.Retest

    implicitHeight: Math.max(32, Math.max(plate.height, words.height) + 10)
    Accessible.role: Accessible.StaticText
    Accessible.name: Words.join("window.join.list", [tag, step, why])

    VerdictMark { y: 6; width: 18; height: 18; mark: root.mark }
    FigureText {
        id: plate
        x: 28
        y: 5
        width: Math.min(Math.ceil(implicitWidth), root.width * 0.3)
        text: root.tag
        font.pixelSize: Theme.text
        Accessible.ignored: true
    }
    Column {
        id: words
        x: Math.max(94, plate.x + plate.width + 10)
        y: 5
        width: root.width - x

        BodyText { width: parent.width; text: root.step; Accessible.ignored: true }
        Caption { width: parent.width; text: root.why; Accessible.ignored: true }
    }
    RowRule { anchors.bottom: parent.bottom; width: root.width }
}
