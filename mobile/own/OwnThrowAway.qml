pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A draft leaves the desk, asked twice.
Column {
    id: away

    property bool asked: false

    signal thrownAway()

    spacing: Theme.gap

    StitchedLink {
        objectName: "throwAway"
        anchors.left: parent.left
        width: Math.min(implicitWidth, away.width)
        text: away.asked ? qsTr("No, keep it") : qsTr("Throw this draft away")
        onClicked: away.asked = !away.asked
    }

    Words {
        width: away.width
        visible: away.asked
        text: qsTr("Boxes that have it keep it until you take it back there.")
    }

    PaperButton {
        anchors.left: parent.left
        width: Math.min(implicitWidth, away.width)
        visible: away.asked
        text: qsTr("Yes, throw it away")
        onClicked: away.thrownAway()
    }
}
