pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Shows where the keyboard or the switch is. Laid 5 outside of a paper it leaves 2 clear inside itself.
Rectangle {
    id: ring

    property int ground: Theme.OnSheet
    property int paperRadius: Theme.radiusPaper

    anchors.fill: parent
    color: "transparent"
    radius: ring.paperRadius + 5
    border.width: 3
    border.color: ring.ground === Theme.OnCloth ? Theme.clothText
                : ring.ground === Theme.OnSafety ? Theme.safetyText : Theme.ink
}
