// SPDX-License-Identifier: GPL-3.0-or-later
// What rises over a finding's page: a repair, a description, an acceptance, a photograph, a withdrawal.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Parts

Item {
    id: sheets

    required property string what
    required property string key

    signal closed()

    Made {
        of: sheets.what === "repair" ? repair
          : sheets.what === "describe" ? describe
          : sheets.what === "accept" ? accept
          : sheets.what === "photograph" ? photograph
          : sheets.what === "withdraw" ? withdraw : null
    }

    Component { id: repair; RepairSheet { key: sheets.key; onDone: sheets?.closed(); onDismissed: sheets.closed() } }
    Component { id: describe; DescribeSheet { key: sheets.key; onDone: sheets?.closed(); onDismissed: sheets.closed() } }
    Component { id: accept; AcceptSheet { key: sheets.key; onDone: sheets?.closed(); onDismissed: sheets.closed() } }
    Component { id: photograph; PhotographSheet { key: sheets.key; onDone: sheets?.closed(); onDismissed: sheets.closed() } }
    Component { id: withdraw; WithdrawSheet { key: sheets.key; onDone: sheets?.closed(); onDismissed: sheets.closed() } }
}
