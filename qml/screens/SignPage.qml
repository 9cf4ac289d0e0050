// SPDX-License-Identifier: GPL-3.0-or-later
// The customer signs: what they agree to, what in it is not as it should be, their name and their ink.
pragma ComponentBehavior: Bound
import QtQuick
import Proofwalk.Models
import Proofwalk.Parts

FocusScope {
    id: page

    property bool backed: true
    property bool anew: false       ///< signed already, and to be signed once more
    property bool otherWords: false ///< the words are being changed
    readonly property bool signing: !customer.agreed || anew

    Agreement {
        id: customer
        onTaken: {
            page.anew = false;
            page.otherWords = false;
            Whereabouts.setDraft("sign/name", "");
            Whereabouts.setDraft("sign/words", "");
            Whereabouts.setDraft("sign/ink", "");
        }
    }
    InstallerKey {
        id: installer
        onMade: key.open = false
    }

    Rectangle { anchors.fill: parent; color: Theme.paper }

    HandoverHead {
        id: head
        width: parent.width
        title: Words.of("window.sign.title")
        backed: page.backed
    }
    Scroller {
        id: scroll
        anchors { top: head.bottom; left: parent.left; right: parent.right; bottom: foot.top }
        name: Words.of("window.sign.title")
        contentHeight: body.height + Theme.margin

        Column {
            id: body
            x: Theme.margin
            width: scroll.width - 2 * x
            topPadding: 10
            spacing: 10

            Caption {
                width: parent.width
                text: Words.of("window.sign.what")
                color: Theme.ink2
            }
            BodyText {
                visible: !page.otherWords
                width: parent.width
                text: page.signing ? customer.words : customer.agreedWords
            }
            TextEntry {
                id: words
                objectName: "agreed-words"
                visible: page.otherWords
                width: parent.width
                label: Words.of("window.sign.words")
                multiline: true
                onEdited: text => Whereabouts.setDraft("sign/words", text)
            }
            Rectangle {
                visible: page.signing && !page.otherWords && customer.count > 0
                width: parent.width
                height: rows.height + 4
                color: Theme.paper
                border { width: 2; color: Theme.ink }

                Column {
                    id: rows
                    x: 2
                    y: 2
                    width: parent.width - 4

                    Repeater {
                        model: customer
                        delegate: Rectangle {
                            id: row

                            required property int verdict
                            required property string tag
                            required property string words

                            width: rows.width
                            height: Math.max(30, what.height + 10)
                            color: verdict === Verdict.Fail ? Theme.failT
                                 : verdict === Verdict.TooClose ? Theme.undT
                                 : verdict === Verdict.NoAccess || verdict === Verdict.Retest ? Theme.nrT : Theme.paper

                            VerdictMark {
                                x: 8
                                anchors.verticalCenter: parent.verticalCenter
                                width: 20
                                height: 20
                                mark: row.verdict
                                Accessible.ignored: true
                            }
                            FigureText {
                                id: named
                                x: 37
                                y: 5
                                width: Math.min(implicitWidth, parent.width * 0.4)
                                text: row.tag
                                font.pixelSize: Theme.text
                            }
                            BodyText {
                                id: what
                                x: named.x + named.width + 10
                                y: 5
                                width: parent.width - x - 8
                                text: row.words
                            }
                        }
                    }
                }
            }
            LinkText {
                objectName: "other-words"
                visible: page.signing && !page.otherWords
                text: Words.of("window.sign.other-words")
                onClicked: {
                    const kept = Whereabouts.draft("sign/words");
                    words.text = kept === "" ? customer.fullWords : kept;
                    page.otherWords = true;
                    words.forceActiveFocus(Qt.OtherFocusReason);
                }
            }

            Rectangle {
                width: parent.width
                height: block.height + 6
                color: Theme.paper
                border { width: 3; color: Theme.ink }

                Column {
                    id: block
                    x: 3
                    y: 3
                    width: parent.width - 6

                    Item {
                        width: parent.width
                        height: Math.max(named2.height, dated.height) + 16

                        Column {
                            id: named2
                            x: 9
                            y: 8
                            width: parent.width * 0.56 - 18
                            spacing: 2

                            Caption { visible: !page.signing; width: parent.width; text: Words.of("window.sign.name"); color: Theme.ink2 }
                            LeadText { visible: !page.signing; width: parent.width; text: customer.name }
                            TextEntry {
                                id: who
                                objectName: "customer-name"
                                visible: page.signing
                                width: parent.width
                                label: Words.of("window.sign.name")
                                text: Whereabouts.draft("sign/name")
                                onEdited: text => Whereabouts.setDraft("sign/name", text)
                            }
                        }
                        Rectangle { x: parent.width * 0.56; width: 2; height: parent.height; color: Theme.ink2 }
                        Column {
                            id: dated
                            x: parent.width * 0.56 + 12
                            y: 8
                            width: parent.width - x - 8
                            spacing: 2

                            Caption { width: parent.width; text: Words.of("window.sign.date"); color: Theme.ink2 }
                            BodyText { width: parent.width; text: customer.when; font.bold: true }
                        }
                    }
                    Rectangle { width: parent.width; height: 2; color: Theme.ink2 }

                    Item {
                        width: parent.width
                        height: field.height + under.height + 8

                        SignatureField {
                            id: field
                            objectName: "signature"
                            visible: page.signing
                            width: parent.width
                            ink: Whereabouts.draft("sign/ink") === "" ? "[]" : Whereabouts.draft("sign/ink")
                            onInkChanged: Whereabouts.setDraft("sign/ink", ink === "[]" ? "" : ink)
                        }
                        InkPad {
                            visible: !page.signing
                            enabled: false
                            width: parent.width
                            height: field.height
                            ink: customer.ink === "" ? "[]" : customer.ink
                            Accessible.role: Accessible.Graphic
                            Accessible.name: customer.name
                        }
                        Caption {
                            id: under
                            x: 9
                            y: field.height + 2
                            width: parent.width - again.width - 20
                            text: page.signing ? Words.of("window.sign.on-the-line")
                                               : Words.with("window.sign.agreed", "when", customer.when)
                            color: Theme.ink2
                        }
                        LinkText {
                            id: again
                            objectName: "draw-again"
                            anchors { right: parent.right; rightMargin: 8 }
                            y: 0
                            visible: !page.signing || !field.empty
                            text: Words.of(page.signing ? "window.sign.again" : "window.sign.once-more")
                            onClicked: {
                                field.clear();
                                page.anew = true;
                            }
                        }
                    }
                    Rectangle { width: parent.width; height: 2; color: Theme.ink2 }
                    Item {
                        width: parent.width
                        height: keyLine.height + 16

                        KeyLine {
                            id: keyLine
                            x: 9
                            y: 8
                            width: parent.width - 18
                            installer: installer
                            onWanted: key.open = true
                        }
                    }
                }
            }
        }
    }

    Column {
        id: foot
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: Theme.margin; bottomMargin: Theme.gap }
        spacing: Theme.gap

        ProblemLine { width: parent.width; text: customer.problem }
        ActionButton {
            objectName: page.signing ? "agree" : "to-report"
            width: parent.width
            tall: true
            wordSize: Theme.lead
            icon: "write"
            busy: customer.busy
            readonly property bool lacking: page.signing && (who.text.trim() === "" || field.empty)
            style: lacking ? ActionButton.Shut : ActionButton.Filled
            text: Words.of(page.signing ? "window.sign.agree" : "window.sign.to-report")
            second: lacking ? Words.of("window.sign.needs") : page.signing ? Words.of("window.sign.agree-second") : ""
            onClicked: {
                if (page.signing) customer.agree(who.text, page.otherWords ? words.text : customer.fullWords, field.ink);
                else Whereabouts.go(Whereabouts.Handover, "report", "final");
            }
        }
    }

    KeySheet {
        id: key

        property bool open: false

        installer: installer
        visible: open
        onDismissed: open = false
    }
}
