pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Crew
import Lidlark.Design

/// The other phone has to say yes first. Nothing is to be done here.
Column {
    id: waiting

    required property JoiningIn joining

    spacing: Theme.sectionGap

    SameWords {
        width: waiting.width
        question: qsTr("The other phone asks whether both show these three words:")
        words: waiting.joining.sameWords
    }

    Words {
        width: waiting.width
        text: qsTr("When it has said yes, this phone goes on by itself. You can put it down meanwhile.")
    }

    StitchedLink {
        objectName: "giveUp"
        anchors.left: parent.left
        text: qsTr("Stop waiting")
        onClicked: waiting.joining.giveUp()
    }
}
