// SPDX-License-Identifier: GPL-3.0-or-later
// A second line, a label.
Lettering {
    color: Theme.ink2
    font.pixelSize: Theme.label
}
