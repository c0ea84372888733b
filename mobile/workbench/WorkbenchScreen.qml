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
    /// The child whose page stands beside the board; empty: none does.
    property string shownChild: ""

    signal childWanted(string alias)
    signal roundWanted()
    signal packingWanted()
    signal ownActivitiesWanted()

    CaseloadViewModel {
        id: board

        household: screen.household
    }

    ScreenTitle {
        width: screen.contentWidth
        text: qsTr("Workbench")
        under: board.boxWords
    }

    ProblemNote {
        width: screen.contentWidth
        text: board.problem
    }

    LinkRow {
        objectName: "round"
        width: screen.contentWidth
        sign: "sign-box"
        text: qsTr("Restock round")
        note: board.packWords
        onClicked: screen.roundWanted()
    }

    LinkRow {
        objectName: "packing"
        width: screen.contentWidth
        sign: "sign-count"
        text: qsTr("Packing table")
        note: qsTr("Builds, boxes that come back, lots")
        onClicked: screen.packingWanted()
    }

    LinkRow {
        objectName: "ownActivities"
        width: screen.contentWidth
        sign: "sign-notebook"
        text: qsTr("Activities of your own")
        note: qsTr("Written by you, with the same checks as ours")
        onClicked: screen.ownActivitiesWanted()
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
                endText: screen.shownChild === entry.child ? qsTr("shown") : ""
                accessibleName: entry.child + sentence(entry.matter) + sentence(entry.words.replace(/\n/g, " ")) + sentence(endText)
                onClicked: screen.childWanted(entry.child)
            }
        }
    }
}
