pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Goals

/// The numbers, for therapists alone and opened by a tap of their own: a score for each rater, and
/// how much each goal counts in it. They are no grade of the child.
Sheet {
    id: screen

    required property Household household

    signal back()

    GoalNumbersViewModel {
        id: numbers

        household: screen.household
    }

    header: TitleBar {
        text: qsTr("Numbers, for therapists")
        backName: qsTr("Back")
        onBack: screen.back()
    }

    EmptyState {
        width: screen.contentWidth
        visible: !screen.household.therapist
        drawing: "item-lid"
        text: qsTr("Nothing here for families")
        note: qsTr("Goals stand in the notebook, in words.")
    }

    Column {
        id: page

        width: screen.contentWidth
        spacing: Theme.gap
        visible: screen.household.therapist

        FullBleed {
            sheetMargin: screen.margin
            sheetWidth: screen.width

            CautionStrip {
                width: parent.width
                whole: true
                lead: qsTr("Steps come in an order. The T-value takes them for even ones.")
                text: qsTr("Two raters may differ by twenty and more. Read the words first. It is no grade of the child, and families do not see it.")
            }
        }

        ProblemNote {
            width: page.width
            text: numbers.problem
        }

        SectionWords {
            width: page.width
            text: qsTr("T-value of the goals that were rated, by rater")
        }

        Words {
            width: page.width
            visible: numbers.raters.length === 0
            text: qsTr("Nothing has been rated yet.")
        }

        Words {
            width: page.width
            role: Theme.Reason
            soft: true
            visible: text.length > 0
            text: numbers.leftOut
        }

        Repeater {
            model: numbers.raters

            Card {
                id: score

                required property string modelData
                required property int index

                width: page.width

                Words {
                    width: parent.width
                    role: Theme.Label
                    text: score.modelData
                }

                Words {
                    width: parent.width
                    role: Theme.Row
                    text: numbers.scores[score.index]
                }

                Words {
                    width: parent.width
                    role: Theme.Reason
                    soft: true
                    text: numbers.restsOn[score.index]
                }
            }
        }

        SectionWords {
            width: page.width
            text: qsTr("How much each goal counts")
        }

        Repeater {
            model: numbers

            Card {
                id: goal

                required property int index
                required property string goalId
                required property string words
                required property int weight
                required property list<string> levels

                width: page.width

                Stepper {
                    objectName: "weight-" + goal.goalId
                    width: parent.width
                    text: goal.words
                    to: 9
                    value: goal.weight
                    valueText: Numerals.of(goal.weight)
                    lessName: qsTr("Counts less: %1").arg(goal.words)
                    moreName: qsTr("Counts more: %1").arg(goal.words)
                    onChanged: value => numbers.weigh(goal.index, value)
                }

                Repeater {
                    model: goal.levels

                    Words {
                        required property string modelData

                        width: goal.width - 2 * goal.padding
                        role: Theme.Reason
                        soft: true
                        text: modelData
                    }
                }
            }
        }

        Words {
            width: page.width
            role: Theme.Caption
            soft: true
            text: qsTr("Kiresuk and Sherman 1968, with the goals taken to go together by 0.3. Goals that nobody has rated are left out.")
        }
    }
}
