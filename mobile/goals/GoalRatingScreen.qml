pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Goals

/// Which level a goal has reached: five texts to tap, who says so, and of which day. Two may see it
/// differently: both stand.
Sheet {
    id: screen

    required property Household household
    required property string goal

    signal back()
    signal kept()

    GoalRatingViewModel {
        id: rating

        household: screen.household
        goal: screen.goal
    }

    header: TitleBar {
        text: qsTr("How is it going?")
        backName: qsTr("Back")
        onBack: screen.back()
    }

    Words {
        width: screen.contentWidth
        role: Theme.Label
        text: rating.words
    }

    Repeater {
        model: rating

        ChoiceRow {
            id: level

            required property int index
            required property string label
            required property string words
            required property bool chosen

            width: screen.contentWidth
            text: level.words
            note: level.label
            checkable: true
            exclusive: true
            checked: level.chosen
            onClicked: rating.choose(level.index)
        }
    }

    SectionWords {
        width: screen.contentWidth
        text: qsTr("Who says so")
    }

    ChipFlow {
        width: screen.contentWidth

        Repeater {
            model: rating.roles

            FilterChip {
                id: chip

                required property string modelData
                required property int index

                text: chip.modelData
                picked: rating.role === chip.index
                onClicked: rating.role = chip.index
            }
        }
    }

    PaperField {
        id: rater

        objectName: "rater"
        width: screen.contentWidth
        visible: rating.named
        label: qsTr("Their name")
        maximumLength: 40
        onEdited: rating.rater = rater.text

        Connections {
            target: rating

            function onLoaded() {
                if (rater.text !== rating.rater)
                    rater.text = rating.rater
            }
        }
    }

    SectionWords {
        width: screen.contentWidth
        text: qsTr("Of which day: %1").arg(rating.day)
    }

    LinkPair {
        width: screen.contentWidth
        text: rating.dayMayFall ? qsTr("A day earlier") : ""
        otherText: rating.dayMayRise ? qsTr("A day later") : ""
        onClicked: rating.moveDay(-1)
        onOtherClicked: rating.moveDay(1)
    }

    ProblemNote {
        width: screen.contentWidth
        text: rating.problem
    }

    SectionWords {
        width: screen.contentWidth
        visible: rating.said.length > 0
        text: qsTr("Said so far")
    }

    Repeater {
        model: rating.said

        Words {
            required property string modelData

            width: screen.contentWidth
            role: Theme.Reason
            text: modelData
        }
    }

    foot: ActionFoot {
        text: qsTr("Keep it")
        notNowReason: rating.complete ? "" : qsTr("Choose a step, and who says so")
        onClicked: {
            if (rating.keep())
                screen.kept()
        }
    }
}
