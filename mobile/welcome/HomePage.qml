pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Welcome

/// Which other children live here: small parts reach them too.
Column {
    id: page

    required property WelcomeViewModel answers
    property int years: 2
    property int mouths: 0

    spacing: Theme.gap

    Words {
        width: page.width
        role: Theme.Body
        text: qsTr("Other children decide what may come out of the box. Add each one, or go on.")
    }

    Repeater {
        model: page.answers.otherChildren

        LinkRow {
            id: other

            required property string modelData
            required property int index

            width: page.width
            text: other.modelData
            endText: qsTr("take off")
            onClicked: page.answers.removeChild(other.index)
        }
    }

    PaperField {
        id: name

        objectName: "otherName"
        width: page.width
        label: qsTr("Another child's name")
        maximumLength: 20
    }

    Stepper {
        objectName: "otherYears"
        width: page.width
        text: qsTr("Years old")
        value: page.years
        from: 0
        to: 17
        lessName: qsTr("A year younger")
        moreName: qsTr("A year older")
        onChanged: value => page.years = value
    }

    SectionWords {
        width: page.width
        text: qsTr("Puts things in the mouth?")
    }

    ChipFlow {
        width: page.width

        Repeater {
            model: [qsTr("Don't know"), qsTr("Yes"), qsTr("No longer")]

            FilterChip {
                id: chip

                required property string modelData
                required property int index

                text: chip.modelData
                checked: page.mouths === chip.index
                onToggled: page.mouths = chip.index
            }
        }
    }

    PaperButton {
        objectName: "addChild"
        width: page.width
        text: qsTr("Add this child")
        onClicked: {
            if (page.answers.addChild(name.text, page.years, 0, page.mouths)) {
                name.text = ""
                page.years = 2
                page.mouths = 0
            }
        }
    }
}
