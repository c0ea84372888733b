pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// How a child reaches the kite: its words aloud, what counts as a touch, on paper.
Column {
    id: kite

    required property Appearance appearance
    required property Voice voice
    required property string paperNote
    required property string childName
    readonly property int touchStepMs: 100

    signal paperKiteWanted()
    signal forgetWanted()
    /// There is news, which may stand below the fold.
    signal noted(Item note)

    onPaperNoteChanged: laidOut.restart()
    spacing: Theme.gap

    ChoiceRow {
        objectName: "kiteAloud"
        width: kite.width
        visible: kite.voice.available
        text: qsTr("Say the kite's words aloud")
        note: qsTr("The question and the thanks. A long touch on a picture says what it is.")
        checked: kite.appearance.kiteAloud
        onToggled: kite.appearance.kiteAloud = !kite.appearance.kiteAloud
    }

    Stepper {
        objectName: "minimumTouch"
        width: kite.width
        text: qsTr("How long a touch must last")
        value: kite.appearance.minimumTouchMs / kite.touchStepMs
        to: 3
        valueText: value > 0 ? qsTr("%1 s").arg((value / 10).toLocaleString(Qt.locale(), "f", 1)) : qsTr("any")
        lessName: qsTr("Shorter touch")
        moreName: qsTr("Longer touch")
        onChanged: steps => kite.appearance.minimumTouchMs = steps * kite.touchStepMs
    }

    Words {
        width: kite.width
        role: Theme.Reason
        soft: true
        text: qsTr("Shorter ones do not count on the kite's screen.")
    }

    LinkRow {
        objectName: "paperKite"
        width: kite.width
        text: qsTr("The kite on paper")
        note: qsTr("A card to print, for a clothes peg. Saved among your documents.")
        onClicked: kite.paperKiteWanted()
    }

    ProblemNote {
        id: note

        objectName: "paperNote"
        width: kite.width
        text: kite.paperNote
    }

    // A column gives a note its place only with the next frame.
    Timer {
        id: laidOut

        interval: 100
        onTriggered: kite.noted(note)
    }

    ForgetKites {
        width: kite.width
        childName: kite.childName
        onWanted: kite.forgetWanted()
    }
}
