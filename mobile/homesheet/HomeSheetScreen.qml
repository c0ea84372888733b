pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.HomeSheet

/// Who lives here and what must stay away. The careful answer always counts.
Sheet {
    id: screen

    required property Household household

    /// What must leave the house is read first.
    readonly property string mustGo: homeSheet.takeOutLead

    signal back()

    onMustGoChanged: screen.toTop()

    HomeSheetViewModel {
        id: homeSheet

        household: screen.household
    }

    header: TitleBar {
        text: qsTr("Home sheet")
        backName: qsTr("Back")
        onBack: screen.back()
    }

    CautionStrip {
        width: screen.contentWidth
        visible: homeSheet.takeOutLead.length > 0
        lead: homeSheet.takeOutLead
        text: homeSheet.takeOutText
        whole: true
    }

    ProblemNote {
        width: screen.contentWidth
        visible: homeSheet.problem.length > 0
        text: homeSheet.problem
    }

    SectionWords {
        width: screen.contentWidth
        text: homeSheet.homeName.length > 0 ? homeSheet.homeName : qsTr("Who lives here")
    }

    Card {
        width: screen.contentWidth
        visible: homeSheet.people.length > 0

        Repeater {
            model: homeSheet.people

            Words {
                required property string modelData

                width: screen.contentWidth - 2 * Theme.cardPadding
                role: Theme.Body
                text: modelData
            }
        }
    }

    Rule {
        width: screen.contentWidth
    }

    PaperField {
        width: screen.contentWidth
        label: qsTr("Your emergency number")
        inputMethodHints: Qt.ImhDialableCharactersOnly
        maximumLength: 20
        text: homeSheet.emergencyNumber
        onAccepted: homeSheet.sayEmergencyNumber(text)
        onFocusedChanged: if (!focused) homeSheet.sayEmergencyNumber(text)
    }

    PaperField {
        width: screen.contentWidth
        label: qsTr("Your poison line")
        inputMethodHints: Qt.ImhDialableCharactersOnly
        maximumLength: 20
        text: homeSheet.poisonLine
        onAccepted: homeSheet.sayPoisonLine(text)
        onFocusedChanged: if (!focused) homeSheet.sayPoisonLine(text)
    }

    Repeater {
        model: homeSheet

        Column {
            id: question

            required property string note
            required property int answer
            required property int index
            required property string question

            width: screen.contentWidth
            spacing: Theme.smallGap

            Rule {
                width: question.width
            }

            Words {
                width: question.width
                role: Theme.Label
                text: question.question
            }

            Words {
                width: question.width
                visible: question.note.length > 0
                role: Theme.Reason
                soft: true
                text: question.note
            }

            ChipFlow {
                width: question.width

                FilterChip {
                    text: qsTr("Yes")
                    accessibleName: qsTr("Yes: %1").arg(question.question)
                    checked: question.answer === 1
                    onToggled: homeSheet.say(question.index, 1)
                }

                FilterChip {
                    text: qsTr("No")
                    accessibleName: qsTr("No: %1").arg(question.question)
                    checked: question.answer === 2
                    onToggled: homeSheet.say(question.index, 2)
                }
            }
        }
    }
}
