// SPDX-License-Identifier: GPL-3.0-or-later
// A reading, a tag, a count: figures of equal width. Always bold; the family's regular weight is another face.
import Proofwalk.Parts

Lettering {
    font.family: Theme.figures
    font.bold: true
    font.pixelSize: Theme.figure
}
