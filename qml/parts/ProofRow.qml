// SPDX-License-Identifier: GPL-3.0-or-later
// The proofs of a device in their fixed order: windows, with their words behind them. Where there is no room, first the
// words of those the plan does not promise go, then the row breaks.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Parts

Flow {
    id: root

    /// Rows with the roles kind, state, seen, progress and word.
    property QtObject proofs: null
    property bool crowded: false

    function fit() {
        let wanted = 0;
        for (let i = 0; i < each.count; ++i) {
            const one = each.itemAt(i) as Item;
            if (one) wanted += one.implicitWidth + (i > 0 ? spacing : 0);
        }
        crowded = width > 0 && wanted > width;
    }

    spacing: 12
    onWidthChanged: fit()

    Repeater {
        id: each
        model: root.proofs

        Item {
            id: one
            required property int kind
            required property int state
            required property int seen
            required property real progress
            required property string word

            readonly property bool promised: state !== Proof.NotPromised
            readonly property bool worded: promised || !root.crowded
            readonly property real eared: promised && seen === Seen.Ear ? 8 : 0

            implicitWidth: 20 + eared + 6 + Math.ceil(name.implicitWidth)
            width: worded ? implicitWidth : 20
            height: Math.max(22, name.height)
            onImplicitWidthChanged: root.fit()
            Accessible.role: Accessible.Indicator
            Accessible.name: Words.with("window.part.proof-" + [
                "not-promised", "promised", "under-way", "lit", "failed"][state], "proof", word)

            ProofMark {
                id: mark
                anchors.verticalCenter: parent.verticalCenter
                kind: one.kind
                state: one.state
                seen: one.seen
                progress: one.progress
            }
            Caption {
                id: name
                visible: one.worded
                x: 26 + one.eared
                anchors.verticalCenter: parent.verticalCenter
                wrapMode: Text.NoWrap
                text: one.word
                color: one.promised ? Theme.ink : Theme.ink2
                font.bold: one.state === Proof.UnderWay
                Accessible.ignored: true
            }
        }
    }
}
