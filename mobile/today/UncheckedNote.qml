pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Once: who has checked these texts. Settings says it at any time.
Item {
    id: note

    required property string text

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
        text: note.text
    }

    SignButton {
        id: close

        objectName: "uncheckedRead"
        anchors.right: parent.right
        anchors.rightMargin: Theme.smallGap
        anchors.verticalCenter: parent.verticalCenter
        sign: "sign-close"
        accessibleName: qsTr("Put this away")
        onClicked: note.read()
    }
}
