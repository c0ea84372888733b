pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The one large answer on the cloth: a question, its answer, and what the answer is about.
Pressable {
    id: yes

    property string question: ""
    property string answer: ""
    property string drawing: "item-box"
    readonly property bool narrow: yes.width < 320
    readonly property int drawingSide: yes.narrow || Theme.largeText ? 64 : 78

    ground: Theme.OnCloth
    text: yes.answer
    accessibleName: yes.question.length > 0 ? yes.question + " " + yes.answer : yes.answer
    implicitHeight: Math.max(Theme.lowPage ? 72 : 104, yes.implicitContentHeight + yes.topPadding + yes.bottomPadding)
    startPadding: yes.narrow || Theme.largeText ? Theme.gap : 22
    topPadding: (Theme.lowPage ? Theme.smallGap : Theme.largeText ? Theme.gap : 14) + paper.drop
    bottomPadding: (Theme.lowPage ? Theme.smallGap : Theme.largeText ? Theme.gap : 14) - paper.drop

    background: SlipPaper {
        id: paper

        fill: yes.notNow ? "transparent" : Theme.slip
        pressed: yes.down
        hovered: yes.hovered
        dashed: yes.notNow
        dashColour: yes.groundInk
    }

    contentItem: Item {
        implicitHeight: words.implicitHeight

        Column {
            id: words

            anchors.left: parent.left
            anchors.right: picture.visible ? picture.left : parent.right
            anchors.rightMargin: Theme.gap
            anchors.verticalCenter: parent.verticalCenter
            spacing: 5

            Words {
                width: parent.width
                visible: yes.question.length > 0 && !yes.notNow && !Theme.largeText
                color: Theme.slipSoft
                spoken: false
                text: yes.question
            }

            FittingWords {
                width: parent.width
                usualRole: yes.notNow && Theme.largeText ? Theme.Heading : Theme.BigYes
                smallerRole: Theme.Heading
                color: yes.notNow ? yes.groundInk : Theme.slipText
                spoken: false
                text: yes.answer
            }

            NotNowReason {
                width: parent.width
                color: yes.groundInk
                text: yes.notNowReason
            }
        }

        Drawing {
            id: picture

            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            width: yes.drawingSide
            height: yes.drawingSide
            visible: !(yes.notNow && Theme.largeText)
            name: yes.drawing
        }
    }
}
