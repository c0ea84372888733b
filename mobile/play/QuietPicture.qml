pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The screen goes quiet during play: one still picture, so that the phone is not the toy.
FocusScope {
    id: quiet

    required property string drawing
    required property string alt
    required property string name
    required property bool shown

    signal woken()

    visible: quiet.shown
    z: 10

    Rectangle {
        anchors.fill: parent
        color: Theme.picture
    }

    Drawing {
        anchors.centerIn: parent
        width: Math.min(quiet.width, quiet.height * 5 / 3)
        height: width * 3 / 5
        name: quiet.drawing
        alt: quiet.alt
    }

    MouseArea {
        objectName: "wake"
        anchors.fill: parent
        onClicked: quiet.woken()
        Accessible.role: Accessible.Button
        Accessible.name: qsTr("%1. Tap for the words.").arg(quiet.name)
        Accessible.onPressAction: quiet.woken()
    }

    Keys.onPressed: quiet.woken()
}
