pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Own

/// How and where it is played, and how with one hand and from a chair.
Column {
    id: part

    required property OwnWritingViewModel writing

    spacing: Theme.gap

    OwnChips {
        width: part.width
        label: qsTr("How the child sits or stands")
        choice: part.writing.positions
    }

    OwnChips {
        width: part.width
        label: qsTr("Hands it takes")
        choice: part.writing.hands
    }

    OwnChips {
        width: part.width
        label: qsTr("Strength it takes")
        choice: part.writing.energy
    }

    OwnChips {
        width: part.width
        label: qsTr("Room it takes")
        choice: part.writing.space
    }

    OwnChips {
        width: part.width
        label: qsTr("What is to clean afterwards")
        choice: part.writing.mess
    }

    OwnChips {
        width: part.width
        label: qsTr("How loud it is")
        choice: part.writing.sound
    }

    PaperArea {
        id: oneHand

        objectName: "ownOneHand"
        width: part.width
        lines: 2
        label: qsTr("With one hand: what holds still, what the hand does")
        onEdited: part.writing.oneHand = oneHand.text
        Component.onCompleted: oneHand.text = part.writing.oneHand
    }

    PaperArea {
        id: seated

        objectName: "ownSeated"
        width: part.width
        lines: 2
        label: qsTr("From a chair or a wheelchair")
        onEdited: part.writing.seated = seated.text
        Component.onCompleted: seated.text = part.writing.seated
    }
}
