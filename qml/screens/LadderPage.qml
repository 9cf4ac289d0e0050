// SPDX-License-Identifier: GPL-3.0-or-later
// The stair to the signature, climbed from below; the person stands before the tread in hand.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: page

    /// A tread with sentences shows them first; one without leads to its place.
    function take(tread: int, rungs: int) {
        if (rungs > 0 && tread !== Tread.Signature && tread !== Tread.Shown && tread !== Tread.Normal) {
            sheet.tread = tread;
            sheet.open = true;
        } else {
            ladder.go(tread);
        }
    }

    Ladder { id: ladder }
    JobDoor { id: door }

    Scroller {
        id: scroll
        anchors.fill: parent
        focus: true
        name: Words.of("window.ladder.title")
        contentHeight: Math.max(height, body.height)

        Item {
            id: body
            width: scroll.width
            height: foot.y + foot.height + Theme.margin

            HeadText {
                id: title
                x: Theme.margin
                y: 12
                width: parent.width - 2 * x
                text: Words.of("window.ladder.title")
            }
            Column {
                id: stair
                y: title.y + title.height + 14
                width: parent.width

                Repeater {
                    model: ladder
                    delegate: LadderTread {
                        id: step

                        required property int tread
                        required property int rungs

                        required title
                        required second
                        required link
                        required treadState
                        required depth

                        objectName: "tread-" + tread
                        width: stair.width
                        summit: tread === Tread.Signature
                        icon: summit ? "write" : ""
                        touchable: true
                        onClicked: page.take(tread, rungs)
                    }
                }
            }
            Caption {
                x: Theme.margin
                y: stair.y + 12
                width: 112
                text: ladder.climbedWords
                color: Theme.ink2
            }
            // The way up beside the treads ahead, and who climbs it.
            Repeater {
                model: ladder
                delegate: Item {
                    id: beside

                    required property int index
                    required property int tread
                    required property int treadState
                    required property int depth

                    readonly property Item step: stair.children[index] ?? null

                    y: stair.y + (step ? step.y : 0)
                    width: stair.width
                    height: step ? step.height : 0

                    Footprints {
                        visible: beside.treadState === LadderTread.Ahead && beside.tread > ladder.hereTread
                                 && beside.tread !== Tread.Signature
                        // Beside the tread, and aslant as the stair is: 22 to the right in 88 upwards.
                        x: beside.depth * 22 - 22
                        width: 20
                        height: beside.height
                        rotation: 14
                        vertical: true
                        length: 11
                    }
                    Person {
                        visible: beside.treadState === LadderTread.Here
                        x: Math.max(2, beside.depth * 22 - 26)
                        y: beside.height - height - 8
                        width: 30
                        height: 30
                        heading: 0
                    }
                }
            }
            Column {
                id: foot
                x: Theme.margin
                y: stair.y + stair.height + Theme.margin
                width: parent.width - 2 * x
                spacing: Theme.gap

                ActionButton {
                    objectName: "final-report"
                    width: parent.width
                    icon: "report"
                    style: ladder.missing === 0 ? ActionButton.Filled : ActionButton.Plain
                    text: Words.of("window.ladder.final")
                    second: ladder.missingWords
                    onClicked: Whereabouts.go(Whereabouts.Handover, "report", "final")
                }
                ActionButton {
                    objectName: "interim-sheet"
                    width: parent.width
                    icon: "print"
                    text: Words.of("window.ladder.interim")
                    second: Words.of("window.ladder.interim-second")
                    onClicked: Whereabouts.go(Whereabouts.Handover, "report", "interim")
                }
                LinkText {
                    objectName: "close-job"
                    width: parent.width
                    alignment: Text.AlignHCenter
                    text: Words.of("window.ladder.close")
                    onClicked: door.close()
                }
            }
        }
    }

    RungSheet {
        id: sheet

        property bool open: false

        visible: open
        onDismissed: open = false
        onWay: ladder.go(tread)
    }
}
