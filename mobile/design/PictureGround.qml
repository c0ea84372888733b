pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The ground under a drawing at the start of a card: only the corners at the card's own edge are round.
Item {
    id: ground

    property color colour: Theme.picture
    property bool mirrored: false
    property bool roundTop: true
    property bool roundBottom: true
    property bool roundEnd: false
    readonly property int over: Theme.radiusPaper

    clip: true

    Rectangle {
        x: ground.mirrored && !ground.roundEnd ? -ground.over : 0
        y: ground.roundTop ? 0 : -ground.over
        width: ground.width + (ground.roundEnd ? 0 : ground.over)
        height: ground.height + (ground.roundTop ? 0 : ground.over) + (ground.roundBottom ? 0 : ground.over)
        radius: Theme.radiusPaper - Theme.cardEdgeWidth
        color: ground.colour
    }
}
