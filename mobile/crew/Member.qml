pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// One phone of the crew: whose, their part, until when.
Card {
    id: card

    property string deviceId: ""
    property string person: ""
    property string part: ""
    property string until: ""
    property bool thisPhone: false
    property bool removable: false

    signal removeWanted()

    objectName: "member-" + card.person

    Words {
        width: parent.width
        role: Theme.Label
        text: card.thisPhone ? qsTr("%1, this phone").arg(card.person) : card.person
    }

    Words {
        width: parent.width
        role: Theme.Reason
        soft: true
        text: card.until.length > 0 ? qsTr("%1, until %2").arg(card.part).arg(card.until) : card.part
    }

    StitchedLink {
        objectName: "remove-" + card.person
        anchors.left: parent.left
        visible: card.removable || card.thisPhone
        text: card.thisPhone ? qsTr("Leave the crew") : qsTr("Take out")
        accessibleName: card.thisPhone ? qsTr("Leave the crew") : qsTr("Take out: %1").arg(card.person)
        onClicked: card.removeWanted()
    }
}
