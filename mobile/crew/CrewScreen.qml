pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Crew
import Lidlark.Design

/// Who writes on this phone, and where what is written lies.
Sheet {
    id: screen

    required property Household household
    required property bool kiteOff

    signal homeSheetWanted()
    signal settingsWanted()
    signal anotherFamilyWanted()
    signal takeOffWanted()

    ScreenTitle {
        width: screen.contentWidth
        text: qsTr("Crew")
        under: qsTr("On this phone only")
    }

    Card {
        width: screen.contentWidth

        Words {
            width: parent.width
            role: Theme.Label
            text: qsTr("%1 writes on this phone").arg(screen.household.person)
        }

        Words {
            width: parent.width
            role: Theme.Body
            text: qsTr("Nothing leaves it. There is no account, and nobody counts how often you play.")
        }

        Words {
            objectName: "guestUntil"
            width: parent.width
            visible: screen.household.guestUntil.length > 0
            text: qsTr("A guest until %1: plays and puts back, and sees no goals, notes or kites.").arg(screen.household.guestUntil)
        }
    }

    WhoWrites {
        width: screen.contentWidth
        household: screen.household
    }

    LinkRow {
        objectName: "homeSheet"
        width: screen.contentWidth
        visible: !screen.household.guest
        sign: "sign-people"
        text: qsTr("Home sheet")
        note: qsTr("Who lives here, what must stay away")
        onClicked: screen.homeSheetWanted()
    }

    LinkRow {
        objectName: "settings"
        width: screen.contentWidth
        sign: "sign-settings"
        text: qsTr("Settings")
        note: screen.kiteOff ? qsTr("Text size, light and dark") : qsTr("Text size, light and dark, the kite")
        onClicked: screen.settingsWanted()
    }

    SectionWords {
        width: screen.contentWidth
        text: qsTr("Families on this phone")
    }

    Families {
        width: screen.contentWidth
        household: screen.household
        onAnotherWanted: screen.anotherFamilyWanted()
        onTakeOffWanted: screen.takeOffWanted()
    }

    SectionWords {
        width: screen.contentWidth
        text: qsTr("What Lidlark is not")
    }

    Words {
        width: screen.contentWidth
        role: Theme.Body
        text: SafetyWords.of(QT_TRANSLATE_NOOP("SafetyWords", "Not a medical device. It does not test, treat or diagnose, and it does not watch your child for you. Follow your local rules and your therapist."))
    }
}
