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
    onShownChanged: {
        if (quiet.shown)
            cover.forceActiveFocus()
    }

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
        id: cover

        property bool lit: false

        function press() {
            quiet.woken()
        }

        objectName: "wake"
        anchors.fill: parent
        activeFocusOnTab: true
        onClicked: cover.press()
        Accessible.role: Accessible.Button
        Accessible.name: qsTr("%1. Tap for the words.").arg(quiet.name)
        Accessible.onPressAction: cover.press()
        Keys.onPressed: event => {
            event.accepted = true
            cover.press()
        }
    }
}
