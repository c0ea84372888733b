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

    signal done()
    signal kiteWanted()

    ScreenTitle {
        width: screen.contentWidth
        text: qsTr("All home")
        under: qsTr("What did you notice? Only if you like.")
    }

    Repeater {
        model: [["asked-again", qsTr("Asked for it again")], ["needed-help", qsTr("Needed help")],
            ["found-own-way", qsTr("Found own way")]]

        ChoiceRow {
            id: phrase

            required property list<string> modelData

            objectName: "phrase-" + phrase.modelData[0]
            width: screen.contentWidth
            text: phrase.modelData[1]
            enabled: !phrase.checked
            onToggled: {
                if (phrase.checked)
                    screen.playInHand.notice(phrase.modelData[0])
            }
        }
    }

    LinkRow {
        objectName: "kiteAfter"
        width: screen.contentWidth
        visible: screen.askKite
        drawing: "kite-steady"
        text: qsTr("What is the kite doing now?")
        note: qsTr("For %1 to show, once, or not at all.").arg(screen.household.child)
        onClicked: screen.kiteWanted()
    }

    foot: ActionFoot {
        text: qsTr("Done")
        onClicked: screen.done()
    }
}
