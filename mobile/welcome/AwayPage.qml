pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Welcome

/// What nobody at home may meet. "Don't know" counts the careful way.
Column {
    id: page

    required property WelcomeViewModel answers
    readonly property list<string> words: [qsTr("Don't know"), qsTr("Yes"), qsTr("No")]

    spacing: Theme.gap

    Words {
        width: page.width
        role: Theme.Body
        text: qsTr("Anyone who lives here counts, not only your child.")
    }

    Words {
        width: page.width
        role: Theme.Label
        text: qsTr("Must anyone avoid latex?")
    }

    Words {
        width: page.width
        role: Theme.Reason
        soft: true
        text: qsTr("It is in balloons, rubber bands and many soft balls. Spina bifida and many operations count as yes.")
    }

    Repeater {
        model: page.words

        ChoiceRow {
            id: latex

            required property string modelData
            required property int index

            objectName: "latex-" + latex.index
            width: page.width
            exclusive: true
            text: latex.modelData
            accessibleName: qsTr("Latex: %1").arg(latex.modelData)
            checked: page.answers.latex === latex.index
            onToggled: page.answers.latex = latex.index
        }
    }

    Words {
        width: page.width
        role: Theme.Label
        text: qsTr("Must anyone avoid wheat?")
    }

    Words {
        width: page.width
        role: Theme.Reason
        soft: true
        text: qsTr("Bought dough is mostly wheat. A wheat allergy or coeliac disease counts as yes.")
    }

    Item {
        width: page.width
        height: wheatChoices.height

        Column {
            id: wheatChoices

            width: parent.width
            spacing: Theme.gap

            Repeater {
                model: page.words

                ChoiceRow {
                    id: wheat

                    required property string modelData
                    required property int index

                    objectName: "wheat-" + wheat.index
                    width: page.width
                    exclusive: true
                    text: wheat.modelData
                    accessibleName: qsTr("Wheat: %1").arg(wheat.modelData)
                    checked: page.answers.wheat === wheat.index
                    onToggled: page.answers.wheat = wheat.index
                }
            }
        }
    }
}
