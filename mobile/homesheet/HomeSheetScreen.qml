pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.HomeSheet

/// Who lives here and what must stay away. The careful answer always counts.
Sheet {
    id: screen

    required property Household household

    signal back()
    signal takeOutWanted()
    signal tellWanted()

    HomeSheetViewModel {
        id: homeSheet

        household: screen.household
        onMustLeave: screen.takeOutWanted()
    }

    header: TitleBar {
        text: qsTr("Home sheet")
        backName: qsTr("Back")
        onBack: screen.back()
    }

    ProblemNote {
        width: screen.contentWidth
        visible: homeSheet.problem.length > 0
        text: homeSheet.problem
    }

    LinkRow {
        objectName: "takeOut"
        width: screen.contentWidth
        visible: homeSheet.avoids
        sign: "sign-box"
        text: qsTr("What must leave the house")
        onClicked: screen.takeOutWanted()
    }

    SectionWords {
        width: screen.contentWidth
        text: homeSheet.homeName.length > 0 ? homeSheet.homeName : qsTr("Who lives here")
    }

    LinkRow {
        objectName: "tellHome"
        width: screen.contentWidth
        visible: homeSheet.people.length === 0 && screen.household.homeToBeTold()
        sign: "sign-people"
        text: qsTr("Say who lives here")
        note: qsTr("Until then only the safest things are offered.")
        onClicked: screen.tellWanted()
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
                    picked: question.answer === 1
                    onClicked: homeSheet.say(question.index, 1)
                }

                FilterChip {
                    text: qsTr("No")
                    accessibleName: qsTr("No: %1").arg(question.question)
                    picked: question.answer === 2
                    onClicked: homeSheet.say(question.index, 2)
                }
            }
        }
    }

    Rule {
        width: screen.contentWidth
    }

    Words {
        width: screen.contentWidth
        role: Theme.Label
        heading: true
        text: qsTr("Numbers to call")
    }

    Words {
        width: screen.contentWidth
        role: Theme.Reason
        soft: true
        text: qsTr("They stand on top when something is wrong. Only you know which ones hold where you live.")
    }

    NumberEntry {
        objectName: "emergencyNumber"
        width: screen.contentWidth
        label: qsTr("Emergency number")
        kept: homeSheet.emergencyNumber
        onKeep: number => problem = homeSheet.keepEmergencyNumber(number)
    }

    NumberEntry {
        objectName: "poisonLine"
        width: screen.contentWidth
        label: qsTr("Poison line")
        kept: homeSheet.poisonLine
        onKeep: number => problem = homeSheet.keepPoisonLine(number)
    }
}
