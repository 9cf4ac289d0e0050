// SPDX-License-Identifier: GPL-3.0-or-later
// Why the last act was refused. Without a reason it is not there.
import QtQuick
import Proofwalk.Parts

Item {
    id: root

    property string text

    visible: text !== ""
    implicitHeight: visible ? Math.max(24, words.height) : 0
    Accessible.role: Accessible.AlertMessage
    Accessible.name: text

    VerdictMark {
        y: 1
        width: 20
        height: 20
        mark: Verdict.Fail
    }
    BodyText {
        id: words
        x: 28
        width: root.width - x
        text: root.text
        color: Theme.failC
        font.bold: true
        Accessible.ignored: true
    }
}
