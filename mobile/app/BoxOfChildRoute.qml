pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.App
import Lidlark.Workbench

BoxOfChildScreen {
    id: route

    required property AppScreens screens

    household: route.screens.household
    besideBoard: route.screens.twoPanes
    places: route.screens.therapistPlaces
    onBack: route.screens.goBack()
    onChangeWanted: route.screens.go("revise")
    onCoachingWanted: route.screens.go("coaching")
    onRequestsWanted: route.screens.go("requests")
    onGoalsWanted: route.screens.go("goals")
    onPrintsWanted: route.screens.go("prints")
    onPackingWanted: route.screens.go("packing")
    onVideoWanted: route.screens.go("video")
}
