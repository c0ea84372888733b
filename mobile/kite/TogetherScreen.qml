pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Kite

/// The adult first: after a whirling or can't-tell kite, one short card at a time (checkin.md 5).
/// Never for the child.
Sheet {
    id: screen

    property int card: 0
    /// Once in a sitting (checkin.md 5).
    required property bool breathsLeft
    readonly property int smallSkill: 3

    signal done()
    signal breathsWanted()

    news: cards.heads[screen.card] + ". " + cards.lines[screen.card]

    TogetherCards {
        id: cards
    }

    ScreenTitle {
        width: screen.contentWidth
        over: qsTr("For you, before you play")
        text: cards.heads[screen.card]
    }

    Card {
        width: screen.contentWidth

        Words {
            objectName: "togetherLine"
            width: parent.width
            role: Theme.largeText ? Theme.Body : Theme.Step
            text: cards.lines[screen.card]
        }
    }

    StepMarks {
        width: screen.contentWidth
        count: cards.heads.length
        current: screen.card
        text: qsTr("%1 of %2").arg(Numerals.of(screen.card + 1)).arg(Numerals.of(cards.heads.length))
    }

    StitchedLink {
        objectName: "breaths"
        anchors.left: parent.left
        visible: screen.card === screen.smallSkill && screen.breathsLeft
        text: qsTr("Four kite breaths")
        onClicked: screen.breathsWanted()
    }

    foot: ActionFoot {
        text: qsTr("Choose something")
        otherText: screen.card + 1 < cards.heads.length ? qsTr("And then?") : ""
        onClicked: screen.done()
        onOtherClicked: screen.card += 1
    }
}
