pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Box
import Lidlark.Design

/// A look is due, or the date is past: what to look for, and what was found.
Card {
    id: card

    required property ItemViewModel item

    signal driedOutWanted()

    visible: card.item.lookDue || card.item.pastDate
    spacing: Theme.gap

    Words {
        width: parent.width
        role: Theme.Row
        text: card.item.pastDate ? SafetyWords.of(QT_TRANSLATE_NOOP("SafetyWords", "Past its date. Throw it away.")) : qsTr("Time for a look")
    }

    Words {
        width: parent.width
        visible: !card.item.pastDate && text.length > 0
        text: card.item.look
    }

    Words {
        width: parent.width
        role: Theme.Reason
        soft: true
        visible: !card.item.pastDate && text.length > 0
        text: card.item.lookedWords
    }

    Words {
        width: parent.width
        role: Theme.Reason
        soft: true
        visible: card.item.pastDate && text.length > 0
        text: card.item.petNotice
    }

    PaperButton {
        objectName: "good"
        anchors.left: parent.left
        width: Math.min(implicitWidth, parent.width)
        visible: !card.item.pastDate
        text: qsTr("It is good")
        onClicked: card.item.noteGood()
    }

    PaperButton {
        objectName: "throwAway"
        anchors.left: parent.left
        width: Math.min(implicitWidth, parent.width)
        visible: card.item.pastDate
        text: qsTr("Thrown away")
        onClicked: card.item.throwAway()
    }

    StitchedLink {
        objectName: "lookDriedOut"
        anchors.left: parent.left
        visible: !card.item.pastDate && card.item.rescue.length > 0
        text: qsTr("It has dried out")
        onClicked: card.driedOutWanted()
    }
}
