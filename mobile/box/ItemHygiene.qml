pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Box
import Lidlark.Design

/// It was in a mouth: what to do before anybody plays with it again.
Card {
    id: card

    required property ItemViewModel item

    visible: card.item.mouthed
    spacing: Theme.gap

    Words {
        width: parent.width
        role: Theme.Row
        text: card.item.mouthedWords
    }

    Repeater {
        model: card.item.afterMouth

        Words {
            required property string modelData

            width: parent ? parent.width : 0
            text: modelData
        }
    }

    Pair {
        columns: card.item.cleanable && !Theme.largeText ? 2 : 1

        PaperButton {
            objectName: "washed"
            visible: card.item.cleanable
            text: qsTr("Washed")
            onClicked: card.item.noteHygiene("washed")
        }

        PaperButton {
            objectName: "replaced"
            text: qsTr("Replaced")
            onClicked: card.item.noteHygiene("replaced")
        }
    }

    StitchedLink {
        objectName: "throwMouthed"
        anchors.left: parent.left
        visible: !card.item.cleanable
        text: qsTr("Thrown away")
        onClicked: card.item.throwAway()
    }
}
