pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The lid's place at the foot of the tray: dots until it is on, last of all.
Pressable {
    id: well

    property bool home: false
    property string drawing: "item-lid"
    property string placeDrawing: "lid-place"

    width: parent ? parent.width : implicitWidth
    implicitHeight: Math.max(128, well.implicitContentHeight + well.topPadding + well.bottomPadding)
    startPadding: 20
    endPadding: Theme.cardPadding
    topPadding: Theme.chipGap
    bottomPadding: Theme.chipGap
    Accessible.selectable: true
    Accessible.selected: well.home

    background: Item {
        Rectangle {
            anchors.fill: parent
            visible: well.home
            radius: Theme.radiusTile
            color: Theme.picture
            border.width: well.down ? 2 : Theme.lineWidth
            border.color: well.down || well.hovered ? Theme.pictureText : Theme.line
        }

        DashFrame {
            anchors.fill: parent
            visible: !well.home
            dotted: true
            thickness: 2.4
            radius: Theme.radiusTile
            colour: Theme.ink
        }
    }

    contentItem: Item {
        implicitHeight: Math.max(picture.height, words.height)

        Drawing {
            id: picture

            anchors.left: parent.left
            anchors.verticalCenter: parent.verticalCenter
            width: Math.min(124, parent.width * (Theme.largeText ? 0.36 : 0.5))
            height: width * 96 / 124
            name: well.home ? well.drawing : well.placeDrawing
            inkColour: well.home ? Theme.drawingInk : Theme.ink
        }

        FittingWords {
            id: words

            anchors.left: picture.right
            anchors.leftMargin: Theme.gap
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            usualRole: Theme.Row
            color: well.home ? Theme.pictureText : Theme.ink
            spoken: false
            text: well.text
        }
    }
}
