pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// Nothing can be done until this is put right: one plain sentence, and a way to try again.
Sheet {
    id: screen

    required property Household household
    property bool tried: false

    function tryAgain() {
        screen.tried = true // the same problem again changes nothing else on the page
        screen.household.openAgain()
    }

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

    Words {
        objectName: "stillSame"
        width: screen.contentWidth
        visible: screen.tried
        soft: true
        text: qsTr("Tried again just now: still the same.")
    }

    foot: ActionFoot {
        text: qsTr("Try again")
        onClicked: screen.tryAgain()
    }
}
