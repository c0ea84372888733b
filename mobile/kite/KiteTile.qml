pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One of the three kites, with the little movement of its state (checkin.md 2): the grass leans
/// once every four seconds, the kite rocks two degrees, the kite goes round once in two seconds and
/// rests. Nothing is faster than one turn in two seconds; under reduced motion all are still.
ChildTile {
    id: tile

    required property string kite
    property real lean: 0
    property real rock: 0
    property real round: 0
    readonly property real loopRadius: Theme.smallGap
    readonly property bool moves: tile.visible && !Theme.reducedMotion

    drawing: "kite-" + tile.kite
    pictureMatrix: {
        const turned = Qt.matrix4x4(Math.cos(tile.rock), -Math.sin(tile.rock), 0, tile.loopRadius * Math.sin(tile.round),
                                    Math.sin(tile.rock), Math.cos(tile.rock), 0, tile.loopRadius * (1 - Math.cos(tile.round)),
                                    0, 0, 1, 0, 0, 0, 0, 1)
        return turned.times(Qt.matrix4x4(1, -tile.lean, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1))
    }
    onMovesChanged: {
        if (!tile.moves)
            tile.lean = tile.rock = tile.round = 0
    }

    SequentialAnimation {
        running: tile.moves && tile.kite === "resting"
        loops: Animation.Infinite

        PauseAnimation { duration: 2000 }
        NumberAnimation { target: tile; property: "lean"; to: 0.03; duration: 1000; easing.type: Easing.InOutSine }
        NumberAnimation { target: tile; property: "lean"; to: 0; duration: 1000; easing.type: Easing.InOutSine }
    }

    SequentialAnimation {
        readonly property real twoDegrees: 2 * Math.PI / 180

        id: rocking

        running: tile.moves && tile.kite === "steady"
        loops: Animation.Infinite

        NumberAnimation { target: tile; property: "rock"; to: rocking.twoDegrees; duration: 1000; easing.type: Easing.InOutSine }
        NumberAnimation { target: tile; property: "rock"; to: -rocking.twoDegrees; duration: 2000; easing.type: Easing.InOutSine }
        NumberAnimation { target: tile; property: "rock"; to: 0; duration: 1000; easing.type: Easing.InOutSine }
    }

    SequentialAnimation {
        running: tile.moves && tile.kite === "whirling"
        loops: Animation.Infinite

        NumberAnimation { target: tile; property: "round"; from: 0; to: 2 * Math.PI; duration: 2000; easing.type: Easing.InOutSine }
        PauseAnimation { duration: 2000 }
    }
}
