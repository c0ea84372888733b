pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// The code of nine words, to be read out or typed off, and the same in squares.
Column {
    id: shown

    required property LettingIn letting

    spacing: Theme.gap

    Words {
        width: shown.width
        text: qsTr("On the other phone: open Lidlark, tap \"I have a code\", and type these nine words, in this order.")
    }

    Card {
        objectName: "codeWords"
        width: shown.width

        Repeater {
            model: shown.letting.words

            Words {
                id: word

                required property string modelData
                required property int index

                width: parent.width
                role: Theme.Heading
                text: qsTr("%1. %2").arg(Numerals.of(word.index + 1)).arg(word.modelData)
            }
        }
    }

    Words {
        objectName: "codeEnds"
        width: shown.width
        text: qsTr("For one phone, until %1. After that a new code takes one tap.").arg(shown.letting.ends)
    }

    Words {
        width: shown.width
        role: Theme.Label
        text: qsTr("Waiting for the other phone.")
    }

    StitchedLink {
        objectName: "anotherCode"
        anchors.left: parent.left
        text: qsTr("A new code")
        onClicked: shown.letting.makeCode()
    }

    SectionWords {
        width: shown.width
        text: qsTr("The same in squares, for its camera")
    }

    QrSquare {
        objectName: "codeSquares"
        width: shown.width
        height: Math.min(width, Theme.itemLarge * 2)
        text: shown.letting.squares
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("The code in squares, for another phone's camera")
    }
}
