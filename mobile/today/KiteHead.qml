pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// What the kite said, above the offers: not asked, shown by the child, or guessed by the adult.
/// After three "not now" it stays away from here and waits in the corner.
Column {
    id: head

    required property string kite
    required property bool inCorner
    required property string name
    required property string note
    required property string guess
    required property string caution
    readonly property bool shown: head.kite.length > 0

    signal asked()

    spacing: Theme.chipGap

    KiteRow {
        objectName: "kiteRow"
        width: head.width
        visible: head.shown || !head.inCorner
        drawing: head.shown ? "kite-" + head.kite : ""
        text: head.shown ? head.name : Theme.largeText ? qsTr("Kite: not asked") : qsTr("Kite: not asked today")
        note: head.shown ? head.note : qsTr("One tap, or play without")
        onClicked: head.asked()
    }

    GuessNote {
        objectName: "guess"
        width: head.width
        visible: head.guess.length > 0
        text: qsTr("Your own guess: %1").arg(head.guess)
    }

    Words {
        objectName: "kiteCaution"
        width: head.width
        visible: head.caution.length > 0
        role: Theme.Reason
        text: head.caution
    }
}
