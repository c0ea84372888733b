pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The cloth with the one large answer on it, and below it the way to say that something differs.
ClothFoot {
    id: foot

    property string question: ""
    property string answer: ""
    property string drawing: "item-box"
    property string notNowReason: ""
    property string otherText: ""

    signal clicked()
    signal otherClicked()

    topSpace: Theme.lowPage ? 14 : Theme.largeText ? 20 : 30
    bottomSpace: Theme.lowPage ? 6 : Theme.largeText ? 2 : 20
    spacing: Theme.largeText ? 0 : 14

    // On a phone lying down both stand side by side: neither is the only answer in sight.
    Item {
        id: answers

        readonly property bool beside: Theme.lowPage && foot.otherText.length > 0
        readonly property real yesWidth: answers.beside ? answers.width * 0.62 : answers.width

        width: parent.width
        implicitHeight: answers.beside || foot.otherText.length === 0 ? yes.height : yes.height + foot.spacing + other.height

        BigYes {
            id: yes

            x: answers.beside && answers.LayoutMirroring.enabled ? answers.width - width : 0
            width: answers.yesWidth
            question: foot.question
            answer: foot.answer
            drawing: foot.drawing
            notNowReason: foot.notNowReason
            onClicked: foot.clicked()
        }

        StitchedLink {
            id: other

            readonly property real room: answers.beside ? answers.width - answers.yesWidth : answers.width

            x: (answers.beside && !answers.LayoutMirroring.enabled ? answers.yesWidth : 0) + (other.room - width) / 2
            y: answers.beside ? (yes.height - height) / 2 : yes.height + foot.spacing
            width: Math.min(implicitWidth, other.room)
            visible: foot.otherText.length > 0
            ground: Theme.OnCloth
            centred: true
            text: foot.otherText
            onClicked: foot.otherClicked()
        }
    }
}
