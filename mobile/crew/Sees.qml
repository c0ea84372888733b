pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One part in the crew: what it sees, and what not, in words.
Card {
    id: card

    required property string part
    required property string can
    required property string cannot
    property string note: ""

    Words {
        width: parent.width
        role: Theme.Label
        heading: true
        text: card.part
    }

    Words {
        width: parent.width
        text: qsTr("Sees: %1.").arg(card.can)
    }

    Words {
        width: parent.width
        text: qsTr("Does not see: %1.").arg(card.cannot)
    }

    Words {
        width: parent.width
        role: Theme.Reason
        soft: true
        visible: text.length > 0
        text: card.note
    }
}
