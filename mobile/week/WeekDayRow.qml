pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One day of the week: what is planned, a peg where it is kept, and once tapped the ways to change
/// it.
Column {
    id: day

    required property string dayWords
    required property string name
    required property string note
    required property string drawing
    required property bool kept
    required property bool free
    required property bool playable
    required property bool played
    required property bool opened

    signal tapped()
    signal keepWanted()
    signal freeWanted()
    signal giveBackWanted()
    signal anotherWanted()
    signal playWanted()

    spacing: Theme.smallGap

    ChoiceRow {
        objectName: "dayRow"
        width: day.width
        acts: true
        Accessible.description: day.opened ? qsTr("Its choices are below.") : ""
        drawing: Theme.largeText ? "" : day.drawing
        text: day.dayWords + (Theme.largeText ? "\n" : ": ") + day.name
        accessibleName: day.dayWords + ": " + day.name + sentence(note)
        note: day.kept && !day.played ? qsTr("Kept. %1").arg(day.note) : day.note
        pegged: day.kept
        onClicked: day.tapped()
    }

    ChipFlow {
        width: day.width
        visible: day.opened

        FilterChip {
            visible: day.playable
            acts: true
            text: qsTr("Play it now")
            onClicked: day.playWanted()
        }

        FilterChip {
            visible: !day.kept && day.drawing.length > 0
            acts: true
            text: qsTr("Keep it here")
            onClicked: day.keepWanted()
        }

        FilterChip {
            visible: !day.played
            acts: true
            text: qsTr("Another one")
            onClicked: day.anotherWanted()
        }

        FilterChip {
            visible: !day.free
            acts: true
            text: qsTr("Leave it free")
            onClicked: day.freeWanted()
        }

        FilterChip {
            visible: day.kept || day.free
            acts: true
            text: qsTr("Let the plan decide")
            onClicked: day.giveBackWanted()
        }
    }
}
