pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Goals

/// A goal comes to an end: reached, set aside or followed by another. Nothing of it is lost.
Sheet {
    id: screen

    required property Household household
    required property string goal

    signal back()
    signal ended()

    GoalEndingViewModel {
        id: ending

        household: screen.household
        goal: screen.goal
    }

    header: TitleBar {
        text: qsTr("A goal comes to an end")
        backName: qsTr("Back")
        onBack: screen.back()
    }

    news: ending.problem

    Words {
        width: screen.contentWidth
        role: Theme.Label
        text: ending.words
    }

    Repeater {
        model: ending.ways

        ChoiceRow {
            id: way

            required property string modelData
            required property int index

            width: screen.contentWidth
            text: way.modelData
            checkable: true
            exclusive: true
            checked: ending.way === way.index
            onClicked: ending.way = way.index
        }
    }

    PaperArea {
        id: reason

        objectName: "endingReason"
        width: screen.contentWidth
        lines: 2
        label: qsTr("Why, in your own words (may be left out)")
        onEdited: ending.reason = reason.text
    }

    Words {
        width: screen.contentWidth
        role: Theme.Reason
        soft: true
        text: qsTr("It then stands under “Earlier goals”, with its steps and all that was said of it. The offers no longer go by it. You can take it up again.")
    }

    ProblemNote {
        width: screen.contentWidth
        text: ending.problem
    }

    foot: ActionFoot {
        text: qsTr("End this goal")
        notNowReason: ending.complete ? "" : qsTr("Choose one of the three")
        onClicked: {
            if (ending.end())
                screen.ended()
        }
    }
}
