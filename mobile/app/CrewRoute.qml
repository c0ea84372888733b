pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Crew

CrewScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    crewLife: route.screens.crewLife
    kiteOff: route.screens.sitting.kiteOff
    onHomeSheetWanted: route.screens.go("home-sheet")
    onAnotherFamilyWanted: route.screens.go("another-family")
    onTakeOffWanted: {
        if (route.screens.household.takeOff())
            route.screens.forgetWhere()
        if (route.screens.playInHand.active)
            route.screens.go("resume")
    }
    onLetInWanted: route.screens.go("let-in")
    onComeInWanted: route.screens.go("join")
    onPlaceWanted: {
        route.screens.placeBack = "crew"
        route.screens.go("shared-place")
    }
    onSeesWanted: route.screens.go("sees")
    onAboutMeWanted: route.screens.go("about-me")
    onHandOverWanted: route.screens.go("hand-over")
    onRemoveWanted: (deviceId, person) => {
        route.screens.member = deviceId
        route.screens.memberName = person
        route.screens.go("remove")
    }
    onSettingsWanted: route.screens.go("settings")
    foot: MainTabs { screens: route.screens }
    Component.onCompleted: {
        route.screens.bench.crewPage = "crew"
        route.screens.crewLife.table = false
    }
}
