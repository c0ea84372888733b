pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One of the five levels to write on, and whether it is how it is today.
Column {
    id: level

    property string label: ""
    property string words: ""
    property string finding: ""
    property bool today: false

    signal written(string words)
    signal todayChosen()

    spacing: Theme.smallGap

    PaperArea {
        id: area

        width: level.width
        lines: 2
        label: level.label
        problem: level.finding
        onEdited: level.written(area.text)
        Component.onCompleted: area.text = level.words
    }

    FilterChip {
        text: qsTr("As it is today")
        accessibleName: qsTr("As it is today: %1").arg(level.label)
        picked: level.today
        onClicked: level.todayChosen()
    }
}
