pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Life words that narrow today's offers. They combine, and are forgotten tomorrow.
ChipFlow {
    id: line

    required property list<string> on

    signal toggled(string name)

    readonly property list<string> names: ["no-table", "no-mess", "quiet", "tired", "one-hand", "away", "ill"]
    readonly property list<string> words: [qsTr("No table"), qsTr("No mess"), qsTr("Quiet"), qsTr("Tired"),
        qsTr("One hand"), qsTr("Away from home"), qsTr("Someone is ill")]

    Repeater {
        model: line.names

        FilterChip {
            id: chip

            required property string modelData
            required property int index

            objectName: "filter-" + chip.modelData
            text: line.words[chip.index]
            checked: line.on.includes(chip.modelData)
            onToggled: line.toggled(chip.modelData)
        }
    }
}
