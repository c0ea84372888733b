pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// One phone in two hands: whoever holds it says so with one tap, and reads and writes as themselves.
Column {
    id: who

    required property Household household

    spacing: Theme.gap
    visible: who.household.writers.length > 1

    SectionWords {
        width: who.width
        text: qsTr("Who writes now")
    }

    Repeater {
        model: who.household.writers

        ChoiceRow {
            id: writer

            required property string modelData

            objectName: "writer-" + writer.modelData
            width: who.width
            exclusive: true
            text: writer.modelData
            checked: who.household.person === writer.modelData
            onToggled: who.household.person = writer.modelData
        }
    }
}
