pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// One thing of one box: how many, swapped or left out, and why it differs from the design.
Card {
    id: row

    property string name: ""
    property string drawing: ""
    property int pieces: 0
    property string stateWords: ""
    property bool differs: false
    property string reason: ""
    property string reasonWords: ""
    property string swapName: ""
    property bool isSwapped: false
    property list<string> reasonIds: []
    property list<string> reasonNames: []

    signal piecesWanted(int pieces)
    signal outWanted()
    signal backWanted()
    signal swapWanted()
    signal reasonChosen(string reason)
    signal wordsWritten(string words)

    spacing: Theme.chipGap

    Stepper {
        width: parent.width
        visible: row.pieces > 0
        text: row.name
        note: row.stateWords
        drawing: row.drawing
        value: row.pieces
        valueText: Numerals.of(value)
        from: 1
        to: 1000
        lessName: qsTr("One less: %1").arg(row.name)
        moreName: qsTr("One more: %1").arg(row.name)
        onChanged: value => row.piecesWanted(value)
    }

    PicturedWords {
        visible: row.pieces === 0
        drawing: row.drawing
        text: row.name
        note: row.stateWords
    }

    // Longer than any chip may be.
    StitchedLink {
        width: parent.width
        visible: row.swapName.length > 0 && !row.isSwapped
        text: qsTr("Put in instead: %1").arg(row.swapName)
        accessibleName: row.name + ": " + text
        onClicked: row.swapWanted()
    }

    ChipFlow {
        width: parent.width

        FilterChip {
            acts: true
            visible: row.pieces > 0
            text: qsTr("Leave out")
            accessibleName: row.name + ": " + text
            onClicked: row.outWanted()
        }

        FilterChip {
            acts: true
            visible: row.differs
            text: qsTr("As designed")
            accessibleName: row.name + ": " + text
            onClicked: row.backWanted()
        }
    }

    Words {
        width: parent.width
        visible: row.differs
        role: Theme.Reason
        text: row.reason.length > 0 ? qsTr("Why it differs") : qsTr("Why does it differ?")
    }

    ChipFlow {
        width: parent.width
        visible: row.differs

        Repeater {
            model: row.reasonIds

            FilterChip {
                required property string modelData
                required property int index

                picked: modelData === row.reason
                text: row.reasonNames[index] ?? ""
                accessibleName: qsTr("%1, why: %2").arg(row.name).arg(text)
                onClicked: row.reasonChosen(modelData)
            }
        }
    }

    PaperField {
        id: words

        width: parent.width
        visible: row.differs && row.reason.length > 0
        label: qsTr("In your own words, if you like")
        maximumLength: 80
        onEdited: row.wordsWritten(words.text)
        Component.onCompleted: words.text = row.reasonWords
    }
}
