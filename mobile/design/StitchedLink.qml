pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A quieter action: its words with a running stitch below. Never wider than what it lies in.
Pressable {
    id: link

    property bool centred: false
    readonly property color stitchColour: link.notNow ? link.quietColour
                                        : link.ground === Theme.OnSheet && !link.down ? Theme.accent : link.groundInk
    readonly property color quietColour: link.ground === Theme.OnSheet ? Theme.inkSoft : link.groundInk

    paperRadius: Theme.radiusChip
    width: link.parent ? Math.min(link.implicitWidth, link.parent.width) : link.implicitWidth

    contentItem: Item {
        implicitWidth: Math.max(words.implicitWidth, reason.implicitWidth)
        implicitHeight: words.height + (link.notNow ? reason.height : 0) + stitch.height + 2

        Words {
            id: words

            y: (parent.height - parent.implicitHeight) / 2
            width: parent.width
            role: Theme.Label
            strong: !link.notNow
            horizontalAlignment: link.centred ? Text.AlignHCenter : Text.AlignLeft
            color: link.stitchColour
            spoken: false
            text: link.text
        }

        StitchLine {
            id: stitch

            anchors.top: words.bottom
            anchors.topMargin: link.hovered || link.down ? 2 : 1
            x: link.centred ? (parent.width - width) / 2 : link.mirrored ? parent.width - width : 0
            width: words.contentWidth
            height: link.down ? 3 : 2.2
            thickness: height
            colour: link.stitchColour
            visible: !link.notNow
        }

        NotNowReason {
            id: reason

            anchors.top: words.bottom
            width: parent.width
            horizontalAlignment: words.horizontalAlignment
            color: link.quietColour
            text: link.notNowReason
        }
    }
}
