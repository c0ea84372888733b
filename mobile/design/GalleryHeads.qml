pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Gallery: heads of screens, the roles of text, and the goal.
Column {
    width: parent ? parent.width : implicitWidth
    spacing: Theme.gap

    ScreenTitle {
        over: "Monday evening"
        text: "Play with Fin"

        NameTagLine {
            names: ["Fin", "Ruth"]
            note: "in the room"
        }
    }

    ScreenTitle {
        text: "Fin’s box"
        under: "At home, says Ruth, Monday"
        endNote: "Lid list R1"
    }

    Repeater {
        model: ["Big yes", "Title", "Question", "Heading", "Step", "Row", "Label", "Strong", "Body", "Reason",
            "Caution lead", "Caption", "Tab word", "Number"]

        Words {
            required property int index
            required property string modelData

            width: parent?.width ?? 0
            role: index
            text: modelData + ": a goat hops quietly"
        }
    }

    Rule { width: parent.width }

    StepMarks {
        width: parent.width
        count: 3
        current: 1
        text: "Step 2 of 3"
    }

    Card {
        width: parent.width

        SectionWords {
            width: parent.width
            text: "Working towards"
        }

        Words {
            width: parent.width
            role: Theme.Heading
            text: "Opens his lunch tub at school"
        }

        GoalPath {
            nowTitle: "Now"
            nowText: "Holds it steady with his left forearm. An adult lifts the lid."
            nextTitle: "Next"
            nextText: "Holds it and lifts the lid himself, after one reminder."
        }
    }

    NotebookRow {
        drawing: "item-eyes"
        name: "Hidden Harbour Lights"
        noticed: "Found his own way"
        note: "Ruth. One light used up."
    }

    EmptyState {
        drawing: "item-box"
        text: "No plays yet"
        note: "What you play is written here."
        actionText: "Choose one"
    }

    ProblemNote {
        text: "The storage did not answer."
        actionText: "Try again"
    }

    ProblemNote { text: "This code is out of date." }
}
