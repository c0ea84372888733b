pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Welcome

/// One more child of the home: name, age, and whether things still go into the mouth.
Column {
    id: form

    required property WelcomeViewModel answers
    readonly property int oldest: 11
    property int years: -1
    property int mouths: 0

    function add() {
        if (!form.answers.addChild(name.text, form.years, form.mouths))
            return
        name.text = ""
        form.years = -1
        form.mouths = 0
    }

    function takeIn() {
        if (name.text.trim().length > 0)
            form.add()
    }

    spacing: Theme.gap

    PaperField {
        id: name

        objectName: "otherName"
        width: form.width
        label: qsTr("Another child: first name or a letter")
        maximumLength: 20
    }

    AgeKeys {
        objectName: "otherAge"
        width: form.width
        visible: name.text.length > 0
        text: qsTr("How many years old?")
        years: form.years
        oldest: form.oldest
        onSaid: years => form.years = years
    }

    Words {
        width: form.width
        visible: name.text.length > 0
        role: Theme.Label
        text: qsTr("Still puts things in the mouth?")
    }

    ChipFlow {
        width: form.width
        visible: name.text.length > 0

        Repeater {
            model: [qsTr("Don't know"), qsTr("Yes"), qsTr("No longer")]

            FilterChip {
                id: chip

                required property string modelData
                required property int index

                objectName: "mouths-" + chip.index
                text: chip.modelData
                picked: form.mouths === chip.index
                onClicked: form.mouths = chip.index
            }
        }
    }

    PaperButton {
        objectName: "addChild"
        width: form.width
        visible: name.text.length > 0
        text: qsTr("Add %1").arg(name.text)
        onClicked: form.add()
    }
}
