// SPDX-License-Identifier: GPL-3.0-or-later
// In which state each area really is. Nothing here sets anything: it says what was done at the panel.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: page

    AreaStates { id: areaStates }

    Rectangle { anchors.fill: parent; color: Theme.paper }

    Scroller {
        id: view
        anchors { fill: parent; bottomMargin: 8 }
        name: Words.of("window.states.title")
        contentHeight: column.height + 16

        Column {
            id: column
            width: view.width
            spacing: 12

            Item { width: 1; height: 1 }
            HeadText { x: Theme.margin; width: parent.width - 2 * x; text: Words.of("window.states.title") }
            BodyText { x: Theme.margin; width: parent.width - 2 * x; text: Words.of("window.states.explained") }
            CautionBand { width: parent.width; text: Words.of("window.states.set-caution") }
            ProblemLine { x: Theme.margin; width: parent.width - 2 * x; text: areaStates.problem }

            Repeater {
                model: areaStates

                Column {
                    id: area

                    required property string area
                    required property string title
                    required property string state
                    required property string stateWord
                    required property string since
                    required property string mode
                    required property list<string> modes
                    required property list<string> modeTitles
                    readonly property list<string> others: ["unpowered", "unset", "walk-test"]

                    x: Theme.margin
                    width: column.width - 2 * x
                    spacing: 8

                    RowRule { heavy: true; width: parent.width }
                    LeadText { width: parent.width; text: area.title }
                    Row {
                        spacing: 8
                        width: parent.width

                        Icon { width: 24; height: 24; name: area.state === "set" ? "really-set" : "place"; colour: Theme.ink }
                        Column {
                            width: parent.width - 32
                            BodyText { width: parent.width; text: area.stateWord; font.bold: true }
                            Caption { width: parent.width; text: area.since }
                        }
                    }
                    Flow {
                        width: parent.width
                        spacing: 8

                        Repeater {
                            model: area.others

                            ChoiceKey {
                                required property string modelData
                                objectName: area.area + "-" + modelData
                                text: Words.of("window.state." + modelData)
                                chosen: area.state === modelData
                                busy: areaStates.busy
                                onClicked: if (!chosen) areaStates.say(area.area, modelData)
                            }
                        }
                        Repeater {
                            model: area.modes.length

                            ChoiceKey {
                                required property int index
                                objectName: area.area + "-set-" + area.modes[index]
                                text: Words.with("window.set-in", "mode", area.modeTitles[index])
                                chosen: area.state === "set" && area.mode === area.modes[index]
                                busy: areaStates.busy
                                onClicked: if (!chosen) areaStates.say(area.area, "set", area.modes[index])
                            }
                        }
                        ChoiceKey {
                            visible: area.modes.length === 0
                            objectName: area.area + "-set"
                            text: Words.of("window.state.set")
                            chosen: area.state === "set"
                            busy: areaStates.busy
                            onClicked: if (!chosen) areaStates.say(area.area, "set")
                        }
                    }
                }
            }
        }
    }
}
