pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Own

/// How long it takes, from which age on, and how close an adult is.
Column {
    id: part

    required property OwnWritingViewModel writing

    spacing: Theme.gap

    Stepper {
        width: part.width
        text: qsTr("Minutes to get it out")
        value: part.writing.minutesOut
        valueText: Numerals.of(value)
        to: 2
        lessName: qsTr("One minute less to get it out")
        moreName: qsTr("One minute more to get it out")
        onChanged: value => part.writing.minutesOut = value
    }

    Stepper {
        width: part.width
        text: qsTr("Minutes of play")
        value: part.writing.minutesPlay
        valueText: Numerals.of(value)
        from: 3
        to: 8
        lessName: qsTr("One minute of play less")
        moreName: qsTr("One minute of play more")
        onChanged: value => part.writing.minutesPlay = value
    }

    Stepper {
        width: part.width
        text: qsTr("Minutes to put it back")
        value: part.writing.minutesBack
        valueText: Numerals.of(value)
        to: 2
        lessName: qsTr("One minute less to put it back")
        moreName: qsTr("One minute more to put it back")
        onChanged: value => part.writing.minutesBack = value
    }

    SectionWords {
        width: part.width
        text: qsTr("The earliest age; what it is played with sets the lowest")
    }

    LinkPair {
        width: part.width
        text: qsTr("Half a year earlier")
        otherText: qsTr("Half a year later")
        onClicked: part.writing.halfYears = part.writing.halfYears - 1
        onOtherClicked: part.writing.halfYears = part.writing.halfYears + 1
    }

    Words {
        objectName: "ownAge"
        width: part.width
        role: Theme.Row
        text: part.writing.ageWords
    }

    PaperField {
        id: reason

        objectName: "ownFloorReason"
        width: part.width
        label: qsTr("Why not earlier")
        onEdited: part.writing.floorReason = reason.text
        Component.onCompleted: reason.text = part.writing.floorReason
    }

    OwnChips {
        width: part.width
        label: qsTr("How close an adult is")
        choice: part.writing.closeness
    }
}
