pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Own

/// What follows from the sizes and the materials, reckoned and never ticked.
Card {
    id: card

    required property OwnItemViewModel writing

    spacing: Theme.cardPadding

    component Fact: Column {
        id: fact

        property string label: ""
        property string words: ""

        width: parent?.width ?? 0
        visible: fact.words.length > 0
        spacing: Theme.smallGap

        Words {
            width: fact.width
            role: Theme.Label
            strong: true
            text: fact.label
        }

        Words {
            width: fact.width
            role: Theme.Reason
            text: fact.words
        }
    }

    Fact {
        label: qsTr("What follows from its sizes")
        words: card.writing.follows
    }

    Fact {
        label: qsTr("What there is to mind in all")
        words: card.writing.minded
    }

    Fact {
        label: qsTr("At the earliest")
        words: card.writing.ageWords
    }
}
