pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Once a day: these texts have not been checked by a clinician.
Card {
    id: note

    signal read()

    padding: Theme.cardPadding

    Words {
        width: parent.width
        role: Theme.Reason
        text: qsTr("Written with care, not yet checked by a clinician. Follow your local rules and your therapist.")
    }

    StitchedLink {
        objectName: "uncheckedRead"
        anchors.left: parent.left
        text: qsTr("Put away for today")
        onClicked: note.read()
    }
}
