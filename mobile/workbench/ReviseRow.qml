pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// One thing of the lid list while it is changed: how many, left out or not, and what could stand
/// in for it.
Card {
    id: row

    property string name: ""
    property string drawing: ""
    property string note: ""
    property int pieces: 0
    property bool out: false
    property string swapName: ""

    signal piecesWanted(int pieces)
    signal outWanted(bool out)
    signal swapWanted()

    spacing: Theme.chipGap

    Stepper {
        width: parent.width
        visible: !row.out
        text: row.name
        note: row.note
        drawing: row.drawing
        value: row.pieces
        valueText: Numerals.of(value)
        from: 1
        to: 99
        lessName: qsTr("One less: %1").arg(row.name)
        moreName: qsTr("One more: %1").arg(row.name)
        onChanged: value => row.piecesWanted(value)
    }

    PicturedWords {
        visible: row.out
        drawing: row.drawing
        text: row.name
        note: row.note
    }

    ChipFlow {
        FilterChip {
            objectName: "leaveOut"
            picked: row.out
            text: qsTr("Leave out")
            accessibleName: row.name + ": " + text
            onClicked: row.outWanted(!row.out)
        }

        FilterChip {
            objectName: "swap"
            visible: row.swapName.length > 0
            acts: true
            text: qsTr("Put in instead: %1").arg(row.swapName)
            onClicked: row.swapWanted()
        }
    }
}
