pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// A family's own moment, in its own words; a way to keep it shows when it differs from what is kept.
Column {
    id: own

    required property Reminders reminders

    spacing: Theme.smallGap

    PaperField {
        id: field

        objectName: "ownLine"
        width: own.width
        label: qsTr("When?")
        placeholder: qsTr("After the ferry")
        text: own.reminders.ownLine
        problem: own.reminders.problem
        maximumLength: 40
        onAccepted: own.reminders.keepOwnLine(field.text)
    }

    StitchedLink {
        anchors.left: parent.left
        visible: field.text !== own.reminders.ownLine
        text: qsTr("Keep these words")
        onClicked: own.reminders.keepOwnLine(field.text)
    }
}
