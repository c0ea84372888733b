pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A picture to look at, not to press, with one word under it.
Item {
    id: card

    required property string drawing
    required property string text

    Accessible.role: Accessible.Graphic
    Accessible.name: card.text

    PaperEdge {
        anchors.fill: parent
        fill: Theme.picture
        radius: Theme.radiusTile
        edgeColour: Theme.tileEdge
        edgeWidth: Theme.tileEdgeWidth
    }

    Drawing {
        x: Theme.gap
        y: Theme.gap
        width: card.width - 2 * Theme.gap
        height: card.height - words.height - 3 * Theme.gap
        name: card.drawing
    }

    Words {
        id: words

        x: Theme.gap
        y: card.height - height - Theme.gap
        width: card.width - 2 * Theme.gap
        role: Theme.Label
        color: Theme.pictureText
        horizontalAlignment: Text.AlignHCenter
        spoken: false
        text: card.text
    }
}
