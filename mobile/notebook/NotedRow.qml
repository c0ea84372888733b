pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One thing that was noted: what, by whom and when, and its way back.
Column {
    id: row

    required property string words
    required property string who
    required property bool takenBack
    required property bool mine

    signal takenBackWanted()
    signal putInWanted()

    spacing: Theme.smallGap

    Words {
        objectName: "notedWords"
        width: row.width
        role: Theme.Label
        strong: !row.takenBack
        soft: row.takenBack
        text: row.words
    }

    Words {
        width: row.width
        role: Theme.Caption
        soft: true
        text: row.who
    }

    Words {
        objectName: "takenBack"
        width: row.width
        visible: row.takenBack
        role: Theme.Reason
        text: qsTr("Taken back")
    }

    StitchedLink {
        objectName: "notedWay"
        anchors.left: parent.left
        width: Math.min(implicitWidth, row.width)
        visible: row.mine
        text: row.takenBack ? qsTr("Put it in again") : qsTr("Take back")
        accessibleName: row.takenBack ? qsTr("Put it in again: %1").arg(row.words) : qsTr("Take back: %1").arg(row.words)
        onClicked: {
            if (row.takenBack)
                row.putInWanted()
            else
                row.takenBackWanted()
        }
    }

    Rule {
        width: row.width
    }
}
