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

    topSpace: Theme.largeText ? 20 : 30
    bottomSpace: Theme.largeText ? 2 : 20
    spacing: Theme.largeText ? 0 : 14

    BigYes {
        width: parent.width
        question: foot.question
        answer: foot.answer
        drawing: foot.drawing
        notNowReason: foot.notNowReason
        onClicked: foot.clicked()
    }

    StitchedLink {
        anchors.horizontalCenter: parent.horizontalCenter
        width: Math.min(implicitWidth, parent.width)
        visible: foot.otherText.length > 0
        ground: Theme.OnCloth
        centred: true
        text: foot.otherText
        onClicked: foot.otherClicked()
    }
}
