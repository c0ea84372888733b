pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Paper laid straight on cloth or on a caution: no thickness, no edge until it is pressed.
Item {
    id: paper

    property color fill: Theme.slip
    property color edgeColour: Theme.slipText
    property color dashColour: Theme.clothText
    property bool pressed: false
    property bool hovered: false
    property bool dashed: false
    readonly property real drop: face.y

    Rectangle {
        id: face

        y: paper.pressed ? 2 : 0
        width: paper.width
        height: paper.height
        radius: Theme.radiusPaper
        color: paper.fill
        border.width: paper.dashed ? 0 : paper.pressed ? 2 : paper.hovered ? 1 : 0
        border.color: paper.edgeColour

        Behavior on y { NumberAnimation { duration: Theme.pressMs; easing.type: Easing.OutCubic } }
    }

    DashFrame {
        anchors.fill: parent
        visible: paper.dashed
        colour: paper.dashColour
        radius: Theme.radiusPaper
    }
}
