pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Shelf

/// What lies on the shelf of one thing, and what is written on it.
Column {
    id: shelf

    required property SupplyViewModel supply
    /// The first field with something wrong; null: none.
    readonly property Item wrong: ownName.problem.length > 0 ? ownName : stock.problem.length > 0 ? stock : null

    spacing: Theme.gap

    PaperField {
        id: ownName

        objectName: "ownName"
        width: shelf.width
        visible: !shelf.supply.inCatalogue
        label: qsTr("Name")
        placeholder: qsTr("Box with lid")
        maximumLength: 80
        problem: shelf.supply.nameProblem
        onEdited: shelf.supply.ownName = ownName.text
        Component.onCompleted: ownName.text = shelf.supply.ownName
    }

    PaperField {
        id: stock

        objectName: "stock"
        width: shelf.width
        label: qsTr("On the shelf, pieces")
        placeholder: Numerals.of(0)
        maximumLength: 10
        inputMethodHints: Qt.ImhDigitsOnly
        problem: shelf.supply.stockProblem
        onEdited: shelf.supply.stock = stock.text
        Component.onCompleted: stock.text = shelf.supply.stock
    }

    PaperField {
        id: lot

        objectName: "lot"
        width: shelf.width
        label: qsTr("Lot, as it is printed")
        maximumLength: 40
        onEdited: shelf.supply.lot = lot.text
        Component.onCompleted: lot.text = shelf.supply.lot
    }

    PaperField {
        id: note

        objectName: "note"
        width: shelf.width
        label: qsTr("A note to yourself")
        maximumLength: 80
        onEdited: shelf.supply.note = note.text
        Component.onCompleted: note.text = shelf.supply.note
    }

    ChipFlow {
        width: shelf.width

        FilterChip {
            objectName: "usedUp"
            text: qsTr("Used up in play")
            picked: shelf.supply.usedUp
            onClicked: shelf.supply.usedUp = !shelf.supply.usedUp
        }
    }

    SectionWords {
        width: shelf.width
        visible: !shelf.supply.inCatalogue
        text: qsTr("The catalogue does not know it. What did you look for, and find none of?")
    }

    ChipFlow {
        width: shelf.width
        visible: !shelf.supply.inCatalogue

        Repeater {
            model: shelf.supply.freeOfWords

            FilterChip {
                id: free

                required property string modelData
                required property int index

                text: free.modelData
                picked: shelf.supply.freeOf[free.index] ?? false
                onClicked: shelf.supply.turnFreeOf(free.index)
            }
        }
    }
}
