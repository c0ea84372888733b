pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// After play, for the child: two kites side by side, and nothing that says which is better.
FocusScope {
    id: pair

    required property string before
    required property string now
    required property string text
    required property string thanks
    readonly property real side: Theme.childMargin
    readonly property real tileWidth: (pair.width - 2 * pair.side - Theme.gap) / 2
    readonly property real tileHeight: Math.min(30 * Theme.dotsPerMm, pair.height - words.height - heldControl.height - 5 * Theme.gap)

    signal held()

    onVisibleChanged: {
        if (pair.visible)
            heldControl.forceActiveFocus()
    }

    // Nothing below may be tapped through the paper.
    MouseArea { anchors.fill: parent }

    Rectangle {
        anchors.fill: parent
        color: Theme.sheet
    }

    Column {
        id: words

        x: Theme.margin + 2
        y: Theme.gap
        width: pair.width - 2 * words.x
        spacing: Theme.smallGap

        Words {
            width: words.width
            role: Theme.largeText ? Theme.Label : Theme.Question
            strong: true
            heading: true
            text: pair.text
        }

        Words {
            width: words.width
            text: pair.thanks
        }
    }

    Repeater {
        model: [pair.before, pair.now]

        PictureCard {
            required property string modelData
            required property int index

            x: pair.side + index * (pair.tileWidth + Theme.gap)
            y: words.y + words.height + Theme.sectionGap
            width: pair.tileWidth
            height: pair.tileHeight
            drawing: modelData.length > 0 ? "kite-" + modelData : ""
            text: index === 0 ? qsTr("before") : qsTr("now")
        }
    }

    CornerHold {
        id: heldControl

        objectName: "adultHoldPair"
        focus: true
        side: pair.side
        beside: true
        text: qsTr("adult: hold")
        onHeld: pair.held()
    }
}
