pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// What is known of a thing, to be read: a label, and its lines under it.
Column {
    id: facts

    property list<string> labels
    property list<string> words

    visible: facts.labels.length > 0
    spacing: Theme.gap

    SectionWords {
        width: facts.width
        text: qsTr("What the catalogue knows")
    }

    Card {
        width: facts.width
        spacing: Theme.cardPadding

        Repeater {
            model: facts.labels

            Column {
                id: fact

                required property string modelData
                required property int index

                width: parent?.width ?? 0
                spacing: Theme.smallGap

                Words {
                    width: fact.width
                    role: Theme.Label
                    strong: true
                    text: fact.modelData
                }

                Words {
                    width: fact.width
                    role: Theme.Reason
                    text: facts.words[fact.index] ?? ""
                }
            }
        }
    }
}
