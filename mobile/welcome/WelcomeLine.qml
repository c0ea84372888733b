pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// What is asked of a family before they can play, and what is not.
Item {
    id: line

    readonly property int pictureSide: Theme.largeText ? 0 : Theme.itemSmall + 2 * Theme.smallGap

    implicitHeight: Math.max(words.implicitHeight, line.pictureSide)

    Rectangle {
        id: ground

        anchors.left: parent.left
        width: line.pictureSide
        height: line.pictureSide
        radius: Theme.radiusWell
        color: Theme.picture
        visible: line.pictureSide > 0

        Drawing {
            anchors.fill: parent
            anchors.margins: Theme.smallGap
            name: "item-box"
        }
    }

    Words {
        id: words

        anchors.left: ground.right
        anchors.leftMargin: line.pictureSide > 0 ? Theme.cardPadding : 0
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        text: qsTr("Three questions and the list in the lid, then you can play. No account.")
    }
}
