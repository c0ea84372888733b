pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One note to oneself: its words, its day, and whether it may go to the therapist.
Column {
    id: row

    required property string words
    required property string when
    required property bool sent

    signal sendChosen(bool send)
    signal removed()

    spacing: Theme.smallGap

    Rule {
        width: row.width
    }

    Words {
        objectName: "noteWords"
        width: row.width
        role: Theme.Label
        text: row.words
    }

    Words {
        width: row.width
        role: Theme.Caption
        soft: true
        text: row.when
    }

    Words {
        objectName: "noteSent"
        width: row.width
        visible: row.sent
        role: Theme.Reason
        text: qsTr("It goes to the therapist with the next exchange.")
    }

    LinkPair {
        width: row.width
        text: row.sent ? qsTr("Keep it here") : qsTr("Send to the therapist")
        otherText: qsTr("Take it off")
        accessibleName: row.sent ? qsTr("Keep it here: %1").arg(row.words) : qsTr("Send to the therapist: %1").arg(row.words)
        otherAccessibleName: qsTr("Take it off: %1").arg(row.words)
        onClicked: row.sendChosen(!row.sent)
        onOtherClicked: row.removed()
    }
}
