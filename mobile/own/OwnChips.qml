pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Own

/// Words to choose from, under what they are about.
Column {
    id: chips

    required property string label
    required property OwnChoice choice

    spacing: Theme.chipGap

    SectionWords {
        width: chips.width
        text: chips.label
    }

    ChipFlow {
        width: chips.width

        Repeater {
            model: chips.choice.names

            FilterChip {
                id: chip

                required property string modelData
                required property int index

                text: chip.modelData
                picked: chips.choice.chosen[chip.index] ?? false
                onClicked: chips.choice.tap(chip.index)
            }
        }
    }
}
