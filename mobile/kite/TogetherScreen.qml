pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The adult first: after a whirling or can't-tell kite, one short card at a time (checkin.md 5).
/// Never for the child.
Sheet {
    id: screen

    property int card: 0
    readonly property list<string> heads: [qsTr("Me"), qsTr("The room"), qsTr("Us"), qsTr("A small skill"), qsTr("If it grows")]
    readonly property list<string> lines: [
        qsTr("Your own breath out, slowly. Shoulders down. Sit lower than your child."),
        qsTr("One less noise. One less thing on the table. Lid on what you are not using."),
        qsTr("Say what you see: \"Your kite is really tugging.\" Then wait."),
        qsTr("Slow pull together. Or four kite breaths: string out, string in."),
        qsTr("Stop the game. Stay near. Games come back later.")
    ]

    signal done()

    ScreenTitle {
        width: screen.contentWidth
        over: qsTr("For you, before you play")
        text: screen.heads[screen.card]
    }

    Card {
        width: screen.contentWidth

        Words {
            objectName: "togetherLine"
            width: parent.width
            role: Theme.Step
            text: screen.lines[screen.card]
        }
    }

    StepMarks {
        width: screen.contentWidth
        count: screen.heads.length
        current: screen.card
        text: qsTr("%1 of %2").arg(screen.card + 1).arg(screen.heads.length)
    }

    foot: ActionFoot {
        text: qsTr("Choose something")
        otherText: screen.card + 1 < screen.heads.length ? qsTr("And then?") : ""
        onClicked: screen.done()
        onOtherClicked: screen.card += 1
    }
}
