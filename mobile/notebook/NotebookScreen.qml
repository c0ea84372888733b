pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Notebook

/// What was played and what was noticed; the goal in the family's own words.
Sheet {
    id: screen

    required property Household household
    required property Sitting sitting

    signal notedWanted()
    signal ownNotesWanted()
    signal goalsWanted()

    NotebookViewModel {
        id: notebook

        household: screen.household
    }

    PairSummaries {
        id: pairs

        household: screen.household
    }

    ScreenTitle {
        width: screen.contentWidth
        text: qsTr("Notebook")
    }

    LinkPair {
        width: screen.contentWidth
        text: qsTr("Noted today")
        otherText: qsTr("Notes of your own")
        onClicked: screen.notedWanted()
        onOtherClicked: screen.ownNotesWanted()
    }

    Card {
        width: screen.contentWidth
        visible: notebook.goal.length > 0

        Words {
            width: parent.width
            role: Theme.Reason
            soft: true
            text: qsTr("Working towards")
        }

        Words {
            width: parent.width
            role: Theme.Label
            text: notebook.goal
        }

        GoalPath {
            width: parent.width
            nowTitle: qsTr("Now")
            nowText: notebook.goalNow
            nextTitle: qsTr("Next")
            nextText: notebook.goalNext
        }

        Words {
            width: parent.width
            role: Theme.Caption
            soft: true
            text: notebook.goalDates
        }
    }

    StitchedLink {
        anchors.left: parent.left
        width: Math.min(implicitWidth, screen.contentWidth)
        visible: notebook.knowsGoals
        text: notebook.goal.length > 0 ? qsTr("All about the goals") : qsTr("Earlier goals")
        onClicked: screen.goalsWanted()
    }

    Column {
        objectName: "pairs"
        width: screen.contentWidth
        spacing: Theme.chipGap
        visible: pairs.count > 0 && !screen.sitting.kiteOff

        SectionWords {
            width: parent.width
            text: qsTr("The kite before and after")
        }

        Repeater {
            model: pairs

            Card {
                id: pair

                required property string name
                required property string text

                width: screen.contentWidth

                Words {
                    width: parent.width
                    role: Theme.Label
                    text: pair.name
                }

                Words {
                    objectName: "pairText"
                    width: parent.width
                    role: Theme.Reason
                    text: pair.text
                }
            }
        }
    }

    EmptyState {
        width: screen.contentWidth
        visible: notebook.count === 0
        drawing: "item-lid"
        text: qsTr("Nothing here yet")
        note: qsTr("What you play together is written down here by itself.")
    }

    Repeater {
        model: notebook

        Column {
            id: entry

            required property string heading
            required property string name
            required property string drawing
            required property string noticed
            required property string note

            width: screen.contentWidth
            spacing: Theme.chipGap

            SectionWords {
                width: entry.width
                visible: entry.heading.length > 0
                text: entry.heading
            }

            NotebookRow {
                width: entry.width
                drawing: entry.drawing
                name: entry.name
                noticed: entry.noticed
                note: entry.note
            }
        }
    }
}
