pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design
import Lidlark.Own

/// What to mind: what the things bring stays, more can be added; what to watch for, when to stop.
Column {
    id: part

    required property OwnWritingViewModel writing

    spacing: Theme.gap

    SectionWords {
        width: part.width
        visible: part.writing.givenCautions.length > 0
        text: qsTr("From what it is played with; these stay")
    }

    Repeater {
        model: part.writing.givenCautions

        Words {
            required property string modelData

            width: part.width
            text: modelData
        }
    }

    OwnChips {
        width: part.width
        label: qsTr("More that the play itself brings")
        choice: part.writing.moreCautions
    }

    OwnLineList {
        width: part.width
        lines: part.writing.watchFor
        label: qsTr("What to watch for, line %1")
        addText: qsTr("Add what to watch for")
    }

    OwnLineList {
        width: part.width
        lines: part.writing.stopWhen
        label: qsTr("When to stop, line %1")
        addText: qsTr("Add when to stop")
    }
}
