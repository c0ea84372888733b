pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Goals

/// All of one goal, in words: its five levels, what was said of it, the words it had before, and how
/// it ended.
Sheet {
    id: screen

    required property Household household
    required property string goal

    signal back()
    signal ratingWanted()
    signal wordsWanted()
    signal endWanted()

    GoalPageViewModel {
        id: page

        household: screen.household
        goal: screen.goal
    }

    header: TitleBar {
        text: qsTr("A goal with %1").arg(screen.household.child)
        backName: qsTr("Back")
        onBack: screen.back()
    }

    ProblemNote {
        width: screen.contentWidth
        text: page.problem
    }

    Column {
        width: screen.contentWidth
        spacing: Theme.smallGap

        Words {
            width: parent.width
            role: Theme.Label
            text: page.words
        }

        Words {
            width: parent.width
            role: Theme.Reason
            soft: true
            visible: text.length > 0
            text: page.areas
        }

        Words {
            width: parent.width
            role: Theme.Reason
            soft: true
            visible: !page.ended && text.length > 0
            text: page.review
        }
    }

    LinkPair {
        width: screen.contentWidth
        visible: page.known && !page.ended
        text: qsTr("How is it going?")
        otherText: qsTr("Other words")
        onClicked: screen.ratingWanted()
        onOtherClicked: screen.wordsWanted()
    }

    Column {
        width: screen.contentWidth
        spacing: Theme.smallGap
        visible: page.turns.length > 0

        SectionWords {
            width: parent.width
            text: page.ended ? qsTr("This goal has ended") : qsTr("It had ended, and goes on")
        }

        Repeater {
            model: page.turns

            Words {
                required property string modelData

                width: screen.contentWidth
                text: modelData
            }
        }
    }

    Repeater {
        model: page

        Column {
            id: entry

            required property string heading
            required property string title
            required property string words
            required property string reason
            required property list<string> labels
            required property list<string> levels
            required property int stood
            required property list<string> said

            width: screen.contentWidth
            spacing: Theme.chipGap

            SectionWords {
                width: entry.width
                visible: entry.heading.length > 0
                text: entry.heading
            }

            WordingCard {
                width: entry.width
                title: entry.title
                words: entry.words
                reason: entry.reason
                labels: entry.labels
                levels: entry.levels
                stood: entry.stood
                said: entry.said
            }
        }
    }

    StitchedLink {
        anchors.left: parent.left
        width: Math.min(implicitWidth, screen.contentWidth)
        visible: page.known
        text: page.ended ? qsTr("Take this goal up again") : qsTr("End this goal")
        onClicked: {
            if (page.ended)
                page.takeUp()
            else
                screen.endWanted()
        }
    }
}
