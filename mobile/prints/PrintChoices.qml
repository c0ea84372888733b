pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Prints

/// How a print is wanted: on which paper, in which language, and what else it asks.
Column {
    id: choices

    required property PrintViewModel job

    spacing: Theme.gap

    SectionWords {
        width: choices.width
        text: qsTr("Paper")
    }

    ChipFlow {
        width: choices.width

        Repeater {
            model: choices.job.papers

            FilterChip {
                id: paper

                required property string modelData
                required property int index

                objectName: "paper-" + paper.modelData
                text: paper.modelData
                picked: choices.job.paper === paper.index
                onClicked: choices.job.paper = paper.index
            }
        }
    }

    SectionWords {
        width: choices.width
        visible: choices.job.mostLanguages > 0
        text: choices.job.mostLanguages > 1 ? qsTr("One language, or two side by side") : qsTr("Language")
    }

    ChipFlow {
        width: choices.width
        visible: choices.job.mostLanguages > 0

        Repeater {
            model: choices.job.languages

            FilterChip {
                id: language

                required property string modelData
                required property int index

                objectName: "written-" + language.index
                text: language.modelData
                picked: choices.job.chosen[language.index] ?? false
                onClicked: choices.job.toggleLanguage(language.index)
            }
        }
    }

    SectionWords {
        width: choices.width
        visible: choices.job.hasOrder
        text: qsTr("In which order")
    }

    ChipFlow {
        width: choices.width
        visible: choices.job.hasOrder

        Repeater {
            model: [qsTr("Box by box"), qsTr("Item by item")]

            FilterChip {
                id: order

                required property string modelData
                required property int index

                objectName: "order-" + order.index
                text: order.modelData
                picked: choices.job.byItem === (order.index === 1)
                onClicked: choices.job.byItem = order.index === 1
            }
        }
    }

    SectionWords {
        width: choices.width
        visible: choices.job.hasWeeks
        text: qsTr("Week")
    }

    ChipFlow {
        width: choices.width
        visible: choices.job.hasWeeks

        Repeater {
            model: [qsTr("This week"), qsTr("Next week")]

            FilterChip {
                id: week

                required property string modelData
                required property int index

                objectName: "week-" + week.index
                text: week.modelData
                picked: choices.job.weeksOn === week.index
                onClicked: choices.job.weeksOn = week.index
            }
        }
    }

    ChoiceRow {
        objectName: "tellPlays"
        width: choices.width
        visible: choices.job.mayTellPlays
        text: qsTr("With what was played and noticed")
        note: qsTr("Only on this page, and only if you say so.")
        notNowReason: choices.job.notNowReason
        checked: choices.job.tellPlays
        onToggled: choices.job.tellPlays = !choices.job.tellPlays
    }

    PaperField {
        id: contact

        objectName: "contact"
        width: choices.width
        visible: choices.job.hasContact
        label: qsTr("How families reach the service")
        placeholder: qsTr("Therapy team, 01234 567890")
        maximumLength: 60
        problem: choices.job.contactProblem
        text: choices.job.contact
        onAccepted: choices.job.keepContact(contact.text)
    }

    PaperButton {
        objectName: "keepContact"
        width: choices.width
        visible: choices.job.hasContact
        text: qsTr("Put it on the label")
        onClicked: choices.job.keepContact(contact.text)
    }
}
