pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// One way to buy a thing: shop, pieces in a pack, price of a pack.
Card {
    id: pack

    property int number: 1
    property string shop: ""
    property string pieces: ""
    property string price: ""
    property string piecesProblem: ""
    property string priceProblem: ""
    property string currency: ""
    readonly property string named: qsTr("Pack %1").arg(Numerals.of(pack.number))

    signal shopWritten(string text)
    signal piecesWritten(string text)
    signal priceWritten(string text)
    signal movedUp()
    signal takenOut()

    /// Somebody is about to write here.
    function begin() {
        shopField.tapped()
    }

    spacing: Theme.gap

    PaperField {
        id: shopField

        objectName: "shop"
        width: parent.width
        label: qsTr("%1: shop").arg(pack.named)
        maximumLength: 80
        onEdited: pack.shopWritten(shopField.text)
        Component.onCompleted: shopField.text = pack.shop
    }

    Pair {
        columns: Theme.largeText ? 1 : 2

        PaperField {
            id: piecesField

            objectName: "pieces"
            label: qsTr("Pieces in it")
            accessibleName: qsTr("%1: pieces in it").arg(pack.named)
            maximumLength: 6
            inputMethodHints: Qt.ImhDigitsOnly
            problem: pack.piecesProblem
            onEdited: pack.piecesWritten(piecesField.text)
            Component.onCompleted: piecesField.text = pack.pieces
        }

        PaperField {
            id: priceField

            objectName: "price"
            label: qsTr("Price, %1").arg(pack.currency)
            accessibleName: qsTr("%1: price").arg(pack.named)
            placeholder: "1.50"
            maximumLength: 12
            inputMethodHints: Qt.ImhFormattedNumbersOnly
            problem: pack.priceProblem
            onEdited: pack.priceWritten(priceField.text)
            Component.onCompleted: priceField.text = pack.price
        }
    }

    Flow {
        width: parent.width
        spacing: Theme.sectionGap

        StitchedLink {
            text: qsTr("Take out")
            accessibleName: qsTr("Take out: %1").arg(pack.named)
            onClicked: pack.takenOut()
        }

        StitchedLink {
            visible: pack.number > 1
            text: qsTr("Move up")
            accessibleName: qsTr("Move up: %1").arg(pack.named)
            onClicked: pack.movedUp()
        }
    }
}
