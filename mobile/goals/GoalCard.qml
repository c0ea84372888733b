pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One goal in words: where it stands, what comes next, and who said so.
Card {
    id: card

    property string words: ""
    property string nowText: ""
    property string nextText: ""
    property string dates: ""
    property list<string> said
    property string before: ""

    signal rateWanted()
    signal pageWanted()

    spacing: Theme.gap

    Words {
        width: parent.width
        role: Theme.Label
        text: card.words
    }

    GoalPath {
        width: parent.width
        visible: card.nextText.length > 0
        nowTitle: qsTr("Now")
        nowText: card.nowText
        nextTitle: qsTr("Next")
        nextText: card.nextText
    }

    GoalWords {
        width: parent.width
        visible: card.nextText.length === 0
        lead: qsTr("Now, and further than we expected")
        text: card.nowText
    }

    Repeater {
        model: card.said

        Words {
            required property string modelData

            width: card.width - 2 * card.padding
            role: Theme.Reason
            text: modelData
        }
    }

    Words {
        width: parent.width
        role: Theme.Caption
        soft: true
        text: card.dates
    }

    Words {
        width: parent.width
        role: Theme.Caption
        soft: true
        visible: text.length > 0
        text: card.before
    }

    LinkPair {
        width: parent.width
        text: qsTr("How is it going?")
        accessibleName: qsTr("How is it going? %1").arg(card.words)
        otherText: qsTr("The whole goal")
        otherAccessibleName: qsTr("The whole goal: %1").arg(card.words)
        onClicked: card.rateWanted()
        onOtherClicked: card.pageWanted()
    }
}
