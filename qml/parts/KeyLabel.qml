// SPDX-License-Identifier: GPL-3.0-or-later
// What stands on a button: an icon or a verdict's mark, words, and a second line; held together in the middle.
import QtQuick
import Proofwalk.Parts

Item {
    id: root

    /// The width there is. Words wrap within it.
    required property real room
    property string text
    property string second
    property string icon
    property int iconSize: 24
    property bool stacked: false
    property color colour: Theme.ink
    property bool figures: false
    property int size: Theme.text
    /// A drawing in place of the icon.
    default property alias picture: holder.data
    property real pictureSize: 0

    readonly property real pictured: pictureSize > 0 ? pictureSize : icon !== "" ? iconSize : 0
    readonly property real between: pictured > 0 && !stacked ? (pictureSize > 30 ? 12 : 8) : 0
    readonly property real lead: stacked ? 0 : pictured + between
    readonly property real wordsRoom: Math.max(24, room - lead)
    /// Large words that would break are written one size smaller first.
    readonly property bool lessened: size > Theme.lead && wordsExtent.advanceWidth > wordsRoom && wordsRoom > 24

    implicitWidth: stacked ? Math.max(pictured, lines.wanted) : lead + lines.wanted
    implicitHeight: stacked ? pictured + 6 + lines.height : Math.max(pictured, lines.height)
    width: stacked ? room : lead + lines.width
    height: implicitHeight

    Item {
        id: holder
        width: root.pictured
        height: root.pictured
        x: root.stacked ? (root.width - width) / 2 : 0
        y: root.stacked ? 0 : (root.height - height) / 2

        Icon {
            visible: root.icon !== "" && root.pictureSize === 0
            anchors.fill: parent
            name: root.icon !== "" ? root.icon : "unknown"
            colour: root.colour
        }
    }

    // What the words take unwrapped. The texts themselves cannot be asked: their widths hang on it.
    TextMetrics {
        id: wordsExtent
        font.family: words.font.family
        font.bold: true
        font.pixelSize: root.size
        text: root.text
    }
    TextMetrics {
        id: underExtent
        font: under.font
        text: root.second
    }

    Column {
        id: lines
        readonly property real wanted: Math.ceil(Math.max(wordsExtent.advanceWidth, underExtent.advanceWidth)) + 1
        x: root.stacked ? (root.width - width) / 2 : root.lead
        y: root.stacked ? root.height - height : (root.height - height) / 2
        width: Math.min(wanted, root.wordsRoom)
        spacing: 1

        Lettering {
            id: words
            width: parent.width
            horizontalAlignment: root.pictured > 0 && !root.stacked ? Text.AlignLeft : Text.AlignHCenter
            text: root.text
            color: root.colour
            font.family: root.figures ? Theme.figures : Theme.words
            font.bold: true
            font.pixelSize: root.lessened ? Theme.lead : root.size
            Accessible.ignored: true
        }
        Lettering {
            id: under
            visible: root.second !== ""
            width: parent.width
            horizontalAlignment: words.horizontalAlignment
            text: root.second
            color: root.colour
            font.pixelSize: Theme.label
            Accessible.ignored: true
        }
    }
}
