pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One wording of a goal: since when and whose, why, its five levels, and what was said of it.
Card {
    id: card

    property string title: ""
    property string words: "" ///< Empty: the goal's present ones.
    property string reason: ""
    property list<string> labels
    property list<string> levels
    property int stood: -1
    property list<string> said

    spacing: Theme.gap

    Words {
        width: parent.width
        role: Theme.Caption
        soft: true
        text: card.title
    }

    Words {
        width: parent.width
        role: Theme.Label
        visible: text.length > 0
        text: card.words
    }

    Words {
        width: parent.width
        role: Theme.Reason
        visible: text.length > 0
        text: card.reason
    }

    FiveSteps {
        width: parent.width
        labels: card.labels
        levels: card.levels
        stood: card.stood
    }

    Repeater {
        model: card.said

        Words {
            required property string modelData

            width: card.width - 2 * card.padding
            role: Theme.Reason
            soft: true
            text: modelData
        }
    }
}
