pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// For the adult, below the offers: what a kite may mean, and what can be done about it. The kite
/// of a child who would rather not be asked waits here in the corner, to be found.
Column {
    id: lines

    required property bool shown
    required property bool inCorner
    required property string advice

    signal asked()
    signal guessWanted()
    signal notMe()
    signal turnedOff()

    spacing: Theme.chipGap

    Words {
        objectName: "kiteAdvice"
        width: lines.width
        visible: lines.advice.length > 0
        role: Theme.Reason
        soft: true
        text: lines.advice
    }

    Words {
        objectName: "kiteHonesty"
        width: lines.width
        visible: lines.shown
        role: Theme.Reason
        soft: true
        text: qsTr("Often suits. You know best what it did.")
    }

    StitchedLink {
        objectName: "notMe"
        anchors.left: parent.left
        visible: lines.shown
        text: qsTr("That wasn't me")
        onClicked: lines.notMe()
    }

    LinkPair {
        objectName: "kiteLinks"
        width: lines.width
        visible: !lines.shown
        text: qsTr("My own guess")
        otherText: qsTr("Kite off")
        onClicked: lines.guessWanted()
        onOtherClicked: lines.turnedOff()
    }

    SignButton {
        objectName: "kiteCorner"
        anchors.right: parent.right
        visible: lines.inCorner && !lines.shown
        sign: "sign-today"
        accessibleName: qsTr("Show the kite")
        onClicked: lines.asked()
    }
}
