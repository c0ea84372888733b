pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// A large count, what or whose it is beside it, and what to mind under it.
Item {
    id: line

    property int pieces: 0
    property string drawing: ""
    property string name: ""
    property string note: ""
    property string call: ""

    implicitHeight: Math.max(count.height, picture.height, words.height)

    Words {
        id: count

        anchors.left: parent.left
        width: Math.max(implicitWidth, Theme.touchTarget)
        role: Theme.BigYes
        heading: false
        spoken: false
        text: Numerals.of(line.pieces)
    }

    PicturedThing {
        id: picture

        anchors.left: count.right
        anchors.leftMargin: Theme.smallGap
        visible: line.drawing.length > 0
        width: visible ? Theme.itemSmall : 0
        height: visible ? Theme.itemSmall : 0
        drawing: line.drawing
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
            text: line.name
            Accessible.name: Numerals.of(line.pieces) + ", " + line.name
        }

        Words {
            width: parent.width
            visible: text.length > 0
            role: Theme.Label
            strong: true
            text: line.call
        }

        Words {
            width: parent.width
            visible: text.length > 0
            role: Theme.Reason
            soft: true
            text: line.note
        }
    }
}
