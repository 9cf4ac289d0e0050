// SPDX-License-Identifier: GPL-3.0-or-later
// The installer's key, as much of it as is compared by eye; or the way to one.
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

Item {
    id: line

    required property InstallerKey installer

    signal wanted()

    implicitHeight: lines.height

    Column {
        id: lines
        width: parent.width
        spacing: 2

        Caption {
            width: parent.width
            text: Words.of("window.key.line")
            color: Theme.ink2
        }
        Row {
            visible: line.installer.ready
            spacing: Theme.gap

            VerdictMark { width: 20; height: 20; mark: Verdict.Pass; anchors.verticalCenter: parent.verticalCenter; Accessible.ignored: true }
            FigureText {
                text: line.installer.fingerprint
                font.pixelSize: Theme.lead
            }
            BodyText { text: Words.of("window.key.ready"); anchors.verticalCenter: parent.verticalCenter }
        }
        Caption {
            visible: line.installer.ready
            width: parent.width
            text: Words.join("window.join.list", [line.installer.name, line.installer.firm])
            color: Theme.ink2
        }
        ActionButton {
            objectName: "want-key"
            visible: line.installer.known && !line.installer.ready
            width: parent.width
            icon: "add"
            style: ActionButton.Edged
            text: Words.of("window.key.make")
            onClicked: line.wanted()
        }
    }
}
