// SPDX-License-Identifier: GPL-3.0-or-later
// The report, page by page: looked at before it is signed, signed, looked at again, verified.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: page

    property bool backed: true
    property int sheet: 0
    property bool large: false
    readonly property bool blocked: !report.interim && ladder.missing > 0

    function turn(by: int) {
        const to = sheet + by;
        if (to < 0 || to >= report.pages) return;
        sheet = to;
        flick.contentY = 0;
        flick.contentX = 0;
    }

    Ladder { id: ladder }
    InstallerKey {
        id: installer
        onMade: key.open = false
    }
    ReportDesk {
        id: report
        interim: Whereabouts.subject === "interim"
        onInterimChanged: if (report.pages === 0 && !report.busy && report.file === "") report.draft()
        onHandedOver: {
            seal.open = false;
            page.sheet = 0;
        }
        Component.onCompleted: draft()
    }

    Keys.onPressed: event => {
        if (event.key === Qt.Key_Right || event.key === Qt.Key_PageDown) page.turn(1);
        else if (event.key === Qt.Key_Left || event.key === Qt.Key_PageUp) page.turn(-1);
        else if (event.key === Qt.Key_Plus) page.large = true;
        else if (event.key === Qt.Key_Minus) page.large = false;
        else return;
        event.accepted = true;
    }

    HandoverHead {
        id: head
        width: parent.width
        title: Words.of(report.interim ? "window.report.interim-title" : "window.report.title")
        backed: page.backed
    }

    Rectangle {
        id: state
        anchors.top: head.bottom
        width: parent.width
        height: Math.max(32, stateWords.height + 12)
        color: report.drafted || report.file === "" ? Theme.band : Theme.done

        BodyText {
            id: stateWords
            x: Theme.margin
            y: 6
            width: parent.width - 2 * x
            font.bold: true
            color: report.drafted || report.file === "" ? Theme.bandInk : Theme.ink
            text: report.file !== "" ? Words.with("window.report.signed", "name", report.fileName)
                : report.busy ? Words.of("window.report.drawing") : Words.of("window.report.not-signed")
        }
    }

    Rectangle {
        anchors { top: state.bottom; bottom: keys.top; left: parent.left; right: parent.right }
        color: Theme.film

        Flickable {
            id: flick
            anchors.fill: parent
            clip: true
            boundsBehavior: Flickable.StopAtBounds
            contentWidth: Math.max(width, view.width + 16)
            contentHeight: Math.max(height, view.height + 16)

            SheetView {
                id: view
                objectName: waiting || report.pages === 0 ? "sheet-coming" : "sheet"
                x: Math.max(8, (flick.width - width) / 2)
                y: 8
                width: page.large ? Math.max(flick.width * 2, 900) : Math.min(flick.width - 16, 820)
                height: width * ratio
                report: report
                page: page.sheet
                Accessible.role: Accessible.Document
                Accessible.name: report.sheetWords(page.sheet, report.pages)
                Accessible.description: words

                Rectangle {
                    anchors.fill: parent
                    visible: report.pages > 0
                    color: "transparent"
                    border { width: 1; color: Theme.ink2 }
                }
            }
        }
        BodyText {
            anchors.centerIn: parent
            visible: report.pages === 0 && report.busy
            text: Words.of("window.report.drawing")
        }
    }

    Item {
        id: keys
        anchors { left: parent.left; right: parent.right; bottom: foot.top; bottomMargin: Theme.gap }
        height: 56

        IconButton {
            id: before
            objectName: "sheet-before"
            x: Theme.margin
            anchors.verticalCenter: parent.verticalCenter
            shut: page.sheet === 0
            colour: shut ? Theme.ink2 : Theme.ink
            icon: "back"
            name: Words.of("window.report.before")
            onClicked: page.turn(-1)
        }
        BodyText {
            anchors { left: before.right; right: zoom.left; verticalCenter: parent.verticalCenter }
            horizontalAlignment: Text.AlignHCenter
            font.bold: true
            text: report.sheetWords(page.sheet, report.pages)
        }
        ActionButton {
            id: zoom
            objectName: "zoom"
            anchors { right: next.left; rightMargin: Theme.gap; verticalCenter: parent.verticalCenter }
            width: 96
            text: Words.of(page.large ? "window.report.smaller" : "window.report.larger")
            onClicked: page.large = !page.large
        }
        IconButton {
            id: next
            objectName: "sheet-next"
            anchors { right: parent.right; rightMargin: Theme.margin; verticalCenter: parent.verticalCenter }
            shut: page.sheet + 1 >= report.pages
            colour: shut ? Theme.ink2 : Theme.ink
            icon: "go"
            name: Words.of("window.report.next")
            onClicked: page.turn(1)
        }
    }

    Column {
        id: foot
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: Theme.margin; bottomMargin: Theme.gap }
        spacing: Theme.gap

        ProblemLine { width: parent.width; text: seal.open ? "" : report.problem }
        KeyLine {
            visible: report.file === "" && installer.known && !installer.ready
            width: parent.width
            installer: installer
            onWanted: key.open = true
        }
        ActionButton {
            objectName: "missing"
            visible: page.blocked && report.file === ""
            width: parent.width
            icon: "search"
            text: Words.of("window.report.blocked")
            second: ladder.missingWords
            onClicked: rungs.open = true
        }
        ActionButton {
            objectName: "sign"
            visible: report.file === ""
            width: parent.width
            tall: true
            wordSize: Theme.lead
            icon: "write"
            busy: report.busy
            style: page.blocked || !installer.ready ? ActionButton.Shut : ActionButton.Filled
            text: Words.of(report.interim ? "window.report.sign-interim" : "window.report.sign")
            second: page.blocked ? ladder.missingWords : !installer.ready ? Words.of("window.report.key-first") : ""
            onClicked: {
                path.text = report.proposed;
                seal.open = true;
            }
        }
        ActionButton {
            objectName: "verify"
            visible: report.file !== ""
            width: parent.width
            tall: true
            wordSize: Theme.lead
            busy: report.busy
            style: ActionButton.Filled
            text: Words.of("window.report.verified")
            second: report.checks.length === 0 ? "" : Words.of(report.sound ? "window.report.sound" : "window.report.not-sound")
            onClicked: {
                report.verify();
                found.open = true;
            }
        }
    }

    SheetPanel {
        id: seal

        property bool open: false

        visible: open
        title: Words.of("window.report.sign-title")
        onDismissed: open = false
        onVisibleChanged: if (!visible) passphrase.clear()

        TextEntry {
            id: path
            objectName: "report-path"
            width: parent.width
            label: Words.of("window.report.path")
            multiline: true
            hints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
        }
        KeyLine { width: parent.width; installer: installer }
        SecretEntry {
            id: passphrase
            objectName: "passphrase"
            width: parent.width
            label: Words.of("window.report.passphrase")
            problem: report.problem
            onAccepted: report.sign(path.text, text)
        }

        foot: ActionButton {
            objectName: "sign-now"
            width: parent ? parent.width : 0
            tall: true
            wordSize: Theme.lead
            icon: "write"
            busy: report.busy
            style: ActionButton.Filled
            text: Words.of(report.interim ? "window.report.sign-interim" : "window.report.sign")
            second: report.busy ? Words.of("window.report.signing") : ""
            onClicked: report.sign(path.text, passphrase.text)
        }
    }
    SheetPanel {
        id: found

        property bool open: false

        visible: open && report.checks.length > 0
        title: Words.of("window.report.verified")
        onDismissed: open = false

        Repeater {
            model: report.checks
            delegate: Row {
                id: line

                required property int index
                required property string modelData

                width: parent ? parent.width : 0
                spacing: Theme.gap

                VerdictMark {
                    visible: line.index === 0
                    width: 24
                    height: 24
                    mark: report.sound ? Verdict.Pass : Verdict.Fail
                    Accessible.ignored: true
                }
                BodyText {
                    width: line.width - (line.index === 0 ? 32 : 0)
                    wrapMode: Text.WrapAtWordBoundaryOrAnywhere
                    font.bold: line.index === 0
                    text: line.modelData
                }
            }
        }
    }
    RungSheet {
        id: rungs

        property bool open: false

        visible: open
        tread: -1
        onDismissed: open = false
        onWay: Whereabouts.go(Whereabouts.Walk)
    }
    KeySheet {
        id: key

        property bool open: false

        installer: installer
        visible: open
        onDismissed: open = false
    }
}
