pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A piece of paper: its face, its edge, and its thickness seen below. Pressed, it drops on to it.
Item {
    id: paper

    property color fill: Theme.card
    property color edgeColour: Theme.cardEdge
    property real edgeWidth: Theme.cardEdgeWidth
    property color pressedEdge: Theme.ink
    property int radius: Theme.radiusPaper
    property bool pressed: false
    property bool flat: false
    property bool dashed: false
    readonly property real drop: face.y

    Rectangle {
        y: Theme.paperThickness
        width: paper.width
        height: paper.height
        radius: paper.radius
        color: Theme.edgeLow
        visible: !paper.flat && !paper.dashed
    }

    Rectangle {
        id: face

        y: paper.pressed ? 2 : 0
        width: paper.width
        height: paper.height
        radius: paper.radius
        color: paper.fill
        border.width: paper.dashed ? 0 : paper.pressed ? Math.max(2, paper.edgeWidth + 1) : paper.edgeWidth
        border.color: paper.pressed ? paper.pressedEdge : paper.edgeColour

        Behavior on y { NumberAnimation { duration: Theme.pressMs; easing.type: Easing.OutCubic } }
    }

    DashFrame {
        anchors.fill: parent
        visible: paper.dashed
        colour: Theme.line
        radius: paper.radius
    }
}
