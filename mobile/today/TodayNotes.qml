pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// What has to be said before the offers; mostly nothing.
Column {
    id: notes

    required property string problem
    required property string catalogueNote
    required property bool floorNote
    required property bool mustLeave
    required property string boxPlace
    required property string boxPlaceSaidBy

    signal floorCheckWanted()
    signal takeOutWanted()
    signal boxWanted()
    signal tryAgain()

    spacing: Theme.gap
    visible: notes.problem.length > 0 || notes.catalogueNote.length > 0 || notes.floorNote || notes.mustLeave || notes.boxPlace.length > 0

    ProblemNote {
        width: notes.width
        text: notes.problem
        actionText: qsTr("Try again")
        onAction: notes.tryAgain()
    }

    ProblemNote {
        objectName: "catalogueNote"
        width: notes.width
        text: notes.catalogueNote
    }

    CautionButton {
        objectName: "floorNote"
        width: notes.width
        visible: notes.floorNote
        text: SafetyWords.of(QT_TRANSLATE_NOOP("SafetyWords", "A small piece may lie on the floor. Look now."))
        onClicked: notes.floorCheckWanted()
    }

    CautionButton {
        objectName: "mustLeave"
        width: notes.width
        visible: notes.mustLeave
        text: SafetyWords.of(QT_TRANSLATE_NOOP("SafetyWords", "Some things must leave the house. See which."))
        onClicked: notes.takeOutWanted()
    }

    LinkRow {
        objectName: "boxElsewhere"
        width: notes.width
        visible: notes.boxPlace.length > 0
        sign: "sign-box"
        text: qsTr("Box: %1").arg(notes.boxPlace)
        note: qsTr("Said by %1. Tap when it is here.").arg(notes.boxPlaceSaidBy)
        onClicked: notes.boxWanted()
    }
}
