pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Shelf

/// The ways to buy one thing, the one that is liked most first.
Column {
    id: packs

    required property SupplyViewModel supply

    signal added(pack: PackOfferCard)

    spacing: Theme.gap

    function at(row: int): Item {
        return rows.itemAt(row)
    }

    SectionWords {
        width: packs.width
        text: qsTr("Where it is bought, first choice on top")
    }

    Repeater {
        id: rows

        model: packs.supply.offers

        PackOfferCard {
            id: pack

            required property int index
            required property string ownCurrency
            required shop
            required pieces
            required price
            required piecesProblem
            required priceProblem

            objectName: "pack-" + pack.index
            width: packs.width
            currency: pack.ownCurrency.length > 0 ? pack.ownCurrency : packs.supply.currency
            number: pack.index + 1
            onShopWritten: text => packs.supply.offers.setShop(pack.index, text)
            onPiecesWritten: text => packs.supply.offers.setPieces(pack.index, text)
            onPriceWritten: text => packs.supply.offers.setPrice(pack.index, text)
            onMovedUp: packs.supply.offers.moveUp(pack.index)
            onTakenOut: packs.supply.offers.remove(pack.index)
        }
    }

    PaperButton {
        objectName: "addPack"
        anchors.left: parent.left
        width: Math.min(implicitWidth, packs.width)
        text: packs.supply.offers.count > 0 ? qsTr("Another pack or shop") : qsTr("Add a pack")
        onClicked: {
            packs.supply.offers.add()
            packs.added(packs.at(packs.supply.offers.count - 1) as PackOfferCard)
        }
    }
}
