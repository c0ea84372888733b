pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A thing that was searched for. One that lies in the box leads to its page.
Column {
    id: thing

    required property string itemId
    required property string name
    required property string note
    required property string drawing
    required property bool inBox

    signal chosen()

    LinkRow {
        objectName: "thing-" + thing.itemId
        width: thing.width
        visible: thing.inBox
        drawing: thing.drawing
        text: thing.name
        note: thing.note
        onClicked: thing.chosen()
    }

    Card {
        objectName: "elsewhere-" + thing.itemId
        width: thing.width
        visible: !thing.inBox

        PicturedWords {
            role: Theme.Label
            drawing: thing.drawing
            text: thing.name
            note: thing.note
        }
    }
}
