pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The three words that two phones show alike.
Card {
    id: card

    required property string question
    required property string words

    Words {
        width: parent.width
        text: card.question
    }

    Words {
        objectName: "sameWords"
        width: parent.width
        role: Theme.Heading
        text: card.words
    }
}
