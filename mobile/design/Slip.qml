pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The main action: a slip of paper on the cloth, or on a caution.
Pressable {
    id: slip

    property string sign: ""
    readonly property bool onSafety: slip.ground === Theme.OnSafety
    readonly property color paperColour: slip.onSafety ? Theme.safetyText : Theme.slip
    readonly property color wordColour: slip.notNow ? slip.groundInk : slip.onSafety ? Theme.safety : Theme.slipText

    ground: Theme.OnCloth
    implicitHeight: Math.max(64, slip.implicitContentHeight + slip.topPadding + slip.bottomPadding)
    startPadding: Theme.cardPadding
    topPadding: 8 + paper.drop
    bottomPadding: 8 - paper.drop

    background: SlipPaper {
        id: paper

        fill: slip.notNow ? "transparent" : slip.paperColour
        edgeColour: slip.wordColour
        pressed: slip.down
        hovered: slip.hovered
        dashed: slip.notNow
        dashColour: slip.groundInk
    }

    contentItem: Item {
        implicitWidth: label.implicitWidth
        implicitHeight: label.implicitHeight + (slip.notNow ? reason.height : 0)

        SignedWords {
            id: label

            y: (parent.height - height - (slip.notNow ? reason.height : 0)) / 2
            width: parent.width
            role: Theme.Heading
            strong: !slip.notNow
            text: slip.text
            sign: slip.sign
            colour: slip.wordColour
        }

        NotNowReason {
            id: reason

            anchors.top: label.bottom
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            color: slip.groundInk
            text: slip.notNowReason
        }
    }
}
