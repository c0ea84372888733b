pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// When a goal is looked at again: after a block of so many weeks, or a week more or less.
Column {
    id: choice

    property string review: ""
    property int weeks: 0
    property string problem: ""

    signal weeksChosen(int weeks)
    signal moved(int weeks)

    spacing: Theme.chipGap

    Words {
        width: choice.width
        role: Theme.Strong
        text: choice.review.length > 0 ? qsTr("We look at it again on %1").arg(choice.review)
                                       : qsTr("When do we look at it again?")
    }

    ChipFlow {
        width: choice.width

        Repeater {
            model: [6, 8, 10, 12]

            FilterChip {
                id: chip

                required property int modelData

                text: qsTr("In %1 weeks").arg(Numerals.of(chip.modelData))
                picked: choice.weeks === chip.modelData
                onClicked: choice.weeksChosen(chip.modelData)
            }
        }
    }

    LinkPair {
        width: choice.width
        visible: choice.review.length > 0
        text: qsTr("A week earlier")
        otherText: qsTr("A week later")
        onClicked: choice.moved(-1)
        onOtherClicked: choice.moved(1)
    }

    Words {
        width: choice.width
        role: Theme.Reason
        strong: true
        visible: text.length > 0
        text: choice.problem
    }
}
