// SPDX-License-Identifier: GPL-3.0-or-later
// The number pad with all its keys, and with few and long ones.
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
        spacing: 24

        FigureText { text: "4.1"; width: parent.width }
        NumberPad { width: parent.width; unitText: "k\u03a9"; leftEnd: "loop open"; rightEnd: "loop short"; nextText: "next" }
        NumberPad { width: parent.width; unitText: "\u00b0C"; leftEnd: "unter dem Gefrierpunkt"; nextText: "weiter"; nextBusy: true }
        NumberPad { width: parent.width; unitText: "dB"; nextText: "next"; nextShut: true }
    }
}
