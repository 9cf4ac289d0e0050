// SPDX-License-Identifier: GPL-3.0-or-later
// A second line, a label.
import Proofwalk.Parts

Lettering {
    color: Theme.ink2
    font.pixelSize: Theme.label
}
