pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A question about one item, with answers of equal weight; while somebody else is asked, or after
/// the answer, only what there is to know.
Card {
    id: card

    property string drawing: ""
    property string text: ""
    property string note: ""
    property list<string> answers

    signal answered(int index)

    width: parent ? parent.width : implicitWidth
    spacing: Theme.gap

    PicturedWords {
        role: Theme.Body
        stacked: Theme.largeText
        drawing: card.drawing
        text: card.text
        note: card.note
    }

    Pair {
        visible: card.answers.length > 0
        columns: Theme.largeText || card.answers.length !== 2 ? 1 : 2

        Repeater {
            model: card.answers

            PaperButton {
                id: answer

                required property string modelData
                required property int index

                accessibleName: answer.modelData + answer.sentence(card.text)
                text: answer.modelData
                onClicked: card.answered(answer.index)
            }
        }
    }
}
