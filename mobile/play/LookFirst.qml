pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// What to look over before the first step, and that it was.
Card {
    id: card

    required property list<string> lines

    signal lookedOver()

    Words {
        width: parent.width
        role: Theme.Label
        text: qsTr("Look first")
    }

    Repeater {
        model: card.lines

        Words {
            required property string modelData

            width: parent ? parent.width : 0
            role: Theme.Body
            text: modelData
        }
    }

    StitchedLink {
        objectName: "lookedOver"
        text: qsTr("All good")
        onClicked: card.lookedOver()
    }
}
