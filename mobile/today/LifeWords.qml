pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Life words that narrow today's offers. They combine, and are forgotten tomorrow.
ChipFlow {
    id: line

    required property list<string> names
    required property list<string> on

    signal toggled(string name)

    function wordFor(name: string): string {
        switch (name) {
        case "no-table": return qsTr("No table")
        case "no-mess": return qsTr("No mess")
        case "quiet": return qsTr("Quiet")
        case "tired": return qsTr("Tired")
        case "one-hand": return qsTr("One hand")
        case "away": return qsTr("Away from home")
        default: return qsTr("Someone is ill")
        }
    }

    Repeater {
        model: line.names

        FilterChip {
            id: chip

            required property string modelData

            objectName: "filter-" + chip.modelData
            text: line.wordFor(chip.modelData)
            picked: line.on.includes(chip.modelData)
            onClicked: line.toggled(chip.modelData)
        }
    }
}
