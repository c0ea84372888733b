pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Today

/// The whole collection, for adults, and the things it is played with: what is held back says why.
Sheet {
    id: screen

    required property Household household
    required property Sitting sitting
    required property PlayInHand playInHand

    /// What is searched for, kept while a thing's own page stands open.
    property string searched: ""

    signal back()
    signal playBegun()
    signal itemWanted(string itemId)

    function begin(activityId: string) {
        if (everything.begin(activityId))
            screen.playBegun()
    }

    spacing: Theme.chipGap

    EverythingViewModel {
        id: everything

        household: screen.household
        sitting: screen.sitting
        playInHand: screen.playInHand
        searched: field.text
        Component.onCompleted: everything.refresh()
    }

    ThingsFound {
        id: things

        household: screen.household
        sitting: screen.sitting
        searched: field.text
        Component.onCompleted: things.refresh()
    }

    header: TitleBar {
        text: qsTr("Everything for %1").arg(screen.household.childTitle)
        backName: qsTr("Back to today")
        onBack: screen.back()
    }

    ProblemNote {
        width: screen.contentWidth
        text: everything.problem
        actionText: qsTr("Try again")
        onAction: everything.refresh()
    }

    PaperField {
        id: field

        objectName: "search"
        width: screen.contentWidth
        label: qsTr("Find by name, thing or skill")
        text: screen.searched
        onEdited: screen.searched = field.text
    }

    EmptyState {
        objectName: "nothingFound"
        width: screen.contentWidth
        visible: everything.count === 0 && things.count === 0 && everything.problem.length === 0
        text: qsTr("Nothing is called that")
        note: qsTr("Try one word, such as dough or paper.")
    }

    SectionWords {
        objectName: "things"
        width: screen.contentWidth
        visible: things.count > 0
        text: qsTr("Things")
    }

    Repeater {
        model: things

        ThingRow {
            id: thing

            width: screen.contentWidth
            onChosen: screen.itemWanted(thing.itemId)
        }
    }

    Words {
        objectName: "nothingPlayed"
        width: screen.contentWidth
        visible: everything.count === 0 && things.count > 0
        soft: true
        text: qsTr("Nothing to play is called that.")
    }

    Repeater {
        model: everything

        EverythingRow {
            id: entry

            required property int index

            width: screen.contentWidth
            head: entry.index === 0 && everything.countAllowed > 0 ? qsTr("Fits just now")
                : entry.index === everything.countAllowed ? qsTr("Held back, and why") : ""
            onChosen: screen.begin(entry.activityId)
        }
    }
}
