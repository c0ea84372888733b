pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Gallery: what the living box is made of.
Column {
    width: parent ? parent.width : implicitWidth
    spacing: Theme.gap

    PicturedWords {
        drawing: "item-dough"
        text: "Dough"
        note: "One in the box"
    }

    AskCard {
        id: question

        drawing: "item-eyes"
        text: "Ruth and Gran each noted one stick-on eye used up this evening. Same one, or two?"
        answers: ["Two", "The same one"]
        onAnswered: index => question.note = "Ruth says: " + question.answers[index]
    }

    AskCard {
        drawing: "item-pegs"
        text: "Ruth counted 5 pegs. Gran counted 4 pegs. Which count was the last?"
        note: "Gran is asked. Anybody may answer from tomorrow."
    }

    StepPath {
        steps: ["Asked for", "Seen", "Packed", "On its way", "Counted in"]
        current: 2
        note: "Morven, Tuesday"
        text: "Packed, says Morven, Tuesday."
    }

    UseChart {
        pieces: [0, 1, 0, 2, 1, 0, 3, 1]
        labels: ["16 November", "", "December", "", "", "", "January", "this week"]
        text: "Stick-on eyes: 1 in the week of 23 November."
    }
}
