pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Which parts of the family's day a goal is about: it stands under the first of them, and the offers
/// go by all.
Column {
    id: choice

    required property list<string> areas
    required property list<string> chosen

    signal areaTapped(int area)

    spacing: Theme.chipGap

    SectionWords {
        width: choice.width
        text: qsTr("Which part of daily life is it about? The offers go by this.")
    }

    ChipFlow {
        width: choice.width

        Repeater {
            model: choice.areas

            FilterChip {
                id: chip

                required property string modelData
                required property int index

                text: chip.modelData
                picked: choice.chosen.includes(chip.modelData)
                onClicked: choice.areaTapped(chip.index)
            }
        }
    }
}
