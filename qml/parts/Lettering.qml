// SPDX-License-Identifier: GPL-3.0-or-later
// The base of every text: plain (what stands in a record is never read as markup), wrapped, never cut short.
import QtQuick
import Proofwalk.Parts

Text {
    textFormat: Text.PlainText
    wrapMode: Text.Wrap
    color: Theme.ink
    font.family: Theme.words
    font.pixelSize: Theme.text
}
