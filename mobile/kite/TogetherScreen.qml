pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// The adult first: one card after a whirling or can't-tell kite (checkin.md 5). Never for the child.
Sheet {
    id: screen

    signal done()

    readonly property list<string> heads: [qsTr("Me"), qsTr("The room"), qsTr("Us"), qsTr("A small skill"), qsTr("If it grows")]
    readonly property list<string> lines: [
        qsTr("Your own breath out, slowly. Shoulders down. Sit lower than your child."),
        qsTr("One less noise. One less thing on the table. Lid on what you are not using."),
        qsTr("Say what you see: \"Your kite is really tugging.\" Then wait."),
        qsTr("Slow pull together. Or four kite breaths: string out, string in."),
        qsTr("Stop the game. Stay near. Games come back later.")
    ]

    ScreenTitle {
        width: screen.contentWidth
        text: qsTr("For you, first")
        under: qsTr("Put the phone face down when you have read it.")
    }

    Repeater {
        model: screen.heads

        Card {
            id: card

            required property string modelData
            required property int index

            width: screen.contentWidth

            Words {
                width: parent.width
                role: Theme.Label
                text: card.modelData
            }

            Words {
                width: parent.width
                role: Theme.Body
                text: screen.lines[card.index]
            }
        }
    }

    foot: ActionFoot {
        text: qsTr("Choose something")
        onClicked: screen.done()
    }
}
