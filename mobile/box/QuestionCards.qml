pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Box
import Lidlark.Bridge
import Lidlark.Design

/// The open questions that are put to this phone, or those that are only to be known.
Column {
    id: cards

    required property Household household
    required property bool asking
    property string itemId: ""
    readonly property int count: questions.count

    spacing: Theme.gap
    visible: questions.count > 0 || questions.problem.length > 0

    QuestionViewModel {
        id: questions

        household: cards.household
        asking: cards.asking
        itemId: cards.itemId
    }

    ProblemNote {
        width: cards.width
        text: questions.problem
    }

    Repeater {
        model: questions

        AskCard {
            id: card

            required property string questionId
            required property string words
            required property int index
            required drawing
            required note
            required answers

            objectName: "question-" + card.questionId
            width: cards.width
            text: card.words
            onAnswered: answer => questions.answer(card.index, answer)
        }
    }
}
