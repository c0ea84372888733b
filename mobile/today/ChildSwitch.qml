pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// Whose box is on the table, where one phone has several: one tap, and family and all change.
ChipFlow {
    id: line

    required property Household household

    signal chosen(string family, string alias)

    Repeater {
        model: line.household.phoneChildren

        FilterChip {
            id: chip

            required property string childName
            required property string label
            required property string family
            required picked

            objectName: "child-" + chip.label
            text: chip.label
            accessibleName: qsTr("%1's box").arg(chip.label)
            onClicked: {
                if (!chip.picked)
                    line.chosen(chip.family, chip.childName)
            }
        }
    }
}
