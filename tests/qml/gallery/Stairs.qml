// SPDX-License-Identifier: GPL-3.0-or-later
// Steps, proofs, signs and the stair to the signature.
import QtQuick
import Proofwalk.Parts

Rectangle {
    id: page
    color: Theme.paper
    height: all.height

    ListModel {
        id: four
        ListElement { kind: 0; state: Proof.UnderWay; seen: Seen.Singly; progress: 0.4; word: "input" }
        ListElement { kind: 1; state: Proof.Promised; seen: Seen.Singly; progress: 0; word: "response" }
        ListElement { kind: 2; state: Proof.NotPromised; seen: Seen.Singly; progress: 0; word: "output" }
        ListElement { kind: 3; state: Proof.NotPromised; seen: Seen.Singly; progress: 0; word: "received" }
    }
    ListModel {
        id: long4
        ListElement { kind: 0; state: Proof.Lit; seen: Seen.Ear; progress: 1; word: "Eingang" }
        ListElement { kind: 1; state: Proof.Failed; seen: Seen.Singly; progress: 0; word: "Reaktion der Anlage" }
        ListElement { kind: 2; state: Proof.NotPromised; seen: Seen.Singly; progress: 0; word: "Ausgang" }
        ListElement { kind: 3; state: Proof.Lit; seen: Seen.Bulk; progress: 1; word: "bei der Leitstelle empfangen" }
    }

    Column {
        id: all
        width: page.width

        PlaceSign { width: parent.width; floor: "Cellar"; room: "Ageing room"; way: "passage, first door" }
        PlaceSign { width: parent.width; floor: "Untergeschoss"; room: "Reifekammer"; way: "durch den Gang, erste Tür links" }
        Item { width: 1; height: 8 }
        TagPlate { x: 16; text: "CE-07" }
        Item { width: 1; height: 8 }
        TagPlate { x: 16; text: "CE-07"; failed: true }
        Item { width: 1; height: 8 }
        ProofRow { x: 16; width: parent.width - 32; proofs: four }
        Item { width: 1; height: 8 }
        ProofRow { x: 16; width: parent.width - 32; proofs: long4 }
        Item { width: 1; height: 8 }

        StepTread { width: parent.width; first: true; depth: 3; treadState: StepTread.Done; text: "Cover closed, tamper restored" }
        StepTread {
            width: parent.width
            depth: 2
            treadState: StepTread.Here
            text: "Walk across the pattern: four steps at a natural pace"
            Row {
                spacing: 18
                TrialBoxes { hits: 3; tries: 3; wanted: 5 }
                FigureText { text: "3 of 5"; font.pixelSize: Theme.lead }
            }
        }
        StepTread { width: parent.width; depth: 1; text: "Step to the edge of the pattern" }
        StepTread { width: parent.width; depth: 0; text: "Cover open: tamper shown at the panel" }
        Item { width: 1; height: 16 }
        StepTread { width: parent.width; first: true; depth: 1; treadState: StepTread.Here; text: "Set, open the window: alarm, and the station has it" }
        StepTread { width: parent.width; treadState: StepTread.Folded; touchable: true; text: "2 steps done, then tamper" }
        Item { width: 1; height: 16 }
        StepTread { width: parent.width; first: true; depth: 2; treadState: StepTread.Done; touchable: true; text: "Die Abdeckung ist geschlossen, der Sabotagekontakt ist wieder in Ruhe" }
        StepTread { width: parent.width; depth: 1; treadState: StepTread.Done; touchable: true; text: "Cover closed" }
        StepTread { width: parent.width; depth: 0; treadState: StepTread.Ahead; touchable: true; text: "Cover open" }
        Item { width: 1; height: 16 }

        CautionBand { width: parent.width; title: "Fire tests move more than bells"; text: "Doors, gas and people react. Make each safe; who did it is kept." }
        Rectangle {
            width: parent.width
            height: ladder.height + 20
            color: Theme.film
            Column {
                id: ladder
                y: 20
                width: parent.width
                LadderTread { width: parent.width; depth: 6; summit: true; icon: "write"; title: "Signature"; second: "opens with the last step" }
                LadderTread { width: parent.width; depth: 5; title: "Shown to owner"; second: "set, unset, alarm, who to ring"; link: "go to Handover" }
                LadderTread { width: parent.width; depth: 4; title: "Back to normal"; second: "isolations off, monitoring told"; link: "go to Walk, after" }
                LadderTread { width: parent.width; depth: 3; title: "2 findings answered"; second: "cleared, or accepted by owner"; link: "go to Findings" }
                LadderTread { width: parent.width; depth: 2; treadState: LadderTread.Here; mark: Verdict.Running; title: "23 devices to walk"; second: "cellar 15, yard 8"; link: "go to Walk" }
                LadderTread { width: parent.width; depth: 1; treadState: LadderTread.Done; title: "Plan without a gap"; second: "3 problems put right"; link: "done in Plan"; touchable: false }
                LadderTread { width: parent.width; depth: 0; treadState: LadderTread.Done; title: "Before the walk"; second: "on test, warned, kit in date"; link: "done in Walk, before" }
            }
        }
        Rectangle {
            width: parent.width
            height: 60
            color: Theme.film
            Row {
                anchors.fill: parent
                DoorKey { width: page.width / 5; text: "Plan"; way: DoorPicture.Been }
                DoorKey { width: page.width / 5; text: "Walk"; way: DoorPicture.Here }
                DoorKey { width: page.width / 5; text: "Findings"; openFinding: true }
                DoorKey { width: page.width / 5; text: "Readings" }
                DoorKey { width: page.width / 5; text: "Handover" }
            }
        }
        Rectangle {
            width: 112
            height: rail.height
            color: Theme.film
            Column {
                id: rail
                DoorKey { rail: true; text: "Plan"; second: "64 in 41 zones"; way: DoorPicture.Been }
                DoorKey { rail: true; text: "Walk"; second: "41 of 64"; way: DoorPicture.Here }
                DoorKey { rail: true; text: "Findings"; second: "2 findings"; openFinding: true }
                DoorKey { rail: true; text: "Handover"; second: "4 steps left" }
            }
        }
    }
}
