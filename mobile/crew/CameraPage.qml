pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Camera
import Lidlark.Design

/// The camera, and a frame to hold over the squares of the other phone. It is on while this is here.
Item {
    id: page

    required property JoiningIn joining
    /// px that the eye may be high.
    required property real room

    /// On a phone lying down the words stand beside the eye.
    readonly property bool beside: Theme.lowPage
    readonly property real cellWidth: page.beside ? (page.width - Theme.cardPadding) / 2 : page.width
    readonly property real secondX: page.beside ? page.cellWidth + Theme.cardPadding : 0

    signal found()

    implicitHeight: page.beside ? Math.max(view.height, words.height) : words.y + words.height

    SquareReader {
        id: reader

        reading: true
        onRead: text => {
            page.joining.readSquares(text)
            page.found()
        }
    }

    Connections {
        target: eye.pictures

        function onPicture(picture) {
            reader.look(picture)
        }
    }

    Binding {
        target: eye.pictures
        property: "wanted"
        value: reader.ready
    }

    PictureGround {
        id: view

        x: page.LayoutMirroring.enabled ? page.secondX : 0
        width: page.cellWidth
        height: Math.min(width, Math.max(page.room, 2 * Theme.itemLarge))
        roundEnd: true
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("What the camera sees")

        CameraEye {
            id: eye

            anchors.fill: parent
            open: Application.state === Qt.ApplicationActive
        }

        AimFrame {
            anchors.centerIn: parent
            width: Math.min(parent.width, parent.height) * 0.8
            height: width
        }
    }

    Column {
        id: words

        x: page.LayoutMirroring.enabled ? 0 : page.secondX
        y: page.beside ? 0 : view.height + Theme.gap
        width: page.cellWidth
        spacing: Theme.gap

        ProblemNote {
            objectName: "cameraProblem"
            width: parent.width
            text: eye.blind ? qsTr("The camera shows nothing. Perhaps another app is using it, or Lidlark may not. The nine words do the same.")
                : reader.foreign ? qsTr("These squares say something else. Lidlark's stand below the nine words.") : ""
        }

        Words {
            objectName: "howToHold"
            width: parent.width
            text: qsTr("Hold this phone so that the squares of the other one lie inside the frame. They stand below its nine words.")
        }

        Words {
            width: parent.width
            role: Theme.Reason
            soft: true
            text: qsTr("No picture is kept. The camera goes off when the squares are read, or when you leave this page.")
        }
    }
}
