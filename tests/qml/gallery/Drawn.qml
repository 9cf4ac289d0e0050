// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that is drawn and not laid out: marks, scales, corridors, the building and a room of it.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Parts

Rectangle {
    id: page
    color: Theme.paper
    height: all.height + 2 * Theme.margin

    ListModel {
        id: house
        ListElement { floor: "Upstairs"; level: 1; outside: false; room: "Landing"; verdict: 0; here: false; caption: "2 of 2" }
        ListElement { floor: "Upstairs"; level: 1; outside: false; room: "Front bedroom"; verdict: 5; here: true; caption: "1 of 3" }
        ListElement { floor: "Upstairs"; level: 1; outside: false; room: "Bath"; verdict: 3; here: false; caption: "1 of 1" }
        ListElement { floor: "Ground"; level: 0; outside: false; room: "Hall"; verdict: 0; here: false; caption: "4 of 4" }
        ListElement { floor: "Ground"; level: 0; outside: false; room: "Kitchen"; verdict: 1; here: false; caption: "3 of 3" }
        ListElement { floor: "Ground"; level: 0; outside: false; room: "Office"; verdict: 2; here: false; caption: "1 of 2" }
        ListElement { floor: "Ground"; level: 0; outside: false; room: "Store"; verdict: 5; here: false; caption: "0 of 2" }
        ListElement { floor: "Cellar"; level: -1; outside: false; room: "Pump room"; verdict: 7; here: false; caption: "0 of 1" }
        ListElement { floor: "Yard"; level: 0; outside: true; room: "Shed"; verdict: 5; here: false; caption: "0 of 1" }
    }
    ListModel {
        id: loops
        ListElement { label: "1"; value: 3.35; uncertainty: 0.05; lower: 3.0; upper: 3.7; verdict: 0; figure: "3.35"; named: false }
        ListElement { label: "2"; value: 3.68; uncertainty: 0.05; lower: 3.0; upper: 3.7; verdict: 2; figure: "3.68"; named: true }
        ListElement { label: "3"; value: 4.1; uncertainty: 0.05; lower: 3.0; upper: 3.7; verdict: 1; figure: "4.10"; named: false }
    }
    ListModel {
        id: spots
        ListElement { tag: "UP-03"; position: "window, left sash"; verdict: 5; here: true }
        ListElement { tag: "UP-04"; position: "on the ceiling"; verdict: 5; here: false }
        ListElement { tag: "UP-05"; position: "beside the door"; verdict: 0; here: false }
        ListElement { tag: "UP-06"; position: ""; verdict: 1; here: false }
        ListElement { tag: "UP-07"; position: "corner"; verdict: 2; here: false }
    }

    Column {
        id: all
        x: Theme.margin
        y: Theme.margin
        width: page.width - 2 * x
        spacing: 14

        Repeater {
            model: [Seen.Singly, Seen.Bulk, Seen.Ear, Seen.Partner]
            delegate: Row {
                id: line
                required property int modelData
                spacing: 10
                Repeater {
                    model: [Verdict.Pass, Verdict.Fail, Verdict.TooClose, Verdict.NoAccess, Verdict.Running, Verdict.ToDo, Verdict.NotApplicable, Verdict.Retest]
                    delegate: VerdictMark {
                        required property int modelData
                        mark: modelData
                        seen: line.modelData
                    }
                }
            }
        }
        Repeater {
            model: [Proof.NotPromised, Proof.Promised, Proof.UnderWay, Proof.Lit, Proof.Failed]
            delegate: Row {
                id: sort
                required property int modelData
                spacing: 12
                Repeater {
                    model: [0, 1, 2, 3]
                    delegate: ProofMark {
                        required property int modelData
                        kind: modelData
                        state: sort.modelData
                        progress: 0.6
                    }
                }
                ProofMark { kind: 0; state: sort.modelData; seen: Seen.Bulk }
                ProofMark { kind: 1; state: sort.modelData; seen: Seen.Ear }
                ProofMark { kind: 2; state: sort.modelData; seen: Seen.Partner }
                ProofMark { kind: 3; state: sort.modelData; width: 40; height: 40 }
            }
        }
        Row {
            spacing: 12
            VerdictMark { mark: Verdict.Pass; width: 40; height: 40 }
            VerdictMark { mark: Verdict.Fail; width: 40; height: 40 }
            VerdictMark { mark: Verdict.TooClose; width: 40; height: 40 }
            VerdictMark { mark: Verdict.NoAccess; width: 40; height: 40 }
            VerdictMark { mark: Verdict.Running; width: 40; height: 40 }
            VerdictMark { mark: Verdict.Retest; width: 40; height: 40 }
        }
        Flow {
            width: parent.width
            spacing: 12
            Repeater {
                model: ["ear", "lid-off", "lid-on", "on-test", "caution", "isolated", "really-set", "photograph", "write", "note", "call", "print", "withdraw", "stairs", "add", "open-file", "practise", "erase", "go", "back", "person", "meter", "report", "search", "place", "contact-surface", "flood", "heat-fixed", "holdup-button", "motion-infrared", "smoke-four-wire", "sounder-inside", "unknown"]
                delegate: Row {
                    id: both
                    required property string modelData
                    spacing: 4
                    Icon { name: both.modelData; width: 48; height: 48 }
                    Icon { name: both.modelData; width: 20; height: 20 }
                }
            }
        }
        ScalePicture { width: parent.width; lower: 3; upper: 5; value: 3.4; uncertainty: 0.5; setPoint: 4; mark: Verdict.TooClose; lowerText: "3"; upperText: "5"; lowerWord: "too cold to alarm"; upperWord: "alarms too soon"; valueText: "3.4" }
        ScalePicture { width: parent.width; lower: NaN; upper: 50; value: 74; uncertainty: 2; mark: Verdict.Fail; upperText: "50"; upperWord: "a poor joint somewhere in the loop, or a resistor of the wrong value"; valueText: "74" }
        ScalePicture { width: parent.width; lower: 10; mark: Verdict.ToDo; lowerText: "10"; lowerWord: "too weak" }
        Row {
            spacing: 12
            DoorwayScale { lower: 3; upper: 3.7; value: 3.3; uncertainty: 0.1; mark: Verdict.Pass }
            DoorwayScale { lower: 3; upper: 3.7; value: 4.1; uncertainty: 0.1; mark: Verdict.Fail }
            DoorwayScale { lower: 3; upper: 3.7; value: 3.05; uncertainty: 0.1; mark: Verdict.TooClose }
            DoorwayScale { lower: 3; upper: 3.7 }
        }
        TrialBoxes { hits: 3; tries: 4; wanted: 5 }
        Row {
            DoorPicture { way: DoorPicture.Been }
            DoorPicture { way: DoorPicture.Here }
            DoorPicture { way: DoorPicture.Ahead }
            DoorPicture { way: DoorPicture.Here; width: 68; height: 62 }
            DoorPicture { way: DoorPicture.Been; width: 68; height: 62 }
            DoorPicture { way: DoorPicture.Ahead; width: 68; height: 62 }
        }
        Row {
            spacing: 12
            Person { heading: 90 }
            Person { heading: 180 }
            Person { heading: 45; timed: true; width: 48; height: 48 }
            Person { width: 20; height: 20 }
            Footprints { width: 120 }
            Footprints { vertical: true; height: 50; width: 14 }
        }
        CorridorBar { width: parent.width; elapsed: 18.4; lower: 27; upper: 33; full: 48 }
        CorridorBar { width: parent.width; elapsed: 0; upper: 30; full: 40 }
        StopwatchPicture { width: 304; height: 254; elapsed: 38.2; lower: 54; upper: 66; full: 90; previous: [57.1] }
        Rectangle {
            width: 90
            height: 58
            color: Theme.film
            SectionPicture { x: 6; y: 6; rooms: house }
        }
        SectionPicture { width: parent.width; height: 140; rooms: house; showMarks: true }
        SectionPicture { width: parent.width; height: 220; rooms: house; showMarks: true; showWords: true }
        RoomPicture { width: 220; height: 86; spots: spots }
        RoomPicture { width: parent.width; height: 190; spots: spots }
        DueWall { width: parent.width; jambs: 4; chosen: 1 }
        ChartPicture { width: parent.width; height: 240; points: loops; unit: "kΩ"; axis: "zone"; nominal: 3.3 }
        InkPad { width: parent.width; height: 128; ink: "[[[100,600],[300,200],[420,700],[700,400]],[[800,500]]]" }
    }
}
