pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Reads aloud what the screen says. `paper` makes it the large slip of a child's screen.
SignButton {
    id: button

    property bool speaking: false
    property bool paper: false

    sign: "sign-speak"
    marked: button.speaking
    implicitWidth: button.paper ? 60 : Theme.touchTarget
    implicitHeight: button.paper ? 60 : Theme.touchTarget

    PaperEdge {
        anchors.fill: parent
        z: -1
        visible: button.paper
        pressed: button.down
        edgeWidth: Theme.cardEdgeWidth + (button.speaking ? 2 : 0)
        edgeColour: button.speaking ? Theme.ink : Theme.cardEdge
    }
}
