pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// Nothing can be done until this is put right: one plain sentence, and a way to try again.
Sheet {
    id: screen

    required property Household household

    ScreenTitle {
        width: screen.contentWidth
        text: qsTr("Lidlark cannot go on yet")
    }

    Words {
        objectName: "problem"
        width: screen.contentWidth
        role: Theme.Step
        text: screen.household.problem
    }

    foot: ActionFoot {
        text: qsTr("Try again")
        onClicked: screen.household.openAgain()
    }
}
