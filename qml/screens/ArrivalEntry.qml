// SPDX-License-Identifier: GPL-3.0-or-later
// Words of the arrival, kept as they are typed.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

TextEntry {
    id: entry

    required property string draft

    objectName: draft
    width: parent ? parent.width : implicitWidth
    text: Whereabouts.draft("arrival/" + draft)
    onEdited: text => Whereabouts.setDraft("arrival/" + draft, text)
}
