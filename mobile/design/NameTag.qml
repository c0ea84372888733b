pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A name on a tag, pegged on its piece of line. Every other tag hangs the other way.
Item {
    id: tag

    property string text: ""
    property bool tilted: false

    implicitWidth: face.width + 7
    implicitHeight: face.y + face.height + 4 - Theme.scriptRoom

    Rope {
        y: 10
        width: tag.width
        height: 4
        colour: Theme.inkSoft
    }

    Rectangle {
        id: face

        x: (tag.width - width) / 2
        y: 13
        width: Math.max(48, name.implicitWidth + 26)
        height: name.height + 12
        rotation: tag.tilted ? 1.5 : -1.5
        antialiasing: true
        radius: Theme.radiusWell
        color: Theme.card
        border.width: Theme.cardEdgeWidth
        border.color: Theme.line

        Words {
            id: name

            anchors.centerIn: parent
            anchors.verticalCenterOffset: 2
            role: Theme.Number
            spoken: false
            text: tag.text
        }
    }

    Drawing {
        x: (tag.width - width) / 2
        width: 14
        height: 21
        rotation: 180
        name: "peg-mark"
    }
}
