pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// What an adult may want to read once: words to say, what to notice, other ways in, all cautions.
Column {
    id: details

    required property list<string> say
    required property list<string> watchFor
    required property list<string> waysIn
    required property list<string> cautions

    spacing: Theme.gap

    component Lines: Column {
        id: lines

        required property string head
        required property list<string> texts

        width: details.width
        spacing: Theme.smallGap
        visible: lines.texts.length > 0

        SectionWords {
            width: lines.width
            text: lines.head
        }

        Repeater {
            model: lines.texts

            Words {
                required property string modelData

                width: lines.width
                role: Theme.Body
                text: modelData
            }
        }
    }

    Lines {
        head: qsTr("You might say")
        texts: details.say
    }

    Lines {
        head: qsTr("Watch for")
        texts: details.watchFor
    }

    Lines {
        head: qsTr("Other ways in")
        texts: details.waysIn
    }

    Lines {
        head: qsTr("All cautions")
        texts: details.cautions
    }
}
