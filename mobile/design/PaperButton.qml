pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A button of paper, or a patch of cloth on paper where it is the main one.
Pressable {
    id: button

    property string sign: ""
    property bool patch: false
    readonly property bool patched: button.patch && !button.notNow && !button.down
    readonly property color wordColour: button.notNow ? Theme.inkSoft : button.patched ? Theme.chosenText : Theme.ink

    implicitWidth: Math.max(Theme.touchTarget, Math.max(words.implicitWidth, reason.implicitWidth) + button.leftPadding + button.rightPadding)
    startPadding: Theme.cardPadding + 4
    topPadding: 10 + paper.drop
    bottomPadding: 10 - paper.drop

    background: PaperEdge {
        id: paper

        fill: button.notNow ? "transparent" : button.patched ? Theme.chosen : Theme.card
        edgeColour: button.hovered ? Theme.ink : Theme.line
        edgeWidth: button.patched ? 0 : Theme.lineWidth
        pressed: button.down
        dashed: button.notNow
    }

    contentItem: Item {
        implicitHeight: column.implicitHeight

        Column {
            id: column

            anchors.verticalCenter: parent.verticalCenter
            width: parent.width

            SignedWords {
                id: words

                width: parent.width
                text: button.text
                sign: button.sign
                colour: button.wordColour
                strong: !button.notNow
            }

            NotNowReason {
                id: reason

                width: parent.width
                horizontalAlignment: Text.AlignHCenter
                text: button.notNowReason
            }
        }
    }
}
