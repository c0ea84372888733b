pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The tick of one line: in, or not; for blades, which hand is written on them, read off the thing.
Column {
    id: tick

    /// What is ticked, for who cannot see it: "K4, scissors".
    property string what: ""
    property string hand: ""
    property bool isIn: false
    /// Something lies in it that is wrong: it comes out first.
    property bool wrong: false

    signal packed(string hand)
    signal unpacked()

    spacing: Theme.chipGap

    Words {
        width: tick.width
        visible: tick.hand.length > 0 && !tick.isIn && !tick.wrong
        role: Theme.Reason
        text: qsTr("Which hand is on them?")
    }

    Pair {
        width: tick.width
        visible: tick.hand.length > 0 && !tick.isIn && !tick.wrong

        PaperButton {
            text: qsTr("Left")
            accessibleName: tick.what + ": " + text
            onClicked: tick.packed("left")
        }

        PaperButton {
            text: qsTr("Right")
            accessibleName: tick.what + ": " + text
            onClicked: tick.packed("right")
        }
    }

    PaperButton {
        width: tick.width
        visible: tick.hand.length === 0 && !tick.isIn && !tick.wrong
        patch: true
        text: qsTr("It is in")
        accessibleName: tick.what + ": " + text
        onClicked: tick.packed("")
    }

    PaperButton {
        width: tick.width
        visible: tick.isIn || tick.wrong
        sign: tick.isIn && !tick.wrong ? "sign-count" : ""
        text: tick.wrong ? qsTr("It is out again") : qsTr("In. Take it out again")
        accessibleName: tick.what + ": " + text
        onClicked: tick.unpacked()
    }
}
