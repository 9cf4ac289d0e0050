// SPDX-License-Identifier: GPL-3.0-or-later
// Every finding, by how far it has come; what is to be retested next at the foot.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: page

    /// A finding stands beside the list: its page has the way to its retest.
    property bool beside: false

    function open(key: string) { Whereabouts.go(Whereabouts.Findings, "finding", key); }

    FindingList { id: findings }

    Rectangle { anchors.fill: parent; color: Theme.paper }

    HeadText {
        id: title
        x: Theme.margin
        y: 12
        width: Math.min(Math.ceil(implicitWidth), parent.width - 2 * x)
        text: Words.of("window.finding.title")
    }
    BodyText {
        id: summary
        readonly property bool beside: Math.ceil(implicitWidth) + 12 <= page.width - 2 * Theme.margin - title.width
        x: beside ? page.width - Theme.margin - width : Theme.margin
        y: beside ? title.y + title.height - height - 2 : title.y + title.height
        width: beside ? Math.ceil(implicitWidth) : page.width - 2 * Theme.margin
        text: findings.summary
        color: Theme.ink2
    }
    RowRule {
        id: underline
        y: Math.max(title.y + title.height, summary.y + summary.height) + 8
        width: parent.width
        heavy: true
    }

    ListColumn {
        id: rows
        objectName: "finding-list"
        anchors { top: underline.bottom; left: parent.left; right: parent.right; bottom: foot.top }
        visible: count > 0
        name: Words.of("window.finding.list")
        model: findings
        focus: true
        delegate: FindingItem {
            required property string key
            required property int verdict
            required property bool cleared
            required tag
            required word
            required line
            required second
            required age
            required rooms
            required at
            required here
            required heading
            required property int index

            objectName: "finding-" + tag
            width: rows.width
            mark: verdict
            brief: cleared
            first: index === 0
            onClicked: page.open(key)
        }
        onActivated: row => (itemAtIndex(row) as FindingItem).press()
    }

    Column {
        visible: findings.emptyWords !== ""
        anchors { left: parent.left; right: parent.right; margins: Theme.margin; verticalCenter: rows.verticalCenter }
        spacing: 16

        VerdictMark {
            anchors.horizontalCenter: parent.horizontalCenter
            width: 40
            height: 40
            mark: Verdict.ToDo
        }
        BodyText {
            objectName: "empty"
            anchors.horizontalCenter: parent.horizontalCenter
            width: Math.min(parent.width, 360)
            horizontalAlignment: Text.AlignHCenter
            text: findings.emptyWords
        }
    }

    Rectangle {
        id: foot
        readonly property bool shown: !page.beside && (findings.retestTag !== "" || findings.emptyWords !== "")
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        height: shown ? action.height + 12 : 0
        visible: shown
        color: Theme.paper

        Rectangle { width: parent.width; height: 1; color: Theme.hair }
        ActionButton {
            id: action
            objectName: "finding-next"
            x: Theme.margin
            y: 6
            width: parent.width - 2 * x
            style: findings.retestTag !== "" ? ActionButton.Filled : ActionButton.Plain
            icon: "go"
            text: findings.retestTag !== "" ? findings.retestWords : Words.of("window.finding.to-walk")
            onClicked: {
                if (findings.retestTag !== "") Whereabouts.go(Whereabouts.Walk, "card", findings.retestTag);
                else Whereabouts.go(Whereabouts.Walk);
            }
        }
    }
}
