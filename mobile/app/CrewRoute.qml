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
    onSettingsWanted: route.screens.go("settings")
    foot: MainTabs { screens: route.screens }
}
