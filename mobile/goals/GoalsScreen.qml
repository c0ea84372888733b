pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Goals

/// The goals of one child, in words. The therapist's numbers lie behind a link of their own.
Sheet {
    id: screen

    required property Household household

    signal back()
    signal goalWanted(string goal)
    signal ratingWanted(string goal)
    signal numbersWanted()

    GoalsViewModel {
        id: goals

        household: screen.household
    }

    header: TitleBar {
        text: qsTr("Goals with %1").arg(screen.household.child)
        backName: qsTr("Back")
        onBack: screen.back()
    }

    ProblemNote {
        width: screen.contentWidth
        text: goals.problem
    }

    EmptyState {
        width: screen.contentWidth
        visible: goals.count === 0 && goals.problem.length === 0
        drawing: "item-lid"
        text: qsTr("No goal yet")
        note: qsTr("Agree on one with the family, in their words: something the child does on an everyday day.")
    }

    Repeater {
        model: goals

        GoalCard {
            id: card

            required property string goalId
            required words
            required nowText
            required nextText
            required dates
            required said
            required before

            objectName: "goal-" + card.goalId
            width: screen.contentWidth
            onRateWanted: screen.ratingWanted(card.goalId)
            onWordsWanted: screen.goalWanted(card.goalId)
        }
    }

    StitchedLink {
        anchors.left: parent.left
        width: Math.min(implicitWidth, screen.contentWidth)
        visible: screen.household.therapist && goals.count > 0
        text: qsTr("Numbers, for therapists")
        onClicked: screen.numbersWanted()
    }

    foot: ActionFoot {
        text: qsTr("Agree on a goal")
        onClicked: screen.goalWanted("")
    }
}
