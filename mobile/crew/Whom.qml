pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// Who is to be let in, in words that say what such a one can see.
Column {
    id: whom

    required property LettingIn letting

    /// Something more is asked, and should be seen.
    signal shown(item: Item)

    spacing: Theme.gap

    Words {
        width: whom.width
        text: qsTr("Who is it? This decides what they can see. Whoever is let in writes under their own name.")
    }

    Repeater {
        model: whom.letting.parts

        ChoiceRow {
            id: part

            required property string modelData

            objectName: "part-" + part.modelData
            width: whom.width
            exclusive: true
            text: whom.letting.nameOf(part.modelData)
            note: whom.letting.seenBy(part.modelData)
            checked: whom.letting.part === part.modelData
            onToggled: {
                whom.letting.part = part.modelData
                if (days.visible)
                    whom.shown(days)
            }
        }
    }

    Stepper {
        id: days

        objectName: "guestDays"
        width: whom.width
        visible: whom.letting.part === "guest"
        text: qsTr("For how many days")
        note: qsTr("Until %1, that day too").arg(whom.letting.lastDay)
        value: whom.letting.days
        from: 1
        to: 7
        valueText: Numerals.of(value)
        lessName: qsTr("A day less")
        moreName: qsTr("A day more")
        onChanged: value => whom.letting.days = value
    }
}
