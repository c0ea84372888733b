pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Own

/// Name, what the child hears, what the adult does first.
Column {
    id: part

    required property OwnWritingViewModel writing

    spacing: Theme.gap

    PaperField {
        id: name

        objectName: "ownName"
        width: part.width
        label: qsTr("Its name")
        maximumLength: 60
        onEdited: part.writing.name = name.text
        Component.onCompleted: name.text = part.writing.name
    }

    PaperArea {
        id: invite

        objectName: "ownInvite"
        width: part.width
        lines: 1
        label: qsTr("What the child hears, in one line")
        placeholder: qsTr("Which bobbin rolls the longest road?")
        onEdited: part.writing.invite = invite.text
        Component.onCompleted: invite.text = part.writing.invite
    }

    PaperArea {
        id: adultLine

        objectName: "ownAdultLine"
        width: part.width
        lines: 2
        label: qsTr("What the adult does first")
        onEdited: part.writing.adultLine = adultLine.text
        Component.onCompleted: adultLine.text = part.writing.adultLine
    }
}
