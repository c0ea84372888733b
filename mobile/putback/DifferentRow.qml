pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// One item of which something is different: the five words, and two quieter things that may be said.
Column {
    id: row

    property string drawing: ""
    property string name: ""
    property string note: ""
    property list<string> words
    property int currentWord: -1
    property string countQuestion: ""
    property int countTo: 0
    property int currentCount: 0
    property bool canStandOpen: false
    property bool leftOpen: false
    property bool mouthed: false

    signal wordChosen(int index)
    signal countChosen(int count)
    signal openSaid()
    signal mouthSaid()

    spacing: Theme.smallGap

    ExceptionRow {
        width: row.width
        drawing: row.drawing
        name: row.name
        note: row.note
        words: row.words
        currentWord: row.currentWord
        countQuestion: row.countQuestion
        countTo: row.countTo
        numbers: Array.from({ length: row.countTo }, (_, place) => Numerals.of(place + 1))
        currentCount: row.currentCount
        onWordChosen: index => row.wordChosen(index)
        onCountChosen: count => row.countChosen(count)
    }

    Flow {
        x: Theme.smallGap
        width: row.width - 2 * Theme.smallGap
        spacing: Theme.sectionGap

        StitchedLink {
            objectName: "leftOpen"
            width: Math.min(implicitWidth, parent.width)
            visible: row.canStandOpen && !row.leftOpen
            accessibleName: row.name + ": " + text
            text: qsTr("It was left open")
            onClicked: row.openSaid()
        }

        StitchedLink {
            objectName: "mouthed"
            width: Math.min(implicitWidth, parent.width)
            visible: !row.mouthed
            accessibleName: row.name + ": " + text
            text: qsTr("It was in a mouth")
            onClicked: row.mouthSaid()
        }
    }

    Words {
        x: Theme.smallGap
        width: row.width - 2 * Theme.smallGap
        role: Theme.Reason
        soft: true
        visible: row.leftOpen
        text: qsTr("Left open: noted.")
    }

    Words {
        x: Theme.smallGap
        width: row.width - 2 * Theme.smallGap
        role: Theme.Reason
        soft: true
        visible: row.mouthed
        text: SafetyWords.of(QT_TRANSLATE_NOOP("SafetyWords", "In a mouth: wash it before the next play."))
    }
}
