pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// What has to be said before the offers; mostly nothing.
Column {
    id: notes

    required property string problem
    required property bool floorNote
    required property string boxPlace
    required property bool unchecked

    signal floorCheckWanted()
    signal boxWanted()
    signal uncheckedRead()
    signal tryAgain()

    spacing: Theme.chipGap
    visible: notes.problem.length > 0 || notes.floorNote || notes.boxPlace.length > 0 || notes.unchecked

    ProblemNote {
        width: notes.width
        visible: notes.problem.length > 0
        text: notes.problem
        actionText: qsTr("Try again")
        onAction: notes.tryAgain()
    }

    CautionButton {
        objectName: "floorNote"
        width: notes.width
        visible: notes.floorNote
        text: qsTr("A small piece may lie on the floor. Look now.")
        onClicked: notes.floorCheckWanted()
    }

    LinkRow {
        objectName: "boxElsewhere"
        width: notes.width
        visible: notes.boxPlace.length > 0
        sign: "sign-box"
        text: qsTr("The box is %1").arg(notes.boxPlace)
        note: qsTr("These need nothing from it. Tap when it is here.")
        onClicked: notes.boxWanted()
    }

    LinkRow {
        objectName: "unchecked"
        width: notes.width
        visible: notes.unchecked
        text: qsTr("Written with care, not yet checked by a clinician")
        note: qsTr("Follow your local rules and your therapist. Tap to put this away for today.")
        onClicked: notes.uncheckedRead()
    }
}
