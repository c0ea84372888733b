pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// Whose box is on the table, where one phone has several: one tap.
ChipFlow {
    id: line

    required property Household household

    signal chosen(string alias)

    Repeater {
        model: line.household.children

        FilterChip {
            id: chip

            required property string modelData

            objectName: "child-" + chip.modelData
            text: chip.modelData
            picked: chip.modelData === line.household.child
            accessibleName: qsTr("%1's box").arg(chip.modelData)
            onClicked: line.chosen(chip.modelData)
        }
    }
}
