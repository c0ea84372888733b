pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// In which month the birthday is: it makes the age exact enough, and no day is asked.
Column {
    id: months

    required property int month
    readonly property list<string> names: [qsTr("January"), qsTr("February"), qsTr("March"), qsTr("April"), qsTr("May"),
        qsTr("June"), qsTr("July"), qsTr("August"), qsTr("September"), qsTr("October"), qsTr("November"), qsTr("December")]

    signal said(int month)

    spacing: Theme.smallGap

    Words {
        width: months.width
        role: Theme.Label
        text: qsTr("Birthday in")
    }

    ChipFlow {
        width: months.width

        Repeater {
            model: months.names

            FilterChip {
                id: chip

                required property string modelData
                required property int index

                objectName: "month-" + (chip.index + 1)
                text: chip.modelData
                picked: months.month === chip.index + 1
                onClicked: months.said(chip.picked ? 0 : chip.index + 1)
            }
        }
    }
}
