pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// One thing to count with the child: each touch on the picture counts one more; or an adult says it
/// with one key.
Column {
    id: one

    property string name: ""
    property string note: ""
    property string drawing: ""
    property string place: ""
    /// What to look for, with it in hand.
    property string look: ""
    property int counted: 0
    property int expected: 0
    /// Places that are drawn: what should be here, or what is, but never a heap too small to see.
    readonly property int drawn: Math.min(16, Math.max(1, one.expected, one.counted))

    signal touched()
    signal named(int pieces)

    spacing: Theme.gap

    Words {
        width: one.width
        role: Theme.Heading
        heading: true
        text: one.name
    }

    EndedLine {
        width: one.width
        text: one.note
        endText: one.place
    }

    Words {
        width: one.width
        visible: one.look.length > 0
        role: Theme.Body
        text: one.look
    }

    HomeWell {
        objectName: "countOne"
        width: one.width
        drawing: one.drawing
        home: one.counted
        expected: one.drawn
        text: Numerals.of(one.counted)
        accessibleName: qsTr("One more: %1, %2 counted").arg(one.name).arg(Numerals.of(one.counted))
        onClicked: one.touched()
    }

    Pair {
        columns: one.expected > 0 ? 2 : 1

        PaperButton {
            visible: one.expected > 0
            text: one.expected === 1 ? qsTr("It is here") : qsTr("All %1 here").arg(Numerals.of(one.expected))
            onClicked: one.named(one.expected)
        }

        PaperButton {
            text: qsTr("None here")
            onClicked: one.named(0)
        }
    }
}
