pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Crew

CrewScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    kiteOff: route.screens.sitting.kiteOff
    onHomeSheetWanted: route.screens.go("home-sheet")
    onAnotherFamilyWanted: route.screens.go("another-family")
    onTakeOffWanted: {
        if (route.screens.household.takeOff())
            route.screens.forgetWhere()
        if (route.screens.playInHand.active)
            route.screens.go("resume")
    }
    onSettingsWanted: route.screens.go("settings")
    foot: MainTabs { screens: route.screens }
}
