pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Workbench

/// The first place of the one who packs: what every box needs, in words, and nothing of anybody's
/// diligence. Each child leads to the page of that child's box.
Sheet {
    id: screen

    required property Household household
    /// The route of the page beside the board; empty: none is.
    property string opened: ""
    readonly property list<string> ofNoChild: ["", "round", "builds", "packing", "own-activities", "report"]
    /// The child whose page stands there.
    readonly property string shownChild: screen.ofNoChild.includes(screen.opened) ? "" : screen.household.child

    signal childWanted(string alias)
    signal roundWanted()
    signal packingWanted()
    signal ownActivitiesWanted()
    signal reportWanted()
    signal buildsWanted()

    CaseloadViewModel {
        id: board

        household: screen.household
    }

    ScreenTitle {
        width: screen.contentWidth
        text: qsTr("Workbench")
        under: screen.household.withoutBoxes ? "" : board.boxWords
    }

    ProblemNote {
        width: screen.contentWidth
        text: board.problem
    }

    LinkRow {
        objectName: "round"
        width: screen.contentWidth
        visible: !screen.household.withoutBoxes
        sign: "sign-box"
        text: qsTr("Restock round")
        note: board.packWords
        shown: screen.opened === "round"
        onClicked: screen.roundWanted()
    }

    LinkRow {
        objectName: "builds"
        width: screen.contentWidth
        sign: "sign-notebook"
        text: qsTr("Builds and buying")
        note: qsTr("What to buy, for which boxes")
        shown: screen.opened === "builds"
        onClicked: screen.buildsWanted()
    }

    LinkRow {
        objectName: "packing"
        width: screen.contentWidth
        sign: "sign-count"
        text: qsTr("Packing table")
        note: qsTr("Builds, boxes that come back, lots")
        shown: screen.opened === "packing"
        onClicked: screen.packingWanted()
    }

    LinkRow {
        objectName: "ownActivities"
        width: screen.contentWidth
        visible: !screen.household.packsOnly
        sign: "sign-notebook"
        text: qsTr("Activities of your own")
        note: qsTr("Written by you, with the same checks as ours")
        shown: screen.opened === "own-activities"
        onClicked: screen.ownActivitiesWanted()
    }

    EmptyState {
        width: screen.contentWidth
        visible: screen.household.withoutBoxes && !screen.household.packsOnly
        drawing: "item-box"
        text: qsTr("No box is with a child yet")
        note: qsTr("Say what belongs in a box, begin a build and pack it. Once a box is handed over, the family comes in by a code, and their box stands here.")
    }

    EmptyState {
        width: screen.contentWidth
        visible: screen.household.packsOnly
        drawing: "item-box"
        text: qsTr("This phone packs")
        note: qsTr("No child's box is on it. What you tick goes to the therapist's phone, and what is ticked there comes here.")
    }

    Repeater {
        model: board

        Column {
            id: entry

            required property string child
            required property string heading
            required property string matter
            required property string words

            width: screen.contentWidth
            spacing: Theme.chipGap

            SectionWords {
                width: entry.width
                visible: text.length > 0
                text: entry.heading
            }

            LinkRow {
                objectName: "child-" + entry.child
                width: entry.width
                text: entry.child
                note: entry.words
                shown: screen.shownChild === entry.child
                accessibleName: entry.child + sentence(entry.matter) + sentence(entry.words.replace(/\n/g, " ")) + sentence(endWords)
                onClicked: screen.childWanted(entry.child)
            }
        }
    }

    SectionWords {
        width: screen.contentWidth
        visible: !screen.household.withoutBoxes
        text: qsTr("For a report")
    }

    LinkRow {
        objectName: "report"
        width: screen.contentWidth
        visible: !screen.household.withoutBoxes
        text: qsTr("What one play costs, over many boxes")
        shown: screen.opened === "report"
        onClicked: screen.reportWanted()
    }
}
