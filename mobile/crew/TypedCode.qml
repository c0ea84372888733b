pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// One field for all nine words, with help while they are typed; or the squares, before a camera or in a picture.
Column {
    id: code

    required property JoiningIn joining
    property bool pictureAsked: false

    signal cameraAsked()

    spacing: Theme.gap

    PaperArea {
        id: words

        objectName: "codeTyped"
        width: code.width
        label: qsTr("The nine words on the other phone")
        problem: code.joining.help
        onEdited: code.joining.typed = words.text
    }

    Words {
        objectName: "soFar"
        width: code.width
        role: Theme.Reason
        soft: true
        visible: text.length > 0
        text: code.joining.soFar
    }

    Words {
        width: code.width
        text: qsTr("Small letters are enough, and so are the first four of each word.")
    }

    Loader {
        id: camera

        width: code.width
        asynchronous: true
        source: "CameraLink.qml"
    }

    Connections {
        target: camera.item
        ignoreUnknownSignals: true

        function onAsked() {
            code.cameraAsked()
        }
    }

    StitchedLink {
        anchors.left: parent.left
        visible: !code.pictureAsked
        text: qsTr("Read a picture of the squares")
        onClicked: code.pictureAsked = true
    }

    PaperField {
        id: picture

        objectName: "pictureFile"
        width: code.width
        visible: code.pictureAsked
        label: qsTr("Where the picture lies on this phone")
        placeholder: qsTr("/home/ruth/Pictures/code.png")
        onAccepted: code.joining.readPicture(picture.text)
    }

    StitchedLink {
        anchors.left: parent.left
        visible: code.pictureAsked && picture.text.length > 0
        text: qsTr("Read this picture")
        onClicked: code.joining.readPicture(picture.text)
    }
}
