pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Shelf

/// All that boxes are packed with: how much of it is there, and what the cheapest piece costs.
Sheet {
    id: screen

    required property Household household
    /// What is searched for, and of what alone; kept while a thing's own page stands open.
    property string searched: ""
    property int only: ShelfViewModel.All
    /// The thing whose page was open before: the list begins there.
    property string shown: ""
    /// What stands open beside the list; empty: nothing of it.
    property string opened: ""

    signal back()
    signal supplyWanted(string itemId)
    signal newWanted()
    signal ownWanted()

    function search(words: string) {
        screen.shown = ""
        screen.held = null
        screen.searched = words
    }

    function turn(only: int) {
        screen.only = screen.only === only ? ShelfViewModel.All : only
    }

    spacing: Theme.chipGap

    ShelfViewModel {
        id: shelf

        household: screen.household
        searched: screen.searched
        only: screen.only
    }

    header: TitleBar {
        text: qsTr("Shelf and shops")
        backName: qsTr("Back")
        onBack: screen.back()
    }

    ProblemNote {
        width: screen.contentWidth
        text: shelf.problem
    }

    Words {
        width: screen.contentWidth
        soft: true
        text: shelf.words
    }

    PaperField {
        id: field

        objectName: "search"
        width: screen.contentWidth
        label: qsTr("Find by name, shop or lot")
        text: screen.searched
        onEdited: screen.search(field.text)
    }

    ChipFlow {
        width: screen.contentWidth

        FilterChip {
            objectName: "noPrice"
            text: qsTr("No price")
            picked: screen.only === ShelfViewModel.NoPrice
            onClicked: screen.turn(ShelfViewModel.NoPrice)
        }

        FilterChip {
            objectName: "noneLeft"
            text: qsTr("None left")
            picked: screen.only === ShelfViewModel.NoneLeft
            onClicked: screen.turn(ShelfViewModel.NoneLeft)
        }

        FilterChip {
            objectName: "usedUp"
            text: qsTr("Used up in play")
            picked: screen.only === ShelfViewModel.UsedUp
            onClicked: screen.turn(ShelfViewModel.UsedUp)
        }
    }

    LinkRow {
        objectName: "ownWanted"
        width: screen.contentWidth
        visible: screen.searched.length === 0 && screen.only === ShelfViewModel.All
        sign: "sign-notebook"
        text: qsTr("Things of your own")
        note: qsTr("Measured by you, so that they may be played with")
        onClicked: screen.ownWanted()
    }

    EmptyState {
        width: screen.contentWidth
        visible: shelf.count === 0 && shelf.problem.length === 0
        text: qsTr("Nothing on the shelf is like that")
        note: qsTr("Take out a word or a peg to see more.")
    }

    Repeater {
        model: shelf

        LinkRow {
            id: row

            required property string itemId
            required property string name
            required property string stock
            required drawing
            required note

            objectName: "supply-" + row.itemId
            width: screen.contentWidth
            text: row.name
            shown: screen.opened === row.itemId
            endText: row.stock
            onClicked: screen.supplyWanted(row.itemId)
            Component.onCompleted: {
                if (row.itemId === screen.shown)
                    screen.held = row
            }
        }
    }

    foot: ActionFoot {
        text: qsTr("Add a thing")
        onClicked: screen.newWanted()
    }
}
