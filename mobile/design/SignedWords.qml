pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The words of a button in its middle, with a sign before them if there is one.
Item {
    id: signed

    property string text: ""
    property string sign: ""
    property int role: Theme.Label
    property bool strong: true
    property color colour: Theme.ink
    readonly property int signRoom: signed.sign.length > 0 ? Theme.signSize + Theme.chipGap : 0

    implicitWidth: words.usualWidth + signed.signRoom
    implicitHeight: Math.max(words.height, signed.signRoom > 0 ? Theme.signSize : 0)

    Row {
        anchors.centerIn: parent
        spacing: Theme.chipGap

        Drawing {
            y: (signed.height - height) / 2
            width: Theme.signSize
            height: Theme.signSize
            visible: signed.signRoom > 0
            name: signed.sign
            inkColour: signed.colour
        }

        FittingWords {
            id: words

            y: (signed.height - height) / 2
            width: Math.min(usualWidth, room)
            room: signed.width - signed.signRoom
            usualRole: signed.role
            strong: signed.strong
            spoken: false
            horizontalAlignment: Text.AlignHCenter
            color: signed.colour
            text: signed.text
        }
    }
}
