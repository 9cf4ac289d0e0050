// SPDX-License-Identifier: GPL-3.0-or-later
// In Qt 6.4 a Loader cannot instantiate a bound component, and without the pragma qmllint takes ids for unqualified.
// qmllint disable unqualified
// What rises over a finding's page: a repair, a description, an acceptance, a photograph, a withdrawal.
import QtQuick
import Proofwalk.Models

Item {
    id: sheets

    required property string what
    required property string key

    signal closed()

    Loader {
        anchors.fill: parent
        sourceComponent: sheets.what === "repair" ? repair
                       : sheets.what === "describe" ? describe
                       : sheets.what === "accept" ? accept
                       : sheets.what === "photograph" ? photograph
                       : sheets.what === "withdraw" ? withdraw : null
    }

    Component { id: repair; RepairSheet { key: sheets.key; onDone: sheets.closed(); onDismissed: sheets.closed() } }
    Component { id: describe; DescribeSheet { key: sheets.key; onDone: sheets.closed(); onDismissed: sheets.closed() } }
    Component { id: accept; AcceptSheet { key: sheets.key; onDone: sheets.closed(); onDismissed: sheets.closed() } }
    Component { id: photograph; PhotographSheet { key: sheets.key; onDone: sheets.closed(); onDismissed: sheets.closed() } }
    Component { id: withdraw; WithdrawSheet { key: sheets.key; onDone: sheets.closed(); onDismissed: sheets.closed() } }
}
