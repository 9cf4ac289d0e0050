// SPDX-License-Identifier: GPL-3.0-or-later
// Before any job is open: the jobs of this machine, the newest large; a new one; a file.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: page

    property bool wide: false
    property bool full: false
    readonly property real column: Math.min(width, 640)

    property string newest
    property string newestPlace
    property bool newestGone: true

    JobList { id: jobs }
    JobDoor { id: door }

    Rectangle { anchors.fill: parent; color: Theme.film }

    Scroller {
        id: scroll
        anchors { top: parent.top; left: parent.left; right: parent.right; bottom: foot.top }
        focus: true
        name: Words.of("window.start.title")
        contentHeight: body.height + Theme.gap

        Column {
            id: body
            x: (scroll.width - width) / 2
            width: page.column

            HeadText {
                x: Theme.margin
                width: parent.width - 2 * x
                topPadding: 18
                bottomPadding: 14
                text: Words.of("window.start.title")
            }
            Rectangle { width: parent.width; height: 2; color: Theme.ink }
            BodyText {
                visible: jobs.count === 0
                x: Theme.margin
                width: parent.width - 2 * x
                topPadding: 14
                text: Words.of("window.start.first")
            }
            Repeater {
                model: jobs
                delegate: Item {
                    id: job

                    required property int index
                    required property string file
                    required property string site
                    required property string second
                    required property string where
                    required property string place
                    required property string count
                    required property string findings
                    required property string word
                    required property int verdict
                    required property bool missing
                    required property ShelvedRooms rooms

                    width: body.width
                    height: small.visible ? small.implicitHeight : big.implicitHeight

                    Binding { target: page; property: "newest"; value: job.file; when: job.index === 0 }
                    Binding { target: page; property: "newestPlace"; value: job.place; when: job.index === 0 }
                    Binding { target: page; property: "newestGone"; value: job.missing; when: job.index === 0 }

                    JobItem {
                        id: small
                        objectName: "job-" + job.index
                        visible: job.index > 0
                        width: parent.width
                        site: job.site
                        second: job.second
                        word: job.word
                        verdict: job.verdict
                        rooms: job.rooms
                        shut: job.missing
                        onClicked: door.open(job.file)
                    }
                    Pressable {
                        id: big
                        objectName: "newest"
                        visible: job.index === 0
                        width: parent.width
                        focusInset: 2
                        name: job.site
                        more: Words.join("window.join.list", [job.count, job.findings, job.where])
                        shut: job.missing
                        implicitHeight: 124 + Math.max(bigLines.height, bigCounts.height) + 12
                        onClicked: door.open(job.file)

                        Rectangle { anchors.fill: parent; color: big.inked ? Theme.pick : Theme.paper }
                        SectionPicture {
                            x: Theme.margin
                            y: 10
                            width: parent.width - 2 * x
                            height: 112
                            rooms: job.rooms
                            showWords: false
                            showMarks: true
                            Accessible.ignored: true
                        }
                        Column {
                            id: bigLines
                            x: Theme.margin
                            y: 124
                            width: parent.width - bigCounts.width - 3 * x
                            spacing: 2

                            LeadText { width: parent.width; text: job.site; Accessible.ignored: true }
                            Caption {
                                width: parent.width
                                text: job.missing ? job.word : job.where
                                color: job.missing ? Theme.failC : Theme.ink2
                                Accessible.ignored: true
                            }
                        }
                        Column {
                            id: bigCounts
                            anchors { right: parent.right; rightMargin: Theme.margin }
                            y: 122
                            width: 96
                            spacing: 3

                            FigureText {
                                width: parent.width
                                horizontalAlignment: Text.AlignRight
                                text: job.count
                                font.pixelSize: Theme.lead
                                Accessible.ignored: true
                            }
                            Caption { width: parent.width; horizontalAlignment: Text.AlignRight; text: job.findings; color: Theme.ink2; Accessible.ignored: true }
                        }
                        Rectangle { anchors.bottom: parent.bottom; width: parent.width; height: 2; color: Theme.ink }
                    }
                    LinkText {
                        objectName: "forget-" + job.index
                        visible: job.missing
                        anchors { right: parent.right; rightMargin: Theme.margin; bottom: parent.bottom }
                        text: Words.of("window.start.forget")
                        onClicked: jobs.forget(job.file)
                    }
                }
            }
        }
    }

    Column {
        id: foot
        anchors { bottom: parent.bottom; bottomMargin: Theme.margin }
        x: (page.width - page.column) / 2 + Theme.margin
        width: page.column - 2 * Theme.margin
        spacing: 14

        ProblemLine { width: parent.width; text: begin.open || file.open ? "" : door.problem }
        Row {
            width: parent.width
            spacing: Theme.gap

            ActionButton {
                objectName: "new-job"
                width: (parent.width - Theme.gap) / 2
                height: Math.max(88, implicitHeight)
                stacked: true
                icon: "add"
                text: Words.of("window.start.new")
                onClicked: begin.open = true
            }
            ActionButton {
                objectName: "open-file"
                width: (parent.width - Theme.gap) / 2
                height: Math.max(88, implicitHeight)
                stacked: true
                icon: "open-file"
                text: Words.of("window.start.open")
                onClicked: file.open = true
            }
        }
        ActionButton {
            objectName: "walk-on"
            visible: jobs.count > 0 && !page.newestGone
            width: parent.width
            tall: true
            style: ActionButton.Filled
            busy: door.busy
            text: Words.of("window.start.walk-on")
            second: page.newestPlace
            onClicked: door.open(page.newest)
        }
    }

    SheetPanel {
        id: begin

        property bool open: false

        visible: open
        title: Words.of("window.start.new-title")
        onDismissed: open = false

        FileBrowser {
            id: plan
            objectName: "plan"
            width: parent.width
            plans: true
            label: Words.of("window.start.plan")
            folder: door.folder()
            onChosen: path => target.text = door.proposed(path)
        }
        TextEntry {
            id: target
            objectName: "job-path"
            width: parent.width
            label: Words.of("window.start.job")
            multiline: true
            hints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
        }
        ProblemLine { width: parent.width; text: door.problem }
        Repeater {
            model: door.problems
            delegate: BodyText {
                required property string modelData

                width: parent ? parent.width : 0
                wrapMode: Text.WrapAtWordBoundaryOrAnywhere
                text: modelData
            }
        }

        foot: ActionButton {
            objectName: "begin"
            width: parent ? parent.width : 0
            tall: true
            wordSize: Theme.lead
            busy: door.busy
            style: plan.text.trim() === "" || target.text.trim() === "" ? ActionButton.Shut : ActionButton.Filled
            text: Words.of("window.start.begin")
            second: Words.of("window.start.begin-second")
            onClicked: door.start(plan.text, target.text)
        }
    }
    SheetPanel {
        id: file

        property bool open: false

        visible: open
        title: Words.of("window.start.open-title")
        onDismissed: open = false

        FileBrowser {
            id: chosen
            objectName: "job"
            width: parent.width
            label: Words.of("window.start.file")
            folder: door.folder()
        }
        ProblemLine { width: parent.width; text: door.problem }

        foot: ActionButton {
            objectName: "open-now"
            width: parent ? parent.width : 0
            tall: true
            wordSize: Theme.lead
            busy: door.busy
            style: chosen.text.trim() === "" ? ActionButton.Shut : ActionButton.Filled
            text: Words.of("window.start.open-do")
            second: door.busy ? Words.of("window.start.opening") : ""
            onClicked: door.open(chosen.text)
        }
    }
}
