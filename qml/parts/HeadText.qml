// SPDX-License-Identifier: GPL-3.0-or-later
// A page's title. A screen reader can go from one to the next.
import QtQuick
import Proofwalk.Parts

Lettering {
    font.pixelSize: Theme.head
    font.bold: true
    Accessible.role: Accessible.Heading
    Accessible.name: text
}
