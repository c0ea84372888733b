pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The smallest caution: one line in reverse. On an offer it closes the picture.
Item {
    id: band

    property string text: ""
    property bool mirrored: false
    property bool roundBottom: false
    property bool roundEnd: false

    implicitWidth: words.implicitWidth + 2 * Theme.cardPadding
    implicitHeight: Math.max(29, words.height + 10 - 2 * Theme.scriptRoom)

    PictureGround {
        anchors.fill: parent
        colour: Theme.safety
        mirrored: band.mirrored
        roundTop: false
        roundBottom: band.roundBottom
        roundEnd: band.roundEnd
    }

    Words {
        id: words

        anchors.centerIn: parent
        width: Math.min(implicitWidth, band.width - 2 * Theme.smallGap)
        role: Theme.Caption
        strong: true
        horizontalAlignment: Text.AlignHCenter
        color: Theme.safetyText
        spoken: false
        text: band.text
    }
}
