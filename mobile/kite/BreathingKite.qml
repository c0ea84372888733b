pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A kite on its string: `out` 0 is wound in, 1 is let out. Like every drawing it never mirrors.
Item {
    id: guide

    required property real out
    readonly property real kiteHeight: guide.height * 0.42
    readonly property real kiteWidth: guide.kiteHeight * 3 / 4
    readonly property real reelWidth: guide.kiteHeight * 0.62
    readonly property real spread: Math.min(guide.width, guide.height * 1.2)
    readonly property real start: (guide.width - guide.spread) / 2

    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true

    PaperEdge {
        anchors.fill: parent
        fill: Theme.picture
        radius: Theme.radiusTile
        edgeColour: Theme.tileEdge
        edgeWidth: Theme.tileEdgeWidth
    }

    KiteString {
        anchors.fill: parent
        colour: Theme.drawingInk
        thickness: guide.kiteHeight / 32
        hand: Qt.point(reel.x + reel.width * 0.5, reel.y + reel.height * 0.24)
        // Where the two sticks of the kite cross.
        kite: Qt.point(kite.x + kite.width * 0.646, kite.y + kite.height * 0.297)
    }

    Drawing {
        id: reel

        x: guide.start + guide.spread * 0.94 - width
        y: guide.height - height - Theme.gap
        width: guide.reelWidth
        height: width * 0.6
        name: "kite-reel"
    }

    Drawing {
        id: kite

        x: guide.start + guide.spread * (0.36 - 0.34 * guide.out)
        y: (guide.height - height) * (0.72 - 0.68 * guide.out)
        width: guide.kiteWidth
        height: guide.kiteHeight
        name: "kite"
    }
}
