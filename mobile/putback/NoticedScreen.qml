pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// After the yes: three everyday phrases, and the kite once more where there was one before.
/// All of it can be left alone.
Sheet {
    id: screen

    required property Household household
    required property PlayInHand playInHand
    required property bool askKite
    readonly property list<string> phrases: ["asked-again", "needed-help", "found-own-way"]
    readonly property list<string> phraseWords: [qsTr("Asked for it again"), qsTr("Needed help"), qsTr("Found own way")]

    signal done()
    signal kiteWanted()

    ScreenTitle {
        width: screen.contentWidth
        text: qsTr("Put back")
        under: qsTr("What did you notice? Only if you like.")
    }

    Repeater {
        model: screen.phrases

        ChoiceRow {
            id: phrase

            required property string modelData
            required property int index

            objectName: "phrase-" + phrase.modelData
            width: screen.contentWidth
            text: screen.phraseWords[phrase.index]
            enabled: !phrase.checked
            onToggled: {
                if (phrase.checked)
                    screen.playInHand.notice(phrase.modelData)
            }
        }
    }

    LinkRow {
        objectName: "kiteAfter"
        width: screen.contentWidth
        visible: screen.askKite
        sign: "sign-today"
        text: qsTr("What is the kite doing now?")
        note: qsTr("For %1 to show, once, or not at all.").arg(screen.household.child)
        onClicked: screen.kiteWanted()
    }

    foot: ActionFoot {
        text: qsTr("Done")
        onClicked: screen.done()
    }
}
