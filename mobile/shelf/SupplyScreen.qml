pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Shelf

/// One thing of the shelf: what is there of it and how it is bought, to be written; and what the
/// catalogue knows of it, to be read.
Sheet {
    id: screen

    required property Household household
    /// Empty: a thing that nobody has heard of yet.
    required property string item

    signal back()
    signal kept()
    signal recallWanted(string lot)
    signal measureWanted(string kind)

    /// What is wrong stands beside its field, on a long page.
    function showWrong() {
        const row = supply.offers.firstWrong()
        const wrong = shelf.wrong ?? (row >= 0 ? packs.at(row) : problem)
        screen.held = wrong
        screen.showItem(wrong)
    }

    SupplyViewModel {
        id: supply

        household: screen.household
        item: screen.item
    }

    header: TitleBar {
        text: supply.name
        backName: supply.changed ? qsTr("Back, nothing is changed") : qsTr("Back")
        onBack: screen.back()
    }

    unsaved: supply.changed
    news: supply.problem

    PicturedCautions {
        width: screen.contentWidth
        visible: supply.inCatalogue
        drawing: supply.drawing
        cautions: supply.cautions
    }

    OnTheShelf {
        id: shelf

        width: screen.contentWidth
        supply: supply
    }

    PackOfferList {
        id: packs

        width: screen.contentWidth
        supply: supply
        onAdded: pack => {
            screen.held = pack
            pack.begin()
        }
    }

    ProblemNote {
        id: problem

        width: screen.contentWidth
        text: supply.problem
    }

    LinkRow {
        objectName: "recallWanted"
        width: screen.contentWidth
        visible: supply.keptLot.length > 0
        sign: "sign-search"
        text: qsTr("Which boxes hold this lot")
        note: qsTr("Lot %1").arg(supply.keptLot)
        notNowReason: supply.changed ? qsTr("Keep what you have written first.") : ""
        onClicked: screen.recallWanted(supply.keptLot)
    }

    FactCard {
        width: screen.contentWidth
        labels: supply.factLabels
        words: supply.factWords
    }

    LinkRow {
        objectName: "measureWanted"
        width: screen.contentWidth
        visible: supply.inCatalogue
        sign: "sign-count"
        text: supply.isOwn ? qsTr("Change its sizes and materials") : qsTr("Yours measures otherwise")
        note: supply.isOwn ? "" : qsTr("Say what you measured, and see whose box it changes.")
        notNowReason: supply.changed ? qsTr("Keep what you have written first.") : ""
        onClicked: screen.measureWanted(supply.kind)
    }

    foot: ActionFoot {
        text: qsTr("Keep it")
        notNowReason: supply.changed ? "" : qsTr("Nothing is changed yet")
        onClicked: {
            if (supply.keep())
                screen.kept()
            else
                screen.showWrong()
        }
    }
}
