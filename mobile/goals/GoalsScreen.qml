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
    signal pageWanted(string goal)
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
        visible: goals.count === 0 && goals.earlier.length === 0 && goals.problem.length === 0
        drawing: "item-lid"
        text: qsTr("No goal yet")
        note: qsTr("Agree on one with the family, in their words: something the child does on an everyday day.")
    }

    Repeater {
        model: goals

        Column {
            id: entry

            required property string goalId
            required property string heading
            required property string words
            required property string nowText
            required property string nextText
            required property string dates
            required property list<string> said
            required property string before

            width: screen.contentWidth
            spacing: Theme.chipGap

            SectionWords {
                width: entry.width
                visible: entry.heading.length > 0
                text: entry.heading
            }

            GoalCard {
                objectName: "goal-" + entry.goalId
                width: entry.width
                words: entry.words
                nowText: entry.nowText
                nextText: entry.nextText
                dates: entry.dates
                said: entry.said
                before: entry.before
                onRateWanted: screen.ratingWanted(entry.goalId)
                onPageWanted: screen.pageWanted(entry.goalId)
            }
        }
    }

    SectionWords {
        width: screen.contentWidth
        visible: goals.earlier.length > 0
        text: qsTr("Earlier goals")
    }

    Repeater {
        model: goals.earlier

        LinkRow {
            id: ended

            required property string modelData
            required property int index

            objectName: "earlier-" + ended.modelData
            width: screen.contentWidth
            text: goals.earlierWords[ended.index]
            note: goals.earlierEnds[ended.index]
            onClicked: screen.pageWanted(ended.modelData)
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
