pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One part in the crew: what it sees, and what not, in words.
Card {
    id: card

    required property string part
    required property string sees
    required property string seesNot
    property string note: ""

    Words {
        width: parent.width
        role: Theme.Label
        heading: true
        text: card.part
    }

    Words {
        width: parent.width
        text: card.sees
    }

    Words {
        width: parent.width
        text: card.seesNot
    }

    Words {
        width: parent.width
        role: Theme.Reason
        soft: true
        visible: text.length > 0
        text: card.note
    }
}
