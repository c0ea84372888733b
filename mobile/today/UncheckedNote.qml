pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Once a day: these texts have not been checked by a clinician.
Item {
    id: note

    signal read()

    implicitHeight: Math.max(words.height + 2 * Theme.cardPadding, close.height)

    PaperEdge { anchors.fill: parent }

    Words {
        id: words

        anchors.left: parent.left
        anchors.leftMargin: Theme.cardPadding + 1
        anchors.right: close.left
        y: Theme.cardPadding
        role: Theme.Reason
        text: qsTr("Written with care, not yet checked by a clinician. Follow your local rules and your therapist.")
    }

    SignButton {
        id: close

        objectName: "uncheckedRead"
        anchors.right: parent.right
        anchors.rightMargin: Theme.smallGap
        anchors.verticalCenter: parent.verticalCenter
        sign: "sign-close"
        accessibleName: qsTr("Put this away for today")
        onClicked: note.read()
    }
}
