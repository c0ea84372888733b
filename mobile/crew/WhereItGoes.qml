pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design

/// Who writes on this phone, where that goes, and sharing it now.
Card {
    id: card

    required property Household household
    required property CrewLife crewLife
    readonly property bool shares: card.crewLife.inCrew && !card.crewLife.outside && card.crewLife.agreed && card.crewLife.place.length > 0

    signal comeInWanted()

    spacing: Theme.gap

    Words {
        width: parent.width
        role: Theme.Label
        text: qsTr("%1 writes on this phone").arg(card.household.person)
    }

    Words {
        objectName: "whereItGoes"
        width: parent.width
        text: card.crewLife.outside ? qsTr("This phone is not in the crew now: nothing it notes goes out, and nothing new comes. What is on it stays, and goes to the crew once it is in again.")
            : card.shares && card.crewLife.table ? qsTr("What is packed goes to whoever packs too, sealed: the place where it lies cannot read it. There is no account.")
            : card.shares ? qsTr("What is noted goes to the crew, sealed: the place where it lies cannot read it. There is no account, and nobody counts how often you play.")
            : qsTr("Nothing leaves it. There is no account, and nobody counts how often you play.")
    }

    Words {
        objectName: "guestUntil"
        width: parent.width
        visible: card.household.guestUntil.length > 0
        text: qsTr("A guest until %1: plays and puts back, and sees no goals, notes or kites.").arg(card.household.guestUntil)
    }

    Words {
        objectName: "keysInFile"
        width: parent.width
        role: Theme.Reason
        soft: true
        visible: card.shares && card.crewLife.keysInFile
        text: qsTr("This phone has no keychain, so its keys lie in a file: who can read the phone's files can read them.")
    }

    PaperButton {
        objectName: "shareNow"
        width: parent.width
        visible: card.shares
        patch: true
        text: qsTr("Share now")
        notNowReason: card.crewLife.busy ? qsTr("At work with the shared place.") : ""
        onClicked: card.crewLife.shareNow()
    }

    PaperButton {
        objectName: "comeIn"
        width: parent.width
        visible: card.crewLife.outside
        patch: true
        text: qsTr("Come in with a new code")
        onClicked: card.comeInWanted()
    }
}
