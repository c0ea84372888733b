pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Crew
import Lidlark.Design

/// Who is in the crew, how far what is written here has come, and who writes on this phone.
Sheet {
    id: screen

    required property Household household
    required property CrewLife crewLife
    required property bool kiteOff

    signal homeSheetWanted()
    signal settingsWanted()
    signal anotherFamilyWanted()
    signal takeOffWanted()
    signal letInWanted()
    signal comeInWanted()
    signal placeWanted()
    signal seesWanted()
    signal aboutMeWanted()
    signal handOverWanted()
    signal removeWanted(string deviceId, string person)

    news: screen.crewLife.state

    ScreenTitle {
        width: screen.contentWidth
        text: qsTr("Crew")
        under: screen.crewLife.state
    }

    Repeater {
        model: screen.crewLife.troubles

        ProblemNote {
            required property string modelData

            width: screen.contentWidth
            text: modelData
        }
    }

    WhereItGoes {
        width: screen.contentWidth
        household: screen.household
        crewLife: screen.crewLife
        onComeInWanted: screen.comeInWanted()
    }

    WhoWrites {
        width: screen.contentWidth
        household: screen.household
    }

    LinkRow {
        objectName: "homeSheet"
        width: screen.contentWidth
        visible: !screen.household.guest && !screen.household.withoutBoxes
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

    Members {
        width: screen.contentWidth
        visible: screen.crewLife.inCrew
        crewLife: screen.crewLife
        onRemoveWanted: (deviceId, person) => screen.removeWanted(deviceId, person)
    }

    CrewLinks {
        width: screen.contentWidth
        household: screen.household
        crewLife: screen.crewLife
        onLetInWanted: screen.letInWanted()
        onPlaceWanted: screen.placeWanted()
        onSeesWanted: screen.seesWanted()
        onAboutMeWanted: screen.aboutMeWanted()
        onHandOverWanted: screen.handOverWanted()
    }

    SectionWords {
        width: screen.contentWidth
        visible: families.visible
        text: qsTr("Families on this phone")
    }

    Families {
        id: families

        width: screen.contentWidth
        visible: !screen.household.withoutBoxes
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
