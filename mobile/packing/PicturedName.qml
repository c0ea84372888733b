pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A thing with its drawing, its name, and a quiet line under it.
Item {
    id: named

    property string drawing: ""
    property string name: ""
    property string note: ""

    implicitHeight: Math.max(picture.height, words.height)

    PicturedThing {
        id: picture

        anchors.left: parent.left
        width: Theme.itemSmall
        height: Theme.itemSmall
        drawing: named.drawing
    }

    Column {
        id: words

        anchors.left: picture.right
        anchors.leftMargin: Theme.cardPadding
        anchors.right: parent.right
        spacing: Theme.smallGap

        Words {
            width: parent.width
            role: Theme.Row
            text: named.name
        }

        Words {
            width: parent.width
            visible: text.length > 0
            role: Theme.Reason
            soft: true
            text: named.note
        }
    }
}
