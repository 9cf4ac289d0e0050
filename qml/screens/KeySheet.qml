// SPDX-License-Identifier: GPL-3.0-or-later
// Making the installer's key.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

SheetPanel {
    id: sheet

    required property InstallerKey installer

    title: Words.of("window.key.title")
    onVisibleChanged: {
        if (visible) return;
        passphrase.clear();
        again.clear();
    }

    BodyText {
        width: parent.width
        text: Words.with("window.key.lead", "least", String(sheet.installer.passphraseLeast))
    }
    TextEntry {
        id: owner
        objectName: "key-name"
        width: parent.width
        label: Words.of("window.key.name")
    }
    TextEntry {
        id: firm
        objectName: "key-firm"
        width: parent.width
        label: Words.of("window.key.firm")
    }
    SecretEntry {
        id: passphrase
        objectName: "key-passphrase"
        width: parent.width
        label: Words.of("window.key.passphrase")
    }
    SecretEntry {
        id: again
        objectName: "key-again"
        width: parent.width
        label: Words.of("window.key.again")
        problem: sheet.installer.problem
    }

    foot: ActionButton {
        objectName: "make-key"
        width: parent ? parent.width : 0
        tall: true
        style: ActionButton.Filled
        busy: sheet.installer.busy
        text: Words.of("window.key.do")
        onClicked: sheet.installer.make(owner.text, firm.text, passphrase.text, again.text)
    }
}
