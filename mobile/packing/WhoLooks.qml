pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Whose eyes look a special box over: where one phone goes from hand to hand, the second person
/// writes their name first.
Card {
    id: card

    property string name: ""

    signal named(string name)

    spacing: Theme.chipGap

    Words {
        width: parent.width
        role: Theme.Row
        text: qsTr("This box is special. Somebody who did not pack a thing looks it over.")
    }

    PaperField {
        id: field

        objectName: "looker"
        width: parent.width
        label: qsTr("Who looks now")
        maximumLength: 40
        text: card.name
        onAccepted: card.named(field.text)
    }

    PaperButton {
        width: parent.width
        visible: field.text.trim().length > 0 && field.text.trim() !== card.name
        text: qsTr("That is me")
        onClicked: card.named(field.text)
    }
}
