pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A full-width band in reverse that is pressed when something has gone wrong ("It burst").
Pressable {
    id: button

    ground: Theme.OnSafety
    paperRadius: 0
    ringOutset: -3 // It runs from edge to edge: the ring goes inside.
    startPadding: Theme.margin + 2
    endPadding: Theme.margin
    topPadding: Theme.largeText ? 4 : 8
    bottomPadding: button.topPadding

    background: Rectangle {
        color: Theme.safety
        border.width: button.down ? 3 : button.hovered ? 1 : 0
        border.color: Theme.safetyText
    }

    contentItem: Item {
        implicitWidth: words.implicitWidth + Theme.gap + onward.width
        implicitHeight: words.height

        Words {
            id: words

            anchors.left: parent.left
            anchors.right: onward.left
            anchors.verticalCenter: parent.verticalCenter
            // In large text as small as a title's share lets it: what is played needs the room.
            role: Theme.largeText ? Theme.TabWord : Theme.Label
            strong: true
            color: Theme.safetyText
            spoken: false
            text: button.text
        }

        OnwardSign {
            id: onward

            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            mirrored: button.mirrored
            inkColour: Theme.safetyText
        }
    }
}
