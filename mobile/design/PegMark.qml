pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The one mark for "chosen": a clothes peg, clipped on. Drops into place when it is clipped.
Drawing {
    id: peg

    property bool clipped: false
    property real drop: 0
    property bool settled: false

    name: "peg-mark"
    width: 18
    height: 27
    visible: peg.clipped
    transform: Translate { y: peg.drop }

    onClippedChanged: {
        if (peg.clipped && peg.settled)
            clipping.restart()
    }
    Component.onCompleted: peg.settled = true

    NumberAnimation {
        id: clipping

        target: peg
        property: "drop"
        from: -6
        to: 0
        duration: Theme.pegMs
        easing.type: Easing.OutCubic
    }
}
