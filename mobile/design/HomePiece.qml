pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One piece in its well: dots while it is away, drawn once it is home.
Item {
    id: piece

    property string drawing: ""
    property string placeDrawing: ""
    property bool home: false
    property bool settled: false

    onHomeChanged: {
        if (piece.home && piece.settled)
            coming.restart()
    }
    Component.onCompleted: piece.settled = true

    Drawing {
        anchors.fill: parent
        visible: !piece.home && piece.placeDrawing.length > 0
        name: piece.placeDrawing
        inkColour: Theme.pictureText
    }

    DashFrame {
        anchors.fill: parent
        visible: !piece.home && piece.placeDrawing.length === 0
        colour: Theme.pictureText
        dotted: true
        thickness: 2.4
        radius: width * 0.3
    }

    Drawing {
        id: drawn

        anchors.fill: parent
        visible: piece.home
        name: piece.drawing
    }

    NumberAnimation {
        id: coming

        target: drawn
        property: "scale"
        from: 0.92
        to: 1
        duration: Theme.homeMs
        easing.type: Easing.OutCubic
    }
}
