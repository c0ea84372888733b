pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A child who was named, and a way to take the name off again.
Item {
    id: row

    required property string text

    signal takenOff()

    implicitHeight: Math.max(words.height + 2 * Theme.cardPadding, close.height)

    PaperEdge { anchors.fill: parent }

    Words {
        id: words

        anchors.left: parent.left
        anchors.leftMargin: Theme.cardPadding + 1
        anchors.right: close.left
        anchors.verticalCenter: parent.verticalCenter
        strong: true
        text: row.text
    }

    SignButton {
        id: close

        anchors.right: parent.right
        anchors.rightMargin: Theme.smallGap
        anchors.verticalCenter: parent.verticalCenter
        sign: "sign-close"
        accessibleName: qsTr("Take off: %1").arg(row.text)
        onClicked: row.takenOff()
    }
}
