pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Own

/// How it is cleaned, how long it keeps, and what to look for.
Column {
    id: part

    required property OwnItemViewModel writing

    spacing: Theme.gap

    OwnChips {
        width: part.width
        label: qsTr("Washing")
        choice: part.writing.washing
    }

    OwnLineList {
        width: part.width
        visible: !part.writing.ours
        lines: part.writing.care
        label: qsTr("Care, line %1")
        addText: qsTr("Add a line of care")
    }

    SectionWords {
        width: part.width
        text: qsTr("How long it keeps; empty: no limit")
    }

    OwnNumberFields {
        width: part.width
        numbers: part.writing.keeping
    }

    OwnChips {
        width: part.width
        label: qsTr("In use")
        choice: part.writing.looking
    }

    PaperField {
        id: lookFor

        objectName: "lookFor"
        width: part.width
        label: qsTr("What to look for")
        maximumLength: 200
        onEdited: part.writing.lookFor = lookFor.text
        Component.onCompleted: lookFor.text = part.writing.lookFor
    }
}
