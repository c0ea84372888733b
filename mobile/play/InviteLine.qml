pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// What the child hears before anything else, said by an adult or by the phone.
Item {
    id: line

    required property string text
    property bool readable: false
    property bool speaking: false

    signal readWanted()

    implicitHeight: Math.max(words.height, speaker.visible ? speaker.height : 0)

    Column {
        id: words

        anchors.left: parent.left
        anchors.right: speaker.visible ? speaker.left : parent.right
        anchors.rightMargin: speaker.visible ? Theme.smallGap : 0
        anchors.verticalCenter: parent.verticalCenter

        Words {
            width: parent.width
            role: Theme.Caption
            soft: true
            text: qsTr("To begin, say")
        }

        Words {
            objectName: "invite"
            width: parent.width
            role: Theme.Label
            text: line.text
        }
    }

    SpeechButton {
        id: speaker

        objectName: "readInvite"
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        visible: line.readable
        speaking: line.speaking
        accessibleName: qsTr("Read it aloud")
        onClicked: line.readWanted()
    }
}
