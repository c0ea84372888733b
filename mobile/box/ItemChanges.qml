pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Box
import Lidlark.Design

/// Something is gone, or back again: opened by a link, noted with a word, a number and a day.
Column {
    id: changes

    required property ItemViewModel item
    property bool goneOpen: false
    property int word: -1
    property int pieces: 1
    property int daysAgo: 0
    readonly property int driedOut: 3
    readonly property list<string> days: [qsTr("today"), qsTr("yesterday")]

    signal noted()
    signal driedOutWanted()

    function choose(word: int) {
        if (word === changes.driedOut && changes.item.rescue.length > 0)
            changes.driedOutWanted()
        else
            changes.word = word
    }

    function note() {
        if (!changes.item.noteGone(changes.word, Math.min(changes.pieces, changes.item.most), changes.daysAgo))
            return
        changes.goneOpen = false
        changes.word = -1
        changes.pieces = 1
        changes.daysAgo = 0
        changes.noted()
    }

    spacing: Theme.gap

    Card {
        width: changes.width
        visible: changes.item.out > 0
        spacing: Theme.gap

        Words {
            width: parent.width
            text: qsTr("Still in use: how many are back in the box?")
        }

        Flow {
            width: parent.width
            spacing: Theme.cardPadding

            Repeater {
                model: changes.item.out

                NumberKey {
                    id: key

                    required property int index

                    text: Numerals.of(key.index + 1)
                    accessibleName: qsTr("%1 back in the box").arg(Numerals.of(key.index + 1))
                    onClicked: changes.item.noteBackAgain(key.index + 1)
                }
            }
        }
    }

    StitchedLink {
        objectName: "gone"
        anchors.left: parent.left
        width: Math.min(implicitWidth, parent.width)
        visible: !changes.goneOpen && changes.item.most > 0
        text: qsTr("Something is gone")
        onClicked: changes.goneOpen = true
    }

    ExceptionRow {
        objectName: "goneCard"
        width: changes.width
        visible: changes.goneOpen && changes.item.most > 0
        drawing: changes.item.drawing
        name: qsTr("What became of it?")
        words: changes.item.exceptionWords
        currentWord: changes.word
        countQuestion: qsTr("How many?")
        countTo: changes.item.most > 1 ? changes.item.most : 0
        currentCount: changes.pieces
        onWordChosen: index => changes.choose(index)
        onCountChosen: count => changes.pieces = count
    }

    ChipFlow {
        width: changes.width
        visible: changes.goneOpen && changes.word >= 0

        Repeater {
            model: changes.days

            FilterChip {
                id: day

                required property string modelData
                required property int index

                text: day.modelData
                picked: changes.daysAgo === day.index
                onClicked: changes.daysAgo = day.index
            }
        }
    }

    PaperButton {
        objectName: "noteGone"
        width: changes.width
        visible: changes.goneOpen
        patch: true
        notNowReason: changes.word < 0 ? qsTr("Choose a word first") : ""
        text: qsTr("Note it")
        onClicked: changes.note()
    }
}
