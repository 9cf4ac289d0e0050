// SPDX-License-Identifier: GPL-3.0-or-later
// The step in hand, a row's or a room's title.
import Proofwalk.Parts

Lettering {
    font.pixelSize: Theme.lead
    font.bold: true
}
