pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Own

/// Whose it is, how many belong to a box, and how they come back.
Column {
    id: part

    required property OwnItemViewModel writing

    spacing: Theme.gap

    OwnChips {
        width: part.width
        label: qsTr("Where it lies")
        choice: part.writing.place
    }

    Stepper {
        width: part.width
        visible: !part.writing.lent
        text: qsTr("Pieces in a standard box")
        value: part.writing.lidCount
        valueText: Numerals.of(value)
        lessName: qsTr("One piece less")
        moreName: qsTr("One piece more")
        onChanged: value => part.writing.lidCount = value
    }

    OwnChips {
        width: part.width
        label: qsTr("After play")
        choice: part.writing.comesBack
    }

    SectionWords {
        width: part.width
        visible: !part.writing.lent
        text: qsTr("About how many go, in how many days")
    }

    OwnNumberFields {
        width: part.width
        visible: !part.writing.lent
        numbers: part.writing.use
    }
}
