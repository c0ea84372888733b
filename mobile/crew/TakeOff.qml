pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Takes the family on the table off the phone, after one question.
Column {
    id: takeOff

    required property string names
    property bool asked: false

    signal wanted()

    spacing: Theme.smallGap
    onNamesChanged: takeOff.asked = false

    LinkRow {
        objectName: "takeOff"
        width: takeOff.width
        visible: !takeOff.asked
        text: qsTr("Take off this phone: %1").arg(takeOff.names)
        note: qsTr("Box, plays and home sheet.")
        onClicked: takeOff.asked = true
    }

    Words {
        width: takeOff.width
        visible: takeOff.asked
        role: Theme.Label
        text: qsTr("%1: box, plays and home sheet leave this phone. Until Lidlark is closed they can be brought back.").arg(takeOff.names)
    }

    ChipFlow {
        width: takeOff.width
        visible: takeOff.asked

        FilterChip {
            acts: true
            text: qsTr("Take off")
            onClicked: {
                takeOff.asked = false
                takeOff.wanted()
            }
        }

        FilterChip {
            acts: true
            text: qsTr("Keep")
            onClicked: takeOff.asked = false
        }
    }
}
