pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A key with a number (or another short mark) on it.
Pressable {
    id: key

    implicitWidth: Math.max(52, key.implicitContentWidth + key.leftPadding + key.rightPadding)
    leftPadding: Theme.chipGap
    rightPadding: Theme.chipGap
    topPadding: paper.drop
    bottomPadding: -paper.drop
    Accessible.checkable: key.checkable
    Accessible.checked: key.checked

    background: PaperEdge {
        id: paper

        fill: key.checked ? Theme.chosen : Theme.card
        edgeColour: key.hovered ? Theme.ink : Theme.line
        edgeWidth: key.checked && !key.hovered ? 0 : Theme.lineWidth
        pressed: key.down
        flat: true

        PegMark {
            x: key.mirrored ? 1 : paper.width - width - 1
            y: -8
            clipped: key.checked
        }
    }

    contentItem: Item {
        implicitWidth: number.implicitWidth
        implicitHeight: number.height

        Words {
            id: number

            anchors.centerIn: parent
            role: Theme.Row
            color: key.checked ? Theme.chosenText : Theme.ink
            spoken: false
            text: key.text
        }
    }
}
