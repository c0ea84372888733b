pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Own

/// What it is played with, how many of each, and what else there is.
Column {
    id: part

    required property OwnWritingViewModel writing
    property bool adding: false

    spacing: Theme.gap

    Repeater {
        model: part.writing.things

        Card {
            id: thing

            required property int index
            required property string itemId
            required property string name
            required property string drawing
            required property int pieces
            required property int most
            required property string note
            required property bool spare

            objectName: "thing-" + thing.itemId
            width: part.width
            spacing: Theme.chipGap

            Stepper {
                width: parent.width
                text: thing.name
                note: thing.note
                drawing: thing.drawing
                value: thing.pieces
                from: 1
                to: Math.max(1, thing.most)
                lessName: qsTr("One less: %1").arg(thing.name)
                moreName: qsTr("One more: %1").arg(thing.name)
                onChanged: value => part.writing.things.setPieces(thing.index, value)
            }

            FilterChip {
                text: qsTr("Can be left out")
                accessibleName: thing.name + ". " + text
                picked: thing.spare
                onClicked: part.writing.things.spare(thing.index, !thing.spare)
            }

            StitchedLink {
                text: qsTr("Not with this")
                accessibleName: qsTr("Not with this: %1").arg(thing.name)
                onClicked: part.writing.things.takeOut(thing.index)
            }
        }
    }

    FilterChip {
        visible: part.writing.divides
        text: qsTr("Small pieces come of it")
        picked: part.writing.smallPieces
        onClicked: part.writing.smallPieces = !part.writing.smallPieces
    }

    PaperButton {
        objectName: "addThing"
        anchors.left: parent.left
        width: Math.min(implicitWidth, part.width)
        text: part.adding ? qsTr("Close the list") : qsTr("Put a thing in")
        onClicked: part.adding = !part.adding
    }

    PaperField {
        id: find

        width: part.width
        visible: part.adding
        label: qsTr("Find it by its name")
    }

    Repeater {
        // Read anew as soon as one of them was put in.
        model: part.adding && part.writing.things.count >= 0 ? part.writing.things.others(find.text) : []

        LinkRow {
            id: other

            required property string modelData

            objectName: "add-" + other.modelData
            width: part.width
            drawing: part.writing.things.drawingOf(other.modelData)
            text: part.writing.things.nameOf(other.modelData)
            note: part.writing.things.noteOf(other.modelData)
            accessibleName: qsTr("Put in: %1").arg(other.text) + sentence(other.note)
            onClicked: {
                part.adding = false
                part.writing.things.add(other.modelData)
            }
        }
    }
}
