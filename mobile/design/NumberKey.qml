pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A key with a number (or another short mark) on it.
Pressable {
    id: key

    property bool picked: false

    implicitWidth: Math.max(52, key.implicitContentWidth + key.leftPadding + key.rightPadding)
    startPadding: Theme.chipGap
    topPadding: paper.drop
    bottomPadding: -paper.drop
    Accessible.selectable: !key.pressedOften
    Accessible.selected: key.picked

    background: PaperEdge {
        id: paper

        fill: key.picked ? Theme.chosen : Theme.card
        edgeColour: key.hovered ? Theme.ink : Theme.line
        edgeWidth: key.picked && !key.hovered ? 0 : Theme.lineWidth
        pressed: key.down
        flat: true

        PegMark {
            x: key.mirrored ? 1 : paper.width - width - 1
            y: -8
            clipped: key.picked
        }
    }

    contentItem: Item {
        implicitWidth: number.implicitWidth
        implicitHeight: number.height

        Words {
            id: number

            anchors.centerIn: parent
            role: Theme.Row
            color: key.picked ? Theme.chosenText : Theme.ink
            spoken: false
            text: key.text
        }
    }
}
