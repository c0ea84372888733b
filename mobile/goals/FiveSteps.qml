pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The five levels of a goal in words, the highest first, and which of them it stood at.
Column {
    id: steps

    required property list<string> labels
    required property list<string> levels
    property int stood: -1

    spacing: Theme.gap

    Repeater {
        model: steps.levels

        Column {
            id: step

            required property string modelData
            required property int index
            readonly property bool here: step.index === steps.stood

            width: steps.width
            spacing: Theme.smallGap

            Words {
                width: parent.width
                role: step.here ? Theme.Strong : Theme.Caption
                soft: !step.here
                text: steps.labels[step.index]
            }

            Words {
                width: parent.width
                text: step.modelData
            }
        }
    }
}
