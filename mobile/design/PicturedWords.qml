pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// An item's picture with its name and a soft line beside it.
Item {
    id: line

    property string drawing: ""
    property string text: ""
    property string note: ""
    property int role: Theme.Row
    property int side: Theme.itemSmall
    property bool heading: false
    /// The words under the picture, where a long text would be too narrow beside it.
    property bool stacked: Theme.largeText && line.note.length > line.lettersBeside
    readonly property int lettersBeside: 24

    width: parent ? parent.width : implicitWidth
    implicitWidth: words.implicitWidth + line.side + Theme.cardPadding
    implicitHeight: line.stacked ? words.y + words.height : Math.max(picture.height, words.height)

    Rectangle {
        anchors.fill: picture
        visible: line.drawing.length > 0 && Theme.scheme === Theme.Dark
        radius: Theme.radiusPaper
        color: Theme.picture
    }

    Drawing {
        id: picture

        anchors.left: parent.left
        width: line.drawing.length > 0 ? line.side : 0
        height: width
        name: line.drawing
    }

    Column {
        id: words

        anchors.left: line.stacked ? parent.left : picture.right
        anchors.leftMargin: picture.width > 0 && !line.stacked ? Theme.cardPadding : 0
        anchors.right: parent.right
        y: line.stacked ? (picture.height > 0 ? picture.height + Theme.smallGap : 0)
                        : Math.max(0, (picture.height - height) / 2)
        spacing: Theme.smallGap

        Words {
            width: parent.width
            role: line.role
            heading: line.heading
            visible: text.length > 0
            text: line.text
        }

        Words {
            width: parent.width
            role: Theme.Reason
            soft: true
            visible: text.length > 0
            text: line.note
        }
    }
}
